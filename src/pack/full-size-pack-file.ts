import type { Flat } from "../drawing/flat/flat.ts";
import type { FlatFile } from "../drawing/flat/flat-file.ts";
import type { Title } from "../drawing/flat/titled.ts";
import { fewerSheets } from "../drawing/tiles/fewer-sheets.ts";
import { fullSize } from "../drawing/tiles/full-size.ts";
import { pdfBytes } from "../files/pdf/write-pdf.ts";
import { fingerprintOf, hashOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import type { Model } from "../workshop/model.ts";
import type { PackFile } from "./pack-file.ts";

/** Raised whenever full-size sheets of the same drawing may come out differently. */
const layoutVersion = 4;

/** A drawing that was made: its file, its lines before the title, its step's key. */
export type DrawnFlat = {
  readonly file: FlatFile;
  readonly answer: { readonly key: string; readonly value: Flat };
};

/** A flat drawing at full size, as a PDF of sheets of the order's paper. */
export async function fullSizePackFile(
  { file, answer }: DrawnFlat,
  model: Model,
  store: Store,
  title: Title,
): Promise<PackFile> {
  const { name } = file;
  const { spec } = model;
  const { paper } = spec;
  const remarks = file.remarks?.(model, store);
  const plain = { flat: answer.value, remarks, paper, fromNumbers: file.fromNumbers?.(spec) };
  const own = { ...title, name };
  const fewer = fewerSheets({ ...plain, title: own }, spec.shop.paper);
  // What another paper would take is told on the sheets, so that it is part of what they follow from.
  const also = fewer === null ? "" : ` ${JSON.stringify(fewer)}`;
  const fingerprint = fingerprintOf(
    hashOf(`full-size ${layoutVersion} ${answer.key} ${JSON.stringify(paper)}${also}`),
  );
  const { pages } = fullSize({ ...plain, title: { ...own, fingerprint }, fewer });
  const on = `${sheetsOf(pages.length)} of ${paper.id}`;
  const said =
    fewer === null ? on : `${on} (${sheetsOf(fewer.sheets)} with paper: ${fewer.paper} in the order)`;
  return {
    ...{ path: `full-size/${name}.pdf`, content: await pdfBytes(pages, `${spec.order} ${name}, full size`) },
    ...{ what: `full size on ${said}: ${file.what}`, fingerprint, readBack: null },
  };
}

function sheetsOf(count: number): string {
  return count === 1 ? "one sheet" : `${count} sheets`;
}
