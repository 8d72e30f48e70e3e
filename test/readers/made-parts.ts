import { loadOrder } from "../../src/pack/load.ts";
import { makePacks } from "../../src/pack/make.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { memoryStore } from "../../src/step/store.ts";
import { orderFiles } from "../samples.ts";

/** The numbers of a report, by their names. */
export type Numbers = Record<string, number>;

/** Some parts of every sample, made into `out`: each pack's folder with all the numbers of its order's whole report. */
export async function madeParts(out: string, parts: readonly string[]): Promise<Map<string, Numbers>> {
  const store = memoryStore();
  const made = await makePacks({ orders: orderFiles, out, only: parts, options: {} }, store);
  if (!made.ok) throw new Error("the samples can't be made");
  return new Map(
    made.value.map(({ folder }, i) => {
      const spec = loadOrder(orderFiles[i]!, store);
      if (!spec.ok || !folder.includes(spec.value.order)) throw new Error(`${folder} is another order's`);
      const { dimensions } = reportFor(spec.value, store);
      return [folder, Object.fromEntries(dimensions.map(({ id, value }) => [id, value as number]))];
    }),
  );
}
