import { type SawDrawing, sawDrawings } from "../../order/saw-names.ts";
import type { Check } from "../check.ts";
import { partSawLine } from "./line.ts";
import { partSawHeight, partSawMissing, partSawThroat } from "./machine.ts";
import { type SawnRule, sawnCheck } from "./sawn-check.ts";
import { sawnSmall, smallParts } from "./small.ts";
import { partSawTight } from "./tight.ts";
import { tiltReach, tiltSlide } from "./tilt.ts";
import { neckUnsupported, sawUnsupported } from "./unsupported.ts";

/** What every part that is sawn out of its blank is tried by. */
export const sawnRules: readonly SawnRule[] = [
  ...[partSawMissing, partSawHeight, partSawThroat, partSawTight, partSawLine],
  ...[tiltSlide, tiltReach, sawUnsupported, sawnSmall],
];

/** Every rule for every saw drawing but the neck's two, and what is said of small parts. */
export const sawnChecks: readonly Check[] = [
  ...(Object.keys(sawDrawings) as SawDrawing[]).flatMap((file) =>
    sawnRules.map((rule) => sawnCheck(rule, file)),
  ),
  ...[neckUnsupported, smallParts],
];
