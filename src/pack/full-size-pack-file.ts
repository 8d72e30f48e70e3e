import type { Flat } from "../drawing/flat/flat.ts";
import type { FlatFile } from "../drawing/flat/flat-file.ts";
import type { Title } from "../drawing/flat/titled.ts";
import { fullSize } from "../drawing/tiles/full-size.ts";
import { pdfBytes } from "../files/pdf/write-pdf.ts";
import type { Spec } from "../order/spec.ts";
import { fingerprintOf, hashOf } from "../step/key.ts";
import { type KeptFiles, keptFiles } from "./kept-files.ts";
import type { PackFile } from "./pack-file.ts";

/** Raised whenever full-size sheets of the same drawing may come out differently. */
const layoutVersion = 3;

/** A drawing that was made: its file, its lines before the title, its step's key. */
export type DrawnFlat = {
  readonly file: FlatFile;
  readonly answer: { readonly key: string; readonly value: Flat };
};

/** A flat drawing at full size, as a PDF of sheets of the order's paper. */
export async function fullSizePackFile(
  { file, answer }: DrawnFlat,
  spec: Spec,
  title: Title,
  kept: KeptFiles | undefined,
): Promise<readonly PackFile[]> {
  const { name, what } = file;
  const { paper } = spec;
  const fromNumbers = file.fromNumbers?.(spec);
  const fingerprint = fingerprintOf(
    hashOf(`full-size ${layoutVersion} ${answer.key} ${JSON.stringify(paper)}`),
  );
  return keptFiles(kept, ["full-size", answer.key, title, name, what, paper, fromNumbers], async () => {
    const named = { ...title, name, fingerprint };
    const { pages } = fullSize({ flat: answer.value, title: named, paper, fromNumbers });
    const sheets = pages.length === 1 ? "one sheet" : `${pages.length} sheets`;
    const content = await pdfBytes(pages, `${spec.order} ${name}, full size`);
    return [
      {
        ...{ path: `full-size/${name}.pdf`, content, fingerprint, readBack: null },
        what: `full size on ${sheets} of ${paper.id}: ${what}`,
      },
    ];
  });
}
