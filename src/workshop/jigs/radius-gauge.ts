import type { Path } from "../../geometry/path.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import { lettered, letteringSize } from "./lettered.ts";
import type { Piece } from "./piece.ts";

/** A gauge for the radius across a board, mm: the radius, how wide the board is there, the plate's thickness; what is lettered on it. */
export type RadiusGaugeInput = {
  readonly radius: number;
  readonly width: number;
  readonly thickness: number;
  readonly lines: readonly string[];
  readonly piece: Piece;
};

/** The flat feet outside the hollow, and what lies over and under the lettering, mm (G). */
const [foot, over] = [3, 2];

/** How far the hollow reaches under its top, mm: a circle's rise over half the board's width. */
function riseOf(radius: number, half: number): number {
  return radius - Math.sqrt(radius ** 2 - half ** 2);
}

/** How wide and how high a radius gauge lies on the bed, mm. */
export function radiusGaugeSize(given: Omit<RadiusGaugeInput, "piece" | "thickness">): {
  x: number;
  y: number;
} {
  const size = letteringSize(given.lines);
  const rise = riseOf(given.radius, given.width / 2);
  return { x: Math.max(given.width + 2 * foot, size.width + 2 * over), y: rise + size.height + 2 * over };
}

/** A hollow's outline under a flat back: its top at y = 0, `half` to either side, on feet that reach to `wide`, the back at `back`. */
export function hollowUnder(radius: number, half: number, wide: number, back: number): Path {
  const low = -riseOf(radius, half);
  const at = (x: number, y: number, bulge = 0) => ({ x, y, bulge });
  // The hollow runs from its left end over its top to its right end, clockwise about the circle's middle.
  const sweep = -2 * Math.asin(half / radius);
  return {
    closed: true,
    points: [
      ...[at(-wide, low), at(-half, low, Math.tan(sweep / 4)), at(half, low)],
      ...[at(wide, low), at(wide, back), at(-wide, back)],
    ],
  };
}

/**
 * A plate with the board's own radius hollowed into its lower edge, which is set on the board square across it. It lies as it is printed:
 * across the board along x, the hollow's top at y = 0, the letters on the upper face.
 */
export const radiusGauge = step("jig.radius", 1, (given: RadiusGaugeInput): Solid => {
  const { radius, width, thickness, lines } = given;
  const size = letteringSize(lines);
  const outer = hollowUnder(radius, width / 2, radiusGaugeSize(given).x / 2, size.height + 2 * over);
  const plate: Solid = { kind: "extrude", outlines: [{ outer, holes: [] }], height: thickness };
  return lettered(plate, { lines, x: 0, y: size.height + over, z: thickness });
});
