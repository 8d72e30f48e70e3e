import { tailpieceSolid } from "../../instrument/tailpiece/solid.ts";
import { stepKey } from "../../step/step-key.ts";
import { handed } from "./handed.ts";
import type { SolidFiles } from "./solid-file.ts";

/** The tailpiece's plate where it stands over the core; of a left-hand order the other way round. */
export const tailpieceSolidFile: SolidFiles = ({ spec: { hand }, instrument }) => [
  {
    ...{ name: "tailpiece", folder: "outlines", part: "tailpiece" },
    what: "the tailpiece's plate as a solid where it stands, before its grooves are filed, for looking at and for checking",
    ...handed(hand, stepKey(tailpieceSolid, instrument.tailpieceSolidInput), () => instrument.tailpieceSolid),
  },
];
