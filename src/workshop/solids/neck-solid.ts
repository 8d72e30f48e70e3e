import { neckSolid } from "../../instrument/neck/solid.ts";
import { stepKey } from "../../step/step-key.ts";
import type { SolidFiles } from "./solid-file.ts";
import { turnedOver } from "./turned-over.ts";

/** The finished neck, for looking at and for checking; of a left-hand order the other way round. */
export const neckSolidFile: SolidFiles = ({ spec: { hand }, instrument }) => [
  {
    ...{ name: "neck", folder: "outlines", part: "neck" },
    what: "the finished neck as a solid, for looking at and for checking",
    ...turnedOver(hand, stepKey(neckSolid, instrument.neckSolidInput), () => instrument.neckSolid),
  },
];
