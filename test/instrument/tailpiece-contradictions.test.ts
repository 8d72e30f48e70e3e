import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec, SpecFace } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { movesIn } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";
import { stretched } from "../stretched.ts";

const problemsOf = (spec: Spec) => contradictions(spec, instrument(spec, memoryStore()));

type Values = Readonly<Record<string, number>>;

/** The moves that a message tells to try which leave no such problem; the others may bring one of another kind. */
function mending(design: string, count: number, values: Values, hint: string, found: RegExp) {
  return movesIn(hint).filter(({ id, to }) => {
    const left = problemsOf(stretched(design, count, { ...values, [id]: to }));
    return left.every((problem) => !found.test(problem.found));
  });
}

/** A spec whose tailpiece has another face. */
function faced(spec: Spec, change: (face: SpecFace) => SpecFace): Spec {
  return { ...spec, tailpieceFace: change(spec.tailpieceFace) };
}

type Case = [what: string, design: string, count: number, values: Values, name: string, found: RegExp];

describe("a tailpiece that contradicts the rest", () => {
  it.each<Case>([
    ["above its strings", "sedge", 5, { "tailpiece.height": 36 }, "tailpiece.height", /exits 36 mm/],
    ["in the core", "sedge", 5, { "tailpiece.height": 5 }, "tailpiece.height", /1 mm in the core/],
    [
      "without a gap to the core",
      "bulrush",
      4,
      { "tailpiece.thickness": 16.76 },
      "tailpiece.thickness",
      /underside is 0 mm/,
    ],
    [
      "with less of a gap than any order may ask for",
      "thrift",
      7,
      { "tailpiece.height": 6.5 },
      "tailpiece.height",
      /0.5 mm over/,
    ],
    [
      "too narrow for seven strings",
      "thrift",
      7,
      { "tailpiece.spread": 20, "tailpiece.width": 53 },
      "tailpiece.spread",
      /7 strings .* no room/,
    ],
    ["with holes too wide for five", "mallow", 5, { "tailpiece.hole": 7.1 }, "tailpiece.hole", /holes of/],
    [
      "with outer holes beside its edge",
      "bulrush",
      5,
      { "tailpiece.width": 48 },
      "tailpiece.width",
      /the plate's side/,
    ],
    [
      "with outer holes beyond its edge",
      "sedge",
      4,
      { "tailpiece.width": 38, "tailpiece.spread": 37.5 },
      "tailpiece.width",
      /no wood .* side, which overlap/,
    ],
    [
      "narrower than its strings",
      "sedge",
      6,
      { "tailpiece.width": 34 },
      "tailpiece.width",
      /34 mm wide 36 mm apart/,
    ],
    [
      "with strings in each other",
      "thrift",
      7,
      { "tailpiece.spread": 5, "tailpiece.width": 53 },
      "tailpiece.spread",
      /7 strings that lie/,
    ],
    [
      "with a hole too small for a string",
      "thrift",
      7,
      { "tailpiece.hole": 1.9 },
      "tailpiece.hole",
      /a string 2 mm thick/,
    ],
    [
      "with holes in its front",
      "sedge",
      5,
      { "tailpiece.hole.at": 2 },
      "tailpiece.hole.at",
      /the plate's front/,
    ],
    [
      "too short for holes and posts",
      "sedge",
      5,
      { "tailpiece.length": 11.5 },
      "tailpiece.length",
      /hole of .* post-/,
    ],
    [
      "whose posts stand beside the core",
      "thrift",
      4,
      { "tailpiece.width": 85 },
      "tailpiece.width",
      /the core's side/,
    ],
    [
      "past the core's end",
      "sedge",
      5,
      { "tailpiece.length": 70 },
      "tailpiece.length",
      /past the core's end/,
    ],
    [
      "pushed past the core's end by the strings",
      "bulrush",
      4,
      { "core.end": 850 },
      "core.end",
      /past the core's end/,
    ],
    [
      "that runs into the bridge",
      "sedge",
      5,
      { afterlength: 8, "tailpiece.height": 28.5, "tailpiece.slant": 25 },
      "afterlength",
      /into the bridge/,
    ],
    [
      "without room for its corners",
      "sedge",
      4,
      { "tailpiece.length": 4 },
      "tailpiece.length",
      /can't be made/,
    ],
  ])("%s", (_, design, count, values, name, found) => {
    expect(problemsOf(stretched(design, count, {}))).toEqual([]);
    const spec = stretched(design, count, values);
    const problem = problemsOf(spec).find((each) => found.test(each.found));
    expect(problem, JSON.stringify(problemsOf(spec))).toBeDefined();
    expect(Object.keys(values)).toContain(name);
    expect(problem!.name).toBe(name);
    expect(problem!.code).toBe("contradiction");
    expect(problem!.position).toMatchObject({
      file: "order.yaml",
      line: 8 + Object.keys(values).indexOf(name),
    });
    expect(`${problem!.found} ${problem!.allowed} ${problem!.hint}`).not.toMatch(
      /NaN|undefined|Infinity|leave it/,
    );
    const moves = movesIn(problem!.hint);
    if (moves.length > 0)
      expect(mending(design, count, values, problem!.hint, found), problem!.hint).toEqual(moves);
    else expect(problem!.hint).toMatch(/(raise|lower|move) [a-z.]+/);
  });

  const moved =
    (id: string, at: readonly [number, number], size = 4) =>
    (face: SpecFace) => ({
      ...face,
      holes: face.holes.map((hole) => (hole.id === id ? { ...hole, at, size } : hole)),
    });

  it.each<[string, (face: SpecFace) => SpecFace, RegExp, string]>([
    [
      "a post's hole out of the plate",
      moved("post-bass", [-3, 8]),
      /post-bass and the plate's edge/,
      "post-bass",
    ],
    [
      "a post's hole in a string's",
      moved("post-treble", [21.5, 26]),
      /the hole of \w+ and post-treble/,
      "post-treble",
    ],
    [
      "two posts' holes in each other",
      moved("post-treble", [12, 8]),
      /post-bass and post-treble/,
      "post-treble",
    ],
    [
      "a front edge that isn't there",
      (face) => ({
        ...face,
        edges: face.edges.map((edge) => (edge.id === "front" ? { ...edge, follows: "bridge.crown" } : edge)),
      }),
      /edge front can't be made/,
      "front",
    ],
  ])("%s, told at its place in the design", (_, change, found, place) => {
    const sample = specOf("sedge", 5);
    const problem = problemsOf(faced(sample, change)).find((each) => found.test(each.found));
    expect(problem, JSON.stringify(problemsOf(faced(sample, change)))).toBeDefined();
    expect(problem!.position).toEqual(sample.places[`tailpiece.${place}`]);
    expect(problem!.position.file).toMatch(/sedge/);
  });

  it.each(everyCount)(
    "is silent about $design with $count strings, straight or slanted",
    ({ design, count }) => {
      for (const slant of [0, 15, -10])
        expect(problemsOf(stretched(design, count, { "tailpiece.slant": slant }))).toEqual([]);
    },
  );
});
