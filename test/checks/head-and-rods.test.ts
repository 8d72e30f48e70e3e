import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced, movesIn } from "../forced.ts";
import { foundBy } from "../found-by.ts";
import { everyCount, specOf } from "../samples.ts";

function found(spec: Spec, id: string) {
  const model = modelOf(spec, memoryStore());
  // What can't be built is told beforehand, and no check is asked about it.
  expect(contradictions(spec, model.instrument)).toEqual([]);
  return foundBy(model, id)!;
}

const ids = ["rod.wall", "pin.clear", "head.wall", "tuner.clear", "tuner.past-post"];

describe("the checks of head, rods and pins", () => {
  it.each(everyCount)("pass $design with $count strings, as defaults to confirm", ({ design, count }) => {
    const model = modelOf(specOf(design, count), memoryStore());
    for (const id of ids) {
      expect(foundBy(model, id)).toMatchObject({
        ...{ status: "pass", stake: "spoilage", unit: "mm" },
        source: expect.stringContaining("default, confirm"),
      });
    }
  });

  it.each<[string, string, number, Record<string, number>, string, RegExp]>([
    ["a channel with thin wood under it", "thrift", 7, { "rod.depth": 6.8 }, "rod.wall", /back or side/],
    [
      "channels with thin wood between them",
      "mallow",
      5,
      {
        "rod.count": 2,
        "rod.offset": 3,
        "pin.upper": 2,
        "pin.upper.offset": 8,
        "pin.lower": 3,
        "pin.lower.offset": 9,
      },
      "rod.wall",
      /two rods/,
    ],
    [
      "a pin near a channel",
      "thrift",
      7,
      { "pin.lower.offset": 0.5 },
      "pin.clear",
      /lower pin and a rod's channel/,
    ],
    ["a pin near the back", "sedge", 5, { "pin.depth": 10 }, "pin.clear", /back or side/],
    [
      "a pin near the other",
      "sedge",
      5,
      { "pin.lower.at": 37.5 },
      "pin.clear",
      /pin and the (upper|lower) pin/,
    ],
    ["a pin near the blank's end", "sedge", 5, { "neck.allowance.end": 9 }, "pin.clear", /past the head/],
    ["a hole near the head's side", "sedge", 5, { "head.edge": 5 }, "head.wall", /the head's side/],
    [
      "a peg near the head's side by what it is reamed to",
      "mallow",
      5,
      { "head.edge": 6.9 },
      "head.wall",
      /the head's side/,
    ],
    [
      "a hole near the head's rounded corner",
      "sedge",
      5,
      { "head.corner": 21.3, "head.edge": 7.5, "head.margin": 15, "head.shoulder": 9 },
      "head.wall",
      /a corner of the head/,
    ],
    [
      "holes near each other on a bare head",
      "bulrush",
      5,
      { "head.row": 6, "tuner.hole": 6.5, "tuner.button": 2 },
      "head.wall",
      /holes of strings/,
    ],
    [
      "columns near each other",
      "mallow",
      4,
      { "head.column": 5.6, "tuner.button": 3, "tuner.post": 4 },
      "head.wall",
      /holes of strings/,
    ],
    ["buttons near each other in a row", "sedge", 6, { "tuner.button": 20 }, "tuner.clear", /buttons/],
    [
      "pegs' buttons near each other across the head",
      "mallow",
      5,
      { "head.row": 32, "tuner.button": 21 },
      "tuner.clear",
      /buttons/,
    ],
    [
      "strings' ends near each other on a bare head",
      "bulrush",
      5,
      { "tuner.button": 13 },
      "tuner.clear",
      /ends/,
    ],
    [
      "a string that brushes a post",
      "sedge",
      4,
      { "head.column": 8.5, "tuner.post": 7.9 },
      "tuner.past-post",
      /post of string/,
    ],
    [
      "a string that brushes its neighbour's hole",
      "bulrush",
      5,
      { "tuner.hole": 12.5 },
      "tuner.past-post",
      /hole of string/,
    ],
  ])("refuse %s, and what they tell to move is enough", (_, design, count, values, id, why) => {
    const sample = specOf(design, count);
    expect(found(sample, id).status).toBe("pass");
    const spec = forced(sample, values);
    const fault = found(spec, id);
    expect(fault).toMatchObject({ status: "refuse", why: expect.stringMatching(why) });
    expect(fault.found).toBeLessThan(fault.limit);
    expect(fault.found).toBeGreaterThan(0);
    expect(fault.holds).toContain("neck-plan");
    const moves = movesIn(fault.why);
    expect(moves.length, fault.why).toBeGreaterThan(0);
    const enough = moves.filter(({ id: dimension, to }) => {
      const moved = modelOf(forced(spec, { [dimension]: to }), memoryStore());
      return foundBy(moved, id)!.why !== fault.why;
    });
    expect(enough.length, fault.why).toBeGreaterThan(0);
  });

  it("look at machine heads' buttons along the head only, since they stand out of its sides", () => {
    const near = { "head.column": 9.5, "tuner.post": 5 };
    expect(found(forced(specOf("sedge", 4), near), "tuner.clear").found).toBeCloseTo(26 - 15, 9);
    expect(
      found(forced(specOf("mallow", 4), { "head.column": 9.5, "tuner.post": 6 }), "tuner.clear").found,
    ).toBeCloseTo(19 - 16, 9);
  });
});
