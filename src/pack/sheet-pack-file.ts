import type { Finding } from "../checks/check.ts";
import type { SheetFile } from "../drawing/sheet/sheets.ts";
import { titledSheet } from "../drawing/sheet/titled-sheet.ts";
import { sheetSvgText } from "../files/svg/write-sheet-svg.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import type { Model } from "../workshop/model.ts";
import type { PackFile } from "./pack-file.ts";
import { titleFor } from "./title.ts";

/** A sheet as a file of a pack, titled with whose it is and with what was overruled of the parts that it shows. */
export function sheetPackFile(
  file: SheetFile,
  model: Model,
  store: Store,
  found: readonly Finding[],
): PackFile {
  const { spec } = model;
  const { key, value } = file.of(model, store);
  const fingerprint = fingerprintOf(key);
  const { part, seenFrom, shows } = file;
  const sheet = titledSheet(value, titleFor(spec, { part, fingerprint, seenFrom, shows }, found));
  return {
    ...{
      path: `${file.folder}/${file.name}.svg`,
      content: sheetSvgText(sheet, `${spec.order} ${file.name}`),
    },
    ...{ what: file.what, fingerprint, readBack: null, pictureOf: part },
  };
}
