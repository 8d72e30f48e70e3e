import type { Path } from "../../geometry/path.ts";
import { roundCorners } from "../../geometry/round-corners.ts";
import { step } from "../../step/step.ts";
import type { Taper } from "./taper.ts";

/** The board's taper and the radius of the corners at its end, mm. */
export type BoardInput = { readonly taper: Taper; readonly corner: number };

/** The board's outline from the front, x from the nut and y to the treble side, or the largest corner that it has room for. */
export type BoardOutline =
  | { readonly kind: "ok"; readonly path: Path }
  | { readonly kind: "no-room"; readonly most: number };

/** The board's outline, counter-clockwise from the bass corner at the nut; the two corners at its end are rounded. */
export const boardOutline = step("fingerboard.outline", 1, ({ taper, corner }: BoardInput): BoardOutline => {
  const { length, nut, end } = taper;
  const points = [
    { x: 0, y: -nut / 2, bulge: 0 },
    { x: length, y: -end / 2, bulge: 0 },
    { x: length, y: end / 2, bulge: 0 },
    { x: 0, y: nut / 2, bulge: 0 },
  ];
  const result = roundCorners({ closed: true, points }, [0, corner, corner, 0]);
  if (result.kind === "ok") return result;
  return { kind: "no-room", most: result.kind === "no-room" ? result.most : 0 };
});
