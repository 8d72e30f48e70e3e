import { basename } from "node:path";
import type { Finding } from "../../../src/checks/check.ts";
import { findings } from "../../../src/checks/checks.ts";
import { type SetUpSheet, setUpSheets } from "../../../src/drawing/sheet/set-up/set-up-sheets.ts";
import type { Sheet } from "../../../src/drawing/sheet/sheet.ts";
import { loadOrder } from "../../../src/pack/load.ts";
import { memoryStore, type Store } from "../../../src/step/store.ts";
import { type Model, modelOf } from "../../../src/workshop/model.ts";
import { orderFiles } from "../../samples.ts";

/** A sample order in one hand, with the pages, drawn when asked for, of every set-up's sheet. */
export type SampleSetUps = {
  readonly name: string;
  readonly model: Model;
  readonly store: Store;
  readonly found: readonly Finding[];
  readonly refused: ReturnType<typeof setUpSheets>["refused"];
  readonly sheets: readonly (SetUpSheet & { readonly pages: readonly Sheet[] })[];
};

/** One order of each design, which is tried in the other hand too; by night all are. */
const bothHands = ["SY-0417", "SY-0425", "SY-0422", "SY-0430"];

/** Every sample in its own hand, and some in the other. */
export const handedSamples = orderFiles.flatMap((file) => {
  const name = basename(file, ".yaml");
  const both = process.env.NIGHTLY !== undefined || bothHands.includes(name);
  return [{ name, file, turned: false }, ...(both ? [{ name, file, turned: true }] : [])];
});

/** A sheet whose pages are drawn when they are first looked at: most tests look at one kind of set-up. */
function withPages(sheet: SetUpSheet, store: Store): SampleSetUps["sheets"][number] {
  let drawn: readonly Sheet[] | undefined;
  return {
    ...sheet,
    get pages() {
      drawn ??= sheet.of(store).value;
      return drawn;
    },
  };
}

const made = new Map<string, SampleSetUps>();

/** The set-ups of a sample, drawn once however many tests look at them. */
export function sampleSetUps({ name, file, turned }: (typeof handedSamples)[number]): SampleSetUps {
  const key = `${name}${turned ? "-turned" : ""}`;
  const known = made.get(key);
  if (known !== undefined) return known;
  const store = memoryStore();
  const own = loadOrder(file, store, {});
  if (!own.ok) throw new Error(JSON.stringify(own.problems));
  const hand = (own.value.hand === "left") === turned ? "right" : "left";
  const spec = loadOrder(file, store, { hand });
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
  const model = modelOf(spec.value, store);
  const found = findings(model);
  const { sheets, refused } = setUpSheets(model, found);
  const drawn = sheets.map((sheet) => withPages(sheet, store));
  const all = { name: key, model, store, found, refused, sheets: drawn };
  made.set(key, all);
  return all;
}
