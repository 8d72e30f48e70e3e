import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { quantityText } from "../../src/order/quantity.ts";
import { memoryStore } from "../../src/step/store.ts";
import { meshed } from "../meshed.ts";
import { everyCount, specOf } from "../samples.ts";
import { bridgeVolume, offNotches } from "./bridge-and-nut-measures.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** Fine enough to see a hundredth of a millimetre at the bottom of a notch. */
const meshOf = (solid: Solid, chord = 0.002): TriangleMesh => meshed(kernel, solid, chord);

/** A fixed sample of the ends of ranges that bridge and nut follow from: by day thirty, at night all. */
function sampledEnds() {
  const all = everyCount.flatMap(({ design, count }) => {
    const { values } = specOf(design, count);
    return Object.values(values)
      .filter(({ id }) => /^(bridge|nut|cradle|saddle|core|head|tuner)\./.test(id))
      .flatMap(({ id, kind, least, most }) =>
        [least, most].map((end) => ({ design, count, set: `${id}: ${quantityText(end, kind)}` })),
      );
  });
  if (process.env.NIGHTLY !== undefined) return all;
  // A step that shares no factor with the list's length comes by every place.
  return Array.from({ length: 30 }, (_, i) => all[(i * 101 + 7) % all.length]!);
}

describe("bridges and nuts at the ends of ranges", () => {
  let built = 0;
  const sample = sampledEnds();
  const store = memoryStore();
  it.each(sample)("$design with $count strings and $set", ({ design, count, set }) => {
    const spec = specOf(design, count, `set:\n  ${set}\n`);
    const made = instrument(spec, store);
    if (contradictions(spec, made).length > 0) return;
    const [bridge, nut] = [meshOf(made.bridgeSolid), meshOf(made.nutSolid)];
    expect([bridge, nut].map(meshProblem)).toEqual([undefined, undefined]);
    expect(Math.abs(meshMeasures(bridge).volume / bridgeVolume(spec, made) - 1)).toBeLessThan(2e-4);
    for (const { off } of offNotches(spec, made, bridge)) expect(off).toBeLessThan(0.01);
    built++;
  });

  it("were nearly all built", () => {
    expect(new Set(sample.map((entry) => JSON.stringify(entry))).size).toBe(sample.length);
    expect(built).toBeGreaterThan(0.9 * sample.length);
  });
});
