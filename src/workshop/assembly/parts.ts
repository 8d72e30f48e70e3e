import { bodySolidFile } from "../solids/body-solid.ts";
import { bridgeAndNutFiles } from "../solids/bridge-and-nut.ts";
import { coverSolidFiles } from "../solids/cover-solids.ts";
import { fingerboardSolidFile } from "../solids/fingerboard-solid.ts";
import { neckSolidFile } from "../solids/neck-solid.ts";
import type { SolidFiles } from "../solids/solid-file.ts";
import { tailpieceSolidFile } from "../solids/tailpiece-solid.ts";
import { wingSolidFiles } from "../solids/wing-solids.ts";

/** What makes the solids of an instrument's parts, each where it stands on it: these together are the assembled instrument. */
export const assembledParts: readonly SolidFiles[] = [
  ...[neckSolidFile, fingerboardSolidFile, bridgeAndNutFiles, tailpieceSolidFile],
  ...[wingSolidFiles, bodySolidFile, coverSolidFiles],
];
