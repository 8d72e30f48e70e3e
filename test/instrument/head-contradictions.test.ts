import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { forced, movesIn } from "../forced.ts";
import { specOf } from "../samples.ts";

const problemsOf = (spec: Spec) => contradictions(spec, instrument(spec, memoryStore()));

/** Whether one of the moves that a message tells to try is enough to be rid of it. */
function mended(spec: Spec, hint: string, found: string): boolean {
  return movesIn(hint).some(({ id, to }) =>
    problemsOf(forced(spec, { [id]: to })).every(
      (problem) => problem.found !== found && problem.hint !== hint,
    ),
  );
}

type Case = [
  what: string,
  design: string,
  count: number,
  values: Record<string, number>,
  name: string,
  found: RegExp,
];

describe("head, rods and pins that contradict each other", () => {
  it.each<Case>([
    ["a channel through the neck's back", "thrift", 5, { "rod.depth": 12 }, "rod.depth", /back or side/],
    [
      "a neck too thin for its rods",
      "thrift",
      7,
      { "neck.thickness.nut": 17, "neck.thickness.heel": 19, "rod.depth": 7.5 },
      "rod.depth",
      /back or side/,
    ],
    ["a channel out of the neck's side", "thrift", 5, { "rod.offset": 14 }, "rod.offset", /back or side/],
    ["channels in each other", "thrift", 5, { "rod.offset": 1.5 }, "rod.offset", /two rods/],
    ["a channel wider than long", "mallow", 5, { "rod.length": 3 }, "rod.length", /long and 4 mm wide/],
    ["a channel past the board", "thrift", 5, { "rod.length": 280 }, "rod.length", /ends 288 mm/],
    [
      "a channel over a front that has fallen",
      "mallow",
      5,
      { "rod.length": 240 },
      "rod.length",
      /has fallen/,
    ],
    [
      "a pin in a channel",
      "thrift",
      5,
      { "pin.upper.offset": 6 },
      "pin.upper.offset",
      /upper pin and a rod's channel/,
    ],
    [
      "a pin between channels that are too near",
      "thrift",
      5,
      { "rod.offset": 4.5 },
      "rod.offset",
      /pin and a rod's channel/,
    ],
    [
      "a second rod where the pins stand",
      "mallow",
      5,
      { "rod.count": 2 },
      "rod.count",
      /pin and a rod's channel/,
    ],
    ["a pin through the back", "sedge", 5, { "pin.depth": 14 }, "pin.depth", /back or side/],
    [
      "a pin out of the side",
      "sedge",
      5,
      { "pin.upper.offset": 15 },
      "pin.upper.offset",
      /upper pin and the neck's back or side/,
    ],
    [
      "a pin in the other",
      "sedge",
      5,
      { "pin.lower.at": 34 },
      "pin.lower.at",
      /lower pin and the upper pin|upper pin and the lower pin/,
    ],
    ["a pin wider than its waste", "sedge", 5, { "pin.head": 20 }, "pin.head", /past the head/],
    ["two pins of like size at the ends", "sedge", 5, { "pin.tail": 7.8 }, "pin.tail", /8 mm and 7.8 mm/],
    [
      "two pins of like size under the board",
      "sedge",
      5,
      { "pin.lower": 6.2 },
      "pin.lower",
      /6 mm and 6.2 mm/,
    ],
    [
      "a pin that no board covers",
      "sedge",
      5,
      { "pin.lower.at": 268 },
      "pin.lower.at",
      /268 mm from the nut/,
    ],
    [
      "a head too short for its tuners",
      "sedge",
      5,
      { "head.margin": 25 },
      "head.margin",
      /too short for its tuners/,
    ],
    ["rows whose holes meet", "sedge", 5, { "head.row": 7 }, "head.row", /holes of strings/],
    ["columns whose holes meet", "sedge", 5, { "head.column": 3.5 }, "head.column", /holes of strings/],
    ["a hole out of the head's side", "sedge", 5, { "head.edge": 3 }, "head.edge", /head's side/],
    ["buttons in each other", "sedge", 5, { "tuner.button": 27 }, "tuner.button", /buttons of strings/],
    [
      "pegs' buttons that meet across the head",
      "mallow",
      5,
      { "tuner.button": 26.5 },
      "tuner.button",
      /buttons of strings/,
    ],
    [
      "strings' ends that meet behind a bare head",
      "bulrush",
      5,
      { "tuner.button": 16 },
      "tuner.button",
      /ends of strings/,
    ],
    ["holes of a bare head that meet", "bulrush", 5, { "tuner.hole": 16 }, "tuner.hole", /holes of strings/],
    ["a post thicker than its bushing", "sedge", 5, { "tuner.post": 8 }, "tuner.post", /posts of 8 mm/],
    ["a peg too thick for its taper", "mallow", 5, { "tuner.post": 8.3 }, "tuner.post", /posts of 8.3 mm/],
    [
      "strings that cross",
      "sedge",
      4,
      { "head.column": 6, "tuner.post": 7.9 },
      "head.column",
      /cross on the head/,
    ],
    [
      "a string into the hole of its neighbour on a bare head",
      "bulrush",
      5,
      { "tuner.hole": 14 },
      "tuner.hole",
      /string \d and the hole of string/,
    ],
    ["a head narrower than its nut", "bulrush", 5, { "head.edge": 3.1 }, "head.edge", /at a nut/],
    ["a volute longer than the head", "sedge", 4, { "head.volute": 97 }, "head.volute", /leaves the head/],
  ])("%s", (_, design, count, values, name, found) => {
    const sample = specOf(design, count);
    expect(problemsOf(sample)).toEqual([]);
    const spec = forced(sample, values);
    const problem = problemsOf(spec).find((each) => found.test(each.found));
    expect(problem, JSON.stringify(problemsOf(spec).map((each) => each.found))).toBeDefined();
    expect(problem!.name).toBe(name);
    expect(problem!.position.line).toBe(9);
    expect(`${problem!.found} ${problem!.allowed} ${problem!.hint}`).not.toMatch(
      /NaN|undefined|Infinity|leave it/,
    );
    if (movesIn(problem!.hint).length > 0)
      expect(mended(spec, problem!.hint, problem!.found), problem!.hint).toBe(true);
    else expect(problem!.hint).toMatch(/(raise|lower|shorten) [a-z.]+/);
  });

  it("a neck too thin for its rods names by how much it must be thicker, and that is enough", () => {
    const thin = { "neck.thickness.nut": 17, "neck.thickness.heel": 19, "rod.depth": 7.5 };
    const spec = forced(specOf("thrift", 7), thin);
    const { hint } = problemsOf(spec)[0]!;
    const by = Number(/raise neck.thickness.nut and neck.thickness.heel by ([\d.]+) mm each/.exec(hint)![1]);
    const thicker = (more: number) =>
      instrument(
        forced(spec, { "neck.thickness.nut": 17 + more, "neck.thickness.heel": 19 + more }),
        memoryStore(),
      ).neckRodWalls.map(({ left }) => left);
    const wall = spec.values["rod.wall"]!.value;
    expect(Math.min(...thicker(by))).toBeGreaterThanOrEqual(wall - 0.02);
    expect(Math.min(...thicker(by - 0.3))).toBeLessThan(wall);
  });
});
