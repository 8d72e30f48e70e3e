import { type AreaMoments, areaMoments } from "../../geometry/path-measures/area-moments.ts";
import type { BridgeSolidInput } from "../../instrument/bridge/solid.ts";
import { sidesAt } from "../../instrument/bridge/stand.ts";
import { coreAxes } from "../../instrument/core/from-core.ts";
import { step } from "../../step/step.ts";
import { type Measured, measuredOf, placed } from "./moments.ts";

/**
 * A finished bridge's volume and middle, in closed form.
 *
 * Its outline runs along the core's front; its thickness t = a + b z and its flat face x = c + e z are straight in the height. So its volume is
 * the integral of t over the outline's area, and its moments those of t y, t z and t (x - t/2): all of them second moments of that area. The outline in the leaning
 * face is `lean` times as high square to the front.
 */
export const bridgeMeasured = step("mass.bridge", 1, (given: BridgeSolidInput): Measured => {
  const { outline, holes, stand, core } = given;
  const lean = Math.cos((stand.tilt * Math.PI) / 180);
  const m = lowered(outline, lean);
  for (const hole of holes) {
    const cut = lowered(hole, lean);
    for (const key of ["area", "x", "y", "xx", "xy", "yy"] as const) m[key] -= cut[key];
  }
  const [at0, at1] = [sidesAt(stand, 0), sidesAt(stand, 1)];
  const [a, c] = [at0.flat - at0.nut, at0.flat];
  const [b, e] = [at1.flat - at1.nut - a, at1.flat - c];
  const x = a * (c - a / 2) * m.area + (a * (e - b / 2) + b * (c - a / 2)) * m.y + b * (e - b / 2) * m.yy;
  const own = { volume: a * m.area + b * m.y, x, y: a * m.x + b * m.xy, z: a * m.y + b * m.yy };
  return placed(coreAxes(core), measuredOf(own));
});

/** The moments of an area, whatever its winding, whose heights are taken times a factor. */
function lowered(
  path: BridgeSolidInput["outline"],
  factor: number,
): { -readonly [key in keyof AreaMoments]: number } {
  const m = areaMoments(path);
  const one = Math.sign(m.area) * factor;
  return {
    ...{ area: one * m.area, x: one * m.x, y: one * factor * m.y },
    ...{ xx: one * m.xx, xy: one * factor * m.xy, yy: one * factor ** 2 * m.yy },
  };
}
