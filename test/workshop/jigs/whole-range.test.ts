import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import { contradictions } from "../../../src/instrument/contradictions.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import { quantityText } from "../../../src/order/quantity.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { jigsOf } from "../../../src/workshop/jigs/jigs.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { designs, frettedSpec, specOf } from "../../samples.ts";
import { piecesIn } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** What is wrong with the jigs of a spec: those that have no mesh, or one of several pieces; `seen` have been looked at before. */
function wrongOf(spec: Spec, seen: Set<string>): string[] {
  const store = memoryStore();
  const made = jigsOf(modelOf(spec, store));
  if (made.kind === "none") return ["no printer"];
  return made.jigs.flatMap(({ files }) =>
    files().flatMap(({ name, key, solid }) => {
      if (seen.has(key)) return [];
      seen.add(key);
      const found = mesh(kernel, solid(store), 0.03);
      if (found.kind !== "ok") return [`${name}: ${JSON.stringify(found)}`];
      return piecesIn(found.mesh) === 1 ? [] : [`${name}: ${piecesIn(found.mesh)} pieces`];
    }),
  );
}

const kinds = Object.entries(designs).map(([design, counts], i) => ({ design, counts, turn: i }));

describe("jigs at the ends of every dimension, one at a time", () => {
  it.each(kinds)(
    "of $design are each one closed piece",
    { timeout: 3_600_000 },
    ({ design, counts, turn }) => {
      const order = (count: number, more: string) =>
        design === "thrift" ? frettedSpec(count, more) : specOf(design, count, more);
      const usual = order(counts[0], "");
      const ids = Object.values(usual.values);
      // By day one end of every thirty-second dimension, other ones for each design; by night both ends of all, at every count.
      const night = process.env.NIGHTLY !== undefined;
      const ends = ids.flatMap(({ id, kind }, i) => {
        if (night) return (["least", "most"] as const).map((end) => ({ id, kind, end }));
        return i % 32 === 8 * turn
          ? [{ id, kind, end: i % 64 < 32 ? ("least" as const) : ("most" as const) }]
          : [];
      });
      const seen = new Set<string>();
      let tried = 0;
      for (const { id, kind, end } of ends) {
        for (const count of night ? counts : [counts[0]]) {
          const at = order(count, "").values[id]![end];
          const spec = order(count, `set:\n  ${id}: ${quantityText(at, kind)}\n`);
          if (contradictions(spec, instrument(spec, memoryStore())).length > 0) continue;
          tried++;
          expect(wrongOf(spec, seen), `${count} ${id} ${at}`).toEqual([]);
        }
      }
      expect(tried).toBeGreaterThan(ends.length / 2);
      expect(seen.size).toBeGreaterThan(5);
    },
  );
});
