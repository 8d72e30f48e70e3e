import type { Flat } from "../drawing/flat/flat.ts";
import type { FlatFile } from "../drawing/flat/flat-file.ts";
import type { Title } from "../drawing/flat/titled.ts";
import { fewerSheets } from "../drawing/tiles/fewer-sheets.ts";
import { fullSize } from "../drawing/tiles/full-size.ts";
import { pdfBytes } from "../files/pdf/write-pdf.ts";
import { fingerprintOf, hashOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import type { Model } from "../workshop/model.ts";
import { type KeptFiles, keptFiles } from "./kept-files.ts";
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
  kept: KeptFiles | undefined,
): Promise<readonly PackFile[]> {
  const { name, what } = file;
  const { spec } = model;
  const papers = spec.shop.paper;
  const given = {
    remarks: file.remarks?.(model, store),
    paper: spec.paper,
    fromNumbers: file.fromNumbers?.(spec),
  };
  return keptFiles(kept, ["full-size", answer.key, title, name, what, given, papers], async () => {
    const plain = { flat: answer.value, ...given };
    const own = { ...title, name };
    const fewer = fewerSheets({ ...plain, title: own }, papers);
    // What another paper would take is told on the sheets, so that it is part of what they follow from.
    const also = fewer === null ? "" : ` ${JSON.stringify(fewer)}`;
    const fingerprint = fingerprintOf(
      hashOf(`full-size ${layoutVersion} ${answer.key} ${JSON.stringify(spec.paper)}${also}`),
    );
    const { pages } = fullSize({ ...plain, title: { ...own, fingerprint }, fewer });
    const on = `${sheetsOf(pages.length)} of ${spec.paper.id}`;
    const said =
      fewer === null ? on : `${on} (${sheetsOf(fewer.sheets)} with paper: ${fewer.paper} in the order)`;
    const content = await pdfBytes(pages, `${spec.order} ${name}, full size`);
    return [
      {
        ...{ path: `full-size/${name}.pdf`, content, fingerprint, readBack: null },
        what: `full size on ${said}: ${what}`,
      },
    ];
  });
}

function sheetsOf(count: number): string {
  return count === 1 ? "one sheet" : `${count} sheets`;
}
