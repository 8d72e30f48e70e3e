import type { Finding } from "../checks/check.ts";
import type { SheetFile } from "../drawing/sheet/sheets.ts";
import { titledSheet } from "../drawing/sheet/titled-sheet.ts";
import { sheetSvgText } from "../files/svg/write-sheet-svg.ts";
import { lettered } from "../order/lettering.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import type { Model } from "../workshop/model.ts";
import type { PackFile } from "./pack-file.ts";

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
  const reasons = found.filter(
    ({ holds, overruled }) => overruled !== undefined && holds.some((name) => file.shows.includes(name)),
  );
  const sheet = titledSheet(value, {
    ...{ order: spec.order, part: file.part, fingerprint, hand: spec.hand, seenFrom: file.seenFrom },
    overruled: reasons.map(({ id, overruled }) => lettered(`${id}: ${overruled}`) ?? id),
  });
  return {
    ...{
      path: `${file.folder}/${file.name}.svg`,
      content: sheetSvgText(sheet, `${spec.order} ${file.name}`),
    },
    ...{ what: file.what, fingerprint, readBack: null },
  };
}
