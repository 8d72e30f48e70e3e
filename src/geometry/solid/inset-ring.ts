import type { Point } from "../point.ts";
import { ringsCross } from "./rings-cross.ts";

/** A ring with every edge moved inward by the same distance, vertex for vertex; or that there is no room for that. */
export type InsetRing =
  | { readonly kind: "ok"; readonly ring: readonly Point[] }
  | { readonly kind: "no-room" };

/**
 * Moves the edges of a counter-clockwise ring inward by a distance (mm), corners mitred.
 *
 * `no-room` where an edge would vanish or turn round, or the moved ring would cross itself.
 */
export function insetRing(ring: readonly Point[], distance: number): InsetRing {
  if (distance === 0) return { kind: "ok", ring };
  const count = ring.length;
  const ways = ring.map((a, i) => {
    const b = ring[(i + 1) % count]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  });
  const moved = ring.map((p, i) => {
    const before = ways.at(i - 1)!;
    const after = ways[i]!;
    const scale = distance / (1 + before.x * after.x + before.y * after.y);
    return { x: p.x - scale * (before.y + after.y), y: p.y + scale * (before.x + after.x) };
  });
  const kept = moved.every((a, i) => {
    const b = moved[(i + 1) % count]!;
    return (b.x - a.x) * ways[i]!.x + (b.y - a.y) * ways[i]!.y > 0;
  });
  return kept && !ringsCross([moved]) ? { kind: "ok", ring: moved } : { kind: "no-room" };
}
