import { fairCurve } from "../../geometry/fair/fair-curve.ts";
import { fairPath } from "../../geometry/fair/fair-path.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import type { Taper } from "./taper.ts";

/** The board's taper and the radius of the corners at its end, mm. */
export type BoardInput = { readonly taper: Taper; readonly corner: number };

/** The board's outline from the front, x from the nut and y to the treble side, or that its corners have no room. */
export type BoardOutline = { readonly kind: "ok"; readonly path: Path } | { readonly kind: "no-room" };

/** The board's outline, counter-clockwise from the bass corner at the nut; the two corners at its end are rounded. */
export const boardOutline = step("fingerboard.outline", 1, ({ taper, corner }: BoardInput): BoardOutline => {
  const { length, nut, end } = taper;
  const corners = [
    { x: 0, y: -nut / 2, corner: 0 },
    { x: length, y: -end / 2, corner },
    { x: length, y: end / 2, corner },
    { x: 0, y: nut / 2, corner: 0 },
  ];
  const curve = fairCurve(corners, { closed: true });
  const path = curve.kind === "ok" ? fairPath(curve.curve) : undefined;
  return path?.kind === "ok" ? { kind: "ok", path: path.path } : { kind: "no-room" };
});
