import type { Path } from "../path.ts";
import type { Frame } from "./frame.ts";
import { recess } from "./recess.ts";
import type { Solid } from "./solid.ts";

/**
 * A solid with a round hole bored into it along -w of a frame, from its origin, `diameter` wide and `depth` deep (mm),
 * with a flat bottom. A size that isn't positive makes the recipe invalid when it is meshed.
 */
export function bore(from: Solid, at: Frame, diameter: number, depth: number): Solid {
  return recess(from, [{ outer: circle(diameter / 2), holes: [] }], at, depth);
}

function circle(radius: number): Path {
  return {
    closed: true,
    points: [
      { x: radius, y: 0, bulge: 1 },
      { x: -radius, y: 0, bulge: 1 },
    ],
  };
}
