import { describe, expect, it } from "vitest";
import type { Problem } from "../../src/order/problem.ts";
import { resolved, sampleText } from "../samples.ts";
import { good, toldProblems } from "./problems.ts";

describe("a design that is wrong", () => {
  const design = sampleText("designs", "sedge.yaml");
  const withDesign = (from: string, to: string) => {
    expect(design).toContain(from);
    const spec = resolved(good, {}, { designs: { sedge: design.replace(from, to) } });
    return toldProblems(spec);
  };

  it.each<[string, string, string, Partial<Problem>]>([
    ["a count without a value", "5: 4.45 mm, ", "", { code: "missing", name: "nut.gap" }],
    [
      "a value out of its own range",
      "value: 270 mm",
      "value: 290 mm",
      { code: "range", name: "fingerboard.length" },
    ],
    [
      "a circle",
      "value: { part: 1/6, of: string.length }",
      "value: { dim: afterlength }",
      { code: "contradiction" },
    ],
    [
      "a reference to nothing",
      "of: string.length }",
      "of: string.lenght }",
      { hint: "did you mean string.length?" },
    ],
    ["an edge without an end", "{ id: foot-treble, to: [1, 0] }", "{ id: foot-treble }", { code: "type" }],
    ["a measure in gallons", "at: [0.5, {", "at: [2 gallons, {", { name: "bridge.face.holes.0.at.0" }],
    [
      "a dimension left out",
      / {2}nut\.gap:\n( {4}.*\n)+/.exec(design)![0],
      "",
      { code: "missing", name: "nut.gap" },
    ],
    [
      "wings on a body in one piece",
      "build: winged",
      "build: one-piece",
      { code: "contradiction", name: "wings", found: "wings in a design whose build is one-piece" },
    ],
  ])("%s", (_, from, to, problem) => {
    expect(withDesign(from, to)[0]).toMatchObject(problem);
  });
});

describe("a shop that is wrong", () => {
  const shop = sampleText("shops", "samphire.yaml");
  it.each<[string, string, string, Partial<Problem>]>([
    ["a throat of 0", "throat: 425 mm", "throat: 0", { name: "machines.0.throat" }],
    ["a negative diameter", "diameter: 100.0 mm", "diameter: -3 mm", { name: "cutters.0.diameter" }],
    [
      "a cutter for no machine",
      "fits: [shaper], diameter: 100.0",
      "fits: [sahper], diameter: 100.0",
      { hint: "did you mean shaper?" },
    ],
    ["two things of one name", "id: block-60", "id: block-100", { name: "cutters.1.id" }],
    [
      "a machine of no kind",
      "kind: laser",
      "kind: lasser",
      { found: '"lasser"', hint: "did you mean laser?" },
    ],
    [
      "a diameter without a day",
      ", measured: 2026-10-02, length: 80 mm, most-speed: 8000",
      ", length: 80 mm, most-speed: 8000",
      { code: "missing" },
    ],
    [
      "a day that is none",
      "measured: 2026-10-02, length: 80 mm, most-speed: 8000",
      "measured: 2026-13-02, length: 80 mm, most-speed: 8000",
      { name: "cutters.0.measured" },
    ],
    [
      "another name than its file's",
      "shop: samphire",
      "shop: elsewhere",
      { code: "contradiction", name: "shop" },
    ],
  ])("%s", (_, from, to, problem) => {
    expect(shop).toContain(from);
    const spec = resolved(good, {}, { shops: { samphire: shop.replace(from, to) } });
    expect(toldProblems(spec)[0]).toMatchObject(problem);
  });
});
