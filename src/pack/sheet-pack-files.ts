import type { Finding } from "../checks/check.ts";
import { sheetPage } from "../drawing/sheet/sheet-page.ts";
import type { SheetFile } from "../drawing/sheet/sheets.ts";
import { titledSheet } from "../drawing/sheet/titled-sheet.ts";
import { pdfBytes } from "../files/pdf/write-pdf.ts";
import { sheetSvgText } from "../files/svg/write-sheet-svg.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import type { Model } from "../workshop/model.ts";
import type { PackFile } from "./pack-file.ts";
import { titleFor } from "./title.ts";

/** A sheet as a picture and as a PDF to print, titled with whose it is and with what was overruled of the parts that it shows. */
export async function sheetPackFiles(
  file: SheetFile,
  model: Model,
  store: Store,
  found: readonly Finding[],
): Promise<PackFile[]> {
  const { spec } = model;
  const { key, value } = file.of(model, store);
  const fingerprint = fingerprintOf(key);
  const { part, seenFrom, shows } = file;
  const sheet = titledSheet(value, titleFor(spec, { part, fingerprint, seenFrom, shows }, found));
  const [path, name] = [`${file.folder}/${file.name}`, `${spec.order} ${file.name}`];
  const made = { what: file.what, fingerprint, readBack: null };
  return [
    { ...made, path: `${path}.svg`, content: sheetSvgText(sheet, name), pictureOf: part },
    {
      ...made,
      path: `${path}.pdf`,
      content: await pdfBytes([sheetPage(sheet)], name),
      what: `to print: ${file.what}`,
    },
  ];
}
