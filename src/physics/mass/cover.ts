import { areaMoments } from "../../geometry/path-measures/area-moments.ts";
import { coreAxes } from "../../instrument/core/from-core.ts";
import { type CoverInput, coverAxes, coverBase, coverOutline } from "../../instrument/recess/cover.ts";
import { step } from "../../step/step.ts";
import { type Measured, placed } from "./moments.ts";

/** A cover's volume and middle where it lies in its ledge: its outline's area less its screws' holes, as thick as it is. */
export const coverMeasured = step("mass.cover", 1, (given: CoverInput): Measured => {
  const { cover, screw, core } = given;
  const { outer, holes } = coverOutline(cover, screw);
  const whole = areaMoments(outer);
  const less = holes.map(areaMoments);
  const sum = (key: "area" | "x" | "y") => {
    const sign = (area: number) => (area < 0 ? -1 : 1);
    return sign(whole.area) * whole[key] - less.reduce((all, hole) => all + sign(hole.area) * hole[key], 0);
  };
  const area = sum("area");
  const centre = { x: sum("x") / area, y: sum("y") / area, z: coverBase(given) + cover.thickness / 2 };
  return placed(coreAxes(core), placed(coverAxes(given), { volume: area * cover.thickness, centre }));
});
