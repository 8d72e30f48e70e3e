import { raiseTo } from "../instrument/wall.ts";
import { dimensionOf } from "../order/spec.ts";
import { leastWall, setBy } from "./least-wall.ts";

/** Whether the tailpiece stands far enough over the core's front for a string's end to be put in from underneath. */
export const tailpieceClear = leastWall({
  ...{ id: "tailpiece.clear", subject: "tailpiece", holds: ["tailpiece"], ...setBy("tailpiece.clear") },
  walls: ({ spec }) => {
    const [height, thickness] = [
      dimensionOf(spec, "tailpiece.height"),
      dimensionOf(spec, "tailpiece.thickness"),
    ];
    const mend = raiseTo("tailpiece.height", thickness + dimensionOf(spec, "tailpiece.clear"));
    const ids = ["tailpiece.height", "tailpiece.thickness"];
    return [{ left: height - thickness, between: "the tailpiece and the core's front", ids, mend }];
  },
  thin: ({ between, mend }) => `a string's end doesn't go in between ${between}: ${mend}`,
  enough: (between) => `a string's end goes in between ${between}`,
});
