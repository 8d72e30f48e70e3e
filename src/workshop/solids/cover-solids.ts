import { coverSolid } from "../../instrument/recess/cover.ts";
import { stepKey } from "../../step/step-key.ts";
import { handed } from "./handed.ts";
import type { SolidFile, SolidFiles } from "./solid-file.ts";

/** The covers over recesses, each as it lies in its ledge; of a left-hand order the other way round. */
export const coverSolidFiles: SolidFiles = ({ spec: { hand }, instrument: { covers } }) =>
  covers.map(({ recess: { id }, input, solid }): SolidFile => {
    return {
      ...{ name: `cover-${id}`, folder: "outlines", part: "cover" },
      what: `the cover over recess ${id} as a solid, as it lies in its ledge, for looking at and for checking`,
      ...handed(hand, stepKey(coverSolid, input), solid),
    };
  });
