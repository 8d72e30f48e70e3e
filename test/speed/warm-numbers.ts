import { contradictions } from "../../src/instrument/contradictions.ts";
import type { Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore, type Store } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { median } from "./pairs.ts";
import type { Row } from "./row.ts";

/**
 * Every number of some parts, and whether the instrument can be built, after one dimension has changed by a thousandth: with a
 * store that knows the rest, and with an empty one.
 */
export function warmNumbersRow(
  name: string,
  specAt: (value: number) => Spec,
  { from, parts }: { readonly from: number; readonly parts: readonly string[] },
): Row {
  const numbers = (store: Store, value: number) => {
    const spec = specAt(value);
    const began = performance.now();
    const model = modelOf(spec, store);
    if (contradictions(spec, model.instrument).length > 0)
      throw new Error("an instrument that can't be built");
    for (const { part, of } of dimensionsOf(spec)) if (parts.includes(part)) of(model);
    return performance.now() - began;
  };
  const warm = memoryStore();
  for (let i = 0; i < 20; i++) numbers(warm, from + i / 1000);
  const pairs = Array.from({ length: 25 }, (_, i) => ({
    warm: numbers(warm, from + 0.1 + i / 1000),
    fresh: numbers(memoryStore(), from + 0.1 + i / 1000),
  }));
  return {
    ...{ name, median: median(pairs.map((pair) => pair.warm)), unit: "ms", against: "an empty store" },
    ratio: median(pairs.map(({ warm: ours, fresh }) => ours / fresh)),
  };
}
