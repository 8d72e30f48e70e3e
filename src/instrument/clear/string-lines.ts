import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { CoreFrame } from "../core/frame.ts";
import { fromCore } from "../core/from-core.ts";
import type { StringHeights } from "../strings/heights.ts";
import type { StringLayout } from "../strings/layout.ts";
import type { TailpieceExits } from "../tailpiece/exits.ts";

/** What the strings' ways follow from. */
export type Strung = {
  readonly core: CoreFrame;
  readonly layout: StringLayout;
  readonly heights: StringHeights;
  readonly exits: TailpieceExits;
};

/** A string's way, mm: half its thickness, and its centre at nut, bridge and exit from the tailpiece, among the instrument's axes. */
export type StringLine = { readonly name: string; readonly half: number; readonly places: readonly Vec3[] };

/** The strings from nut to tailpiece, highest first; straight between these places. */
export function stringLines(
  strings: readonly { readonly name: string; readonly diameter: number }[],
  { core, layout, heights, exits }: Strung,
  { length, exit }: { readonly length: number; readonly exit: number },
): StringLine[] {
  return strings.map(({ name, diameter }, i) => {
    const end = fromCore(core, { x: exits.along[i]!, z: exit });
    const places = [
      { x: 0, y: layout.nut[i]!, z: heights.nut[i]! },
      { x: length, y: layout.bridge[i]!, z: heights.bridge[i]! },
      { x: end.x, y: exits.across[i]!, z: end.z },
    ];
    return { name, half: diameter / 2, places };
  });
}
