import type { Finding } from "../checks/check.ts";
import type { SetUpSheet } from "../drawing/sheet/set-up/set-up-sheets.ts";
import type { Sheet } from "../drawing/sheet/sheet.ts";
import { sheetPage } from "../drawing/sheet/sheet-page.ts";
import { titledSheet } from "../drawing/sheet/titled-sheet.ts";
import { travellerSheet } from "../drawing/sheet/traveller/traveller-sheet.ts";
import type { TravellerWords } from "../drawing/sheet/traveller/traveller-words.ts";
import { pdfBytes } from "../files/pdf/write-pdf.ts";
import { sheetSvgText } from "../files/svg/write-sheet-svg.ts";
import type { Spec } from "../order/spec.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import { type KeptFiles, keptFiles } from "./kept-files.ts";
import type { PackFile } from "./pack-file.ts";
import { titleFor } from "./title.ts";

/** The sheet of a set-up: a PDF of its pages, and a picture of each. */
export async function setUpPackFiles(
  sheet: SetUpSheet,
  spec: Spec,
  store: Store,
  found: readonly Finding[],
  kept: KeptFiles | undefined,
): Promise<readonly PackFile[]> {
  const { key, value } = sheet.of(store);
  const { name, part, seenFrom, shows, what } = sheet;
  const fingerprint = fingerprintOf(key);
  const title = titleFor(spec, { part, fingerprint, seenFrom, shows }, found);
  return keptFiles(kept, ["set-up", key, title, name, part, what], () => {
    const pages = value.map((page) => titledSheet(page, title));
    return pagesAsFiles(pages, { name, title: `${spec.order} ${name}`, part, what, fingerprint });
  });
}

/** The traveller of an order, which alone among what is printed bears the order's fingerprint. */
export async function travellerPackFiles(words: TravellerWords, store: Store): Promise<PackFile[]> {
  const { key, value } = store.answer(travellerSheet, words);
  return pagesAsFiles(value, {
    ...{ name: "traveller", title: `${words.order} traveller`, part: "instrument" },
    what: "traveller: parts, blanks, cut list, what is bought, sequence of work, what is refused or held back",
    fingerprint: fingerprintOf(key),
  });
}

type Named = {
  readonly name: string;
  readonly title: string;
  readonly part: string;
  readonly what: string;
  readonly fingerprint: string;
};

/** The first page's picture bears the name alone, every other its number too. */
async function pagesAsFiles(
  pages: readonly Sheet[],
  { name, title, part, what, fingerprint }: Named,
): Promise<PackFile[]> {
  const made = { fingerprint, readBack: null };
  const count = pages.length === 1 ? "one page" : `${pages.length} pages`;
  return [
    ...pages.map((page, i): PackFile => {
      const [number, of] = i === 0 ? ["", ""] : [`-${i + 1}`, `page ${i + 1} of the `];
      return {
        ...{ ...made, path: `bench/${name}${number}.svg`, what: `${of}${what}`, pictureOf: part },
        content: sheetSvgText(page, title),
      };
    }),
    {
      ...{ ...made, path: `bench/${name}.pdf`, what: `to print, ${count}: ${what}` },
      content: await pdfBytes(pages.map(sheetPage), title),
    },
  ];
}
