import { segmentsOf } from "../../geometry/segment.ts";
import { tolerance } from "../../geometry/tolerance.ts";
import type { BridgeOutline } from "./outline.ts";

/** One of the bridge's feet across the instrument: from its bass end to its treble end, mm from the centreline. */
export type Foot = { readonly from: number; readonly to: number };

/** Where the bridge stands on the core's front: the straight pieces of its outline that lie in it, from bass to treble. None of an outline that can't be made. */
export function bridgeFeet(bridge: BridgeOutline): Foot[] {
  if (bridge.kind !== "ok") return [];
  const down = segmentsOf(bridge.cut).filter(
    ({ kind, from, to }) => kind === "line" && Math.max(Math.abs(from.y), Math.abs(to.y)) < tolerance.exact,
  );
  return down
    .map(({ from, to }) => ({ from: Math.min(from.x, to.x), to: Math.max(from.x, to.x) }))
    .sort((a, b) => a.from - b.from);
}

/** How far inside one of the feet a place across lies, mm: negative, how far outside all of them. */
export function insideFeet(feet: readonly Foot[], y: number): number {
  return Math.max(...feet.map(({ from, to }) => Math.min(y - from, to - y)));
}
