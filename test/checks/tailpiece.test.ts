import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { movesIn } from "../forced.ts";
import { foundBy } from "../found-by.ts";
import { everyCount, specOf } from "../samples.ts";
import { stretched } from "../stretched.ts";

function found(spec: Spec, id: string) {
  const model = modelOf(spec, memoryStore());
  // What can't be built is told beforehand, and no check is asked about it.
  expect(contradictions(spec, model.instrument)).toEqual([]);
  return foundBy(model, id)!;
}

describe("the checks of the tailpiece", () => {
  it.each(everyCount)("pass $design with $count strings, as defaults to confirm", ({ design, count }) => {
    for (const id of ["tailpiece.wall", "tailpiece.clear"])
      expect(found(specOf(design, count), id)).toMatchObject({
        ...{ status: "pass", stake: "spoilage", unit: "mm" },
        source: expect.stringContaining("default, confirm"),
      });
  });

  it.each<[string, string, number, Record<string, number>, string, RegExp]>([
    [
      "holes near each other",
      "thrift",
      7,
      { "tailpiece.spread": 28, "tailpiece.width": 53 },
      "tailpiece.wall",
      /holes of \w+ and \w+/,
    ],
    [
      "a hole near the front",
      "sedge",
      5,
      { "tailpiece.hole.at": 3.1 },
      "tailpiece.wall",
      /the plate's front/,
    ],
    ["a hole near the side", "mallow", 4, { "tailpiece.width": 33.4 }, "tailpiece.wall", /the plate's side/],
    ["a plate near the core", "bulrush", 4, { "tailpiece.height": 9.4 }, "tailpiece.clear", /doesn't go in/],
  ])("refuse %s, and what they tell to move is enough", (_, design, count, values, id, why) => {
    const sample = specOf(design, count);
    expect(found(sample, id).status).toBe("pass");
    const spec = stretched(design, count, values);
    const fault = found(spec, id);
    expect(fault).toMatchObject({ status: "refuse", why: expect.stringMatching(why), holds: ["tailpiece"] });
    expect(fault.found).toBeLessThan(fault.limit);
    expect(fault.found).toBeGreaterThan(0);
    const moves = movesIn(fault.why);
    expect(moves.length, fault.why).toBeGreaterThan(0);
    const enough = moves.filter(({ id: dimension, to }) => {
      const moved = modelOf(stretched(design, count, { ...values, [dimension]: to }), memoryStore());
      return foundBy(moved, id)!.why !== fault.why;
    });
    expect(enough.length, fault.why).toBe(moves.length);
  });

  it("count the wood between two strings' holes as they lie, drawn together behind the exits", () => {
    const spec = stretched("thrift", 7, { "tailpiece.spread": 28, "tailpiece.width": 53 });
    const { instrument } = modelOf(spec, memoryStore());
    const plate = instrument.tailpiece;
    if (plate.kind !== "ok") throw new Error(plate.kind);
    const between = plate.strings
      .slice(1)
      .map(({ at }, i) => Math.hypot(at.x - plate.strings[i]!.at.x, at.y - plate.strings[i]!.at.y) - 2.4);
    expect(found(spec, "tailpiece.wall").found).toBeCloseTo(Math.min(...between), 5);
  });
});
