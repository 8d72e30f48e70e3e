import { describe, expect, it } from "vitest";
import { contradictions } from "../../../src/instrument/contradictions.ts";
import { instrument } from "../../../src/instrument/instrument.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { alone, forced, movesIn } from "../../forced.ts";
import { bodySpec } from "../../own-body.ts";
import { specOf } from "../../samples.ts";

const store = memoryStore();
const problemsOf = (spec: Spec) => contradictions(spec, instrument(spec, store));

type Case = [what: string, values: Readonly<Record<string, number>>, found: RegExp, name: string];

describe("a body that contradicts the rest", () => {
  it.each<Case>([
    ["with a waist as wide as a bout", { "body.waist.width": 112 }, /waist 112 mm wide/, "body.waist.width"],
    [
      "with bouts out of order",
      { "body.waist.at": 40 },
      /body.upper.at 46 mm, body.waist.at 40/,
      "body.waist.at",
    ],
    ["that ends before its lower bout", { "body.length": 220 }, /body.lower.at 224/, "body.length"],
    ["under the whole core", { "body.drop": 30 }, /front lies 30 mm under/, "body.drop"],
    ["with too thin a floor", { "body.thickness": 22 }, /floor of 2 mm/, "body.thickness"],
    [
      "with a recess through its back",
      { "body.thickness": 19 },
      /recess 20 mm deep .* 19 mm/,
      "body.thickness",
    ],
    ["with edges that meet", { "body.arris": 12 }, /arrises of 12 mm/, "body.arris"],
    ["with edges eased further than its corners", { "body.arris": 9 }, /arrises of 9 mm round/, "body.arris"],
    ["that begins at the core's tail", { "body.start": 312 }, /as good as ended/, "body.start"],
    ["that begins on the heel", { "body.start": 30 }, /begins 30 mm along/, "body.start"],
    ["shorter than the core", { "body.length": 265 }, /ends 309 mm along the core/, "body.length"],
    ["with too little wood behind the core", { "body.length": 272 }, /ends 316 mm/, "body.length"],
    [
      "with a waist narrower than the core",
      { "body.waist.width": 40 },
      /no wood between/,
      "body.waist.width",
    ],
    ["with little wood at the waist", { "body.waist.width": 54 }, /3\.\d+ mm of wood/, "body.waist.width"],
    [
      "with a head end narrower than core and corners",
      { "body.head.width": 66 },
      /wood between/,
      "body.head.width",
    ],
    [
      "with corners too large for its head end",
      { "body.head.corner": 80 },
      /corners of 80 mm/,
      "body.head.corner",
    ],
  ])("%s is told, with what to move", (_, values, found, name) => {
    const spec = forced(alone(specOf("thrift", 4)), values);
    const problems = problemsOf(spec);
    expect(problems.map((problem) => problem.found).join()).toMatch(found);
    expect(problems[0]!.name).toBe(name);
    for (const { hint } of problems) expect(hint).toMatch(/raise|lower|move/);
    const mending = problems.flatMap(({ hint }) =>
      movesIn(hint).filter(({ id, to }) =>
        problemsOf(forced(alone(specOf("thrift", 4)), { ...values, [id]: to })).every(
          (problem) => !found.test(problem.found),
        ),
      ),
    );
    expect(mending.length).toBeGreaterThan(0);
  });

  it("with corners that have no room is told", () => {
    const spec = forced(bodySpec(4, { core: "recess", corners: "four" }), { "body.corner": 400 });
    expect(problemsOf(spec).map(({ found }) => found)).toEqual(["corners of 400 mm between bouts and waist"]);
  });

  it("right through has no floor to be too thin", () => {
    const spec = bodySpec(4, { core: "through", corners: "none" });
    expect(problemsOf(forced(spec, { "body.thickness": 18 }))).toEqual([]);
    expect(spec.values["body.floor.least"]).toBeUndefined();
  });
});
