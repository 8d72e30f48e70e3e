import type { Model } from "../model.ts";
import { bodySolidFile } from "./body-solid.ts";
import { bridgeAndNutFiles } from "./bridge-and-nut.ts";
import { coverSolidFiles } from "./cover-solids.ts";
import { fingerboardSolidFile } from "./fingerboard-solid.ts";
import { gaugeFiles } from "./gauges.ts";
import { jigFiles } from "./jigs.ts";
import { neckSolidFile } from "./neck-solid.ts";
import type { SolidFile, SolidFiles } from "./solid-file.ts";
import { tailpieceSolidFile } from "./tailpiece-solid.ts";
import { wingSolidFiles } from "./wing-solids.ts";

const makers: readonly SolidFiles[] = [
  ...[neckSolidFile, fingerboardSolidFile, bridgeAndNutFiles, tailpieceSolidFile],
  wingSolidFiles,
  bodySolidFile,
  coverSolidFiles,
  gaugeFiles,
  jigFiles,
];

/** Every solid that a pack of this model holds. */
export function solidFiles(model: Model): readonly SolidFile[] {
  return makers.flatMap((make) => make(model));
}
