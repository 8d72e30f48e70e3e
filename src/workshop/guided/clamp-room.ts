import type { HoldingInput } from "./holding.ts";
import { clampPad, clampsBehind, placeClamps } from "./place-clamps.ts";

/** The widest clamp, mm, of the least reach from its base to its pad that fits as often as is wanted. */
export type ClampRoom = { readonly wide: number; readonly reach: number };

/** The widths that are tried, the widest first, and how long a footprint is for its width, mm. */
const widths = { most: 120, least: 15, by: 5, long: 2 } as const;

/** What clamps there is room for behind a batten, where the shop's own don't fit; nothing where none of 15 or more does. */
export function clampRoom(
  given: Pick<HoldingInput, "frame" | "length" | "led" | "past">,
  behind: number,
  wanted: number,
): ClampRoom | undefined {
  const reach = Math.ceil(behind + clampsBehind + clampPad.inside);
  for (let wide = widths.most; wide >= widths.least; wide -= widths.by) {
    const clamp = { id: "any", base: [wide, widths.long * wide] as const, reach, count: wanted };
    if (placeClamps({ ...given, clamps: [clamp] }, behind, wanted).length === wanted) return { wide, reach };
  }
  return undefined;
}
