import type { Finding } from "../checks/check.ts";
import { sheetPage } from "../drawing/sheet/sheet-page.ts";
import type { SheetFile } from "../drawing/sheet/sheets.ts";
import { titledSheet } from "../drawing/sheet/titled-sheet.ts";
import { pdfBytes } from "../files/pdf/write-pdf.ts";
import { sheetSvgText } from "../files/svg/write-sheet-svg.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import type { Model } from "../workshop/model.ts";
import { type KeptFiles, keptFiles } from "./kept-files.ts";
import type { PackFile } from "./pack-file.ts";
import { titleFor } from "./title.ts";

/** A sheet as a picture and as a PDF to print, titled with whose it is and with what was overruled of the parts that it shows. */
export async function sheetPackFiles(
  file: SheetFile,
  model: Model,
  store: Store,
  found: readonly Finding[],
  kept: KeptFiles | undefined,
): Promise<readonly PackFile[]> {
  const { spec } = model;
  const answer = file.of(model, store);
  const fingerprint = fingerprintOf(answer.key);
  const { part, seenFrom, shows, what } = file;
  const title = titleFor(spec, { part, fingerprint, seenFrom, shows }, found);
  return keptFiles(kept, ["sheet", answer.key, title, file.folder, file.name, what], async () => {
    const sheet = titledSheet(answer.value, title);
    const [path, name] = [`${file.folder}/${file.name}`, `${spec.order} ${file.name}`];
    const made = { what, fingerprint, readBack: null };
    return [
      { ...made, path: `${path}.svg`, content: sheetSvgText(sheet, name), pictureOf: part },
      {
        ...{ ...made, path: `${path}.pdf`, what: `to print: ${what}` },
        content: await pdfBytes([sheetPage(sheet)], name),
      },
    ];
  });
}
