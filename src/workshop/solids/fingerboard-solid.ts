import { boardSolid } from "../../instrument/fingerboard/board-solid.ts";
import { stepKey } from "../../step/step-key.ts";
import { handed } from "./handed.ts";
import type { SolidFiles } from "./solid-file.ts";

/** The finished fingerboard, for looking at and for checking; of a left-hand order the other way round. */
export const fingerboardSolidFile: SolidFiles = ({ spec: { hand }, instrument }) => [
  {
    ...{ name: "fingerboard", folder: "outlines", part: "fingerboard" },
    what: "the finished fingerboard as a solid, with its slots, dots and recesses, for looking at and for checking",
    ...handed(hand, stepKey(boardSolid, instrument.boardSolidInput), () => instrument.boardSolid),
  },
];
