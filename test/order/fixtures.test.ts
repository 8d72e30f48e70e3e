import { describe, expect, it } from "vitest";
import { orderText, resolved, sampleText, specOf } from "../samples.ts";
import { toldProblems } from "./problems.ts";

const told = (design: string, more: string) => toldProblems(resolved(orderText(design, 5, more)));

describe("what an order names for its fixtures", () => {
  it("is none unless it says so, and null for what it leaves to choose", () => {
    expect(specOf("sedge", 5).fixtures).toEqual({});
    const spec = specOf("sedge", 5, "fixtures:\n  wing-bass-router: { cutter: straight-12 }\n");
    expect(spec.fixtures).toEqual({
      "wing-bass-router": { machine: null, cutter: "straight-12", guide: null },
    });
  });

  it.each([
    [
      "an unknown fixture",
      "  wing-bas-router: { cutter: straight-12 }",
      "did you mean wing-bass-router?",
      [8, 3],
    ],
    [
      "a machine that isn't owned",
      "  wing-bass-router: { machine: table-ruter }",
      "did you mean table-router?",
      [8, 32],
    ],
    [
      "a cutter that isn't owned",
      "  wing-bass-router: { cutter: straight-18 }",
      "did you mean straight-19?",
      [8, 31],
    ],
    ["a guide that isn't owned", "  wing-bass-router: { guide: bush-17 }", "did you mean bush-1", [8, 30]],
    ["an unknown key", "  wing-bass-router: { cuter: straight-19 }", "did you mean cutter?", [8, 23]],
    ["no map", "  wing-bass-router: straight-19", "", [8, 21]],
    ["__proto__", "  __proto__: { cutter: straight-19 }", "", [8, 3]],
  ])("%s is told at its place", (_, line, hint, [row, column]) => {
    const [problem, more] = told("sedge", `fixtures:\n${line}\n`);
    expect(more).toBeUndefined();
    expect(problem!.hint).toContain(hint);
    expect(problem!.position).toMatchObject({ line: row, column });
  });

  it("has none of the wings on a design without wings", () => {
    const [problem] = told("thrift", "fixtures:\n  wing-bass-router: { cutter: straight-12 }\n");
    const own = "neck-shaper, body-bass-router, body-treble-router, fingerboard-router";
    const allowed = `${own}, neck-front-inside, body-back-inside`;
    expect(problem).toMatchObject({ code: "unknown-name", allowed });
    expect(told("sedge", "fixtures:\n  body-bass-router: { cutter: straight-12 }\n")).toHaveLength(1);
  });
});

it("an edge of a design may say that it is finished by hand, and no edge says anything else", () => {
  const edge = "- { id: rim, through";
  const design = sampleText("designs", "sedge.yaml");
  const marked = design.replaceAll(edge, "- { id: rim, finish: hand, through");
  const spec = resolved(orderText("sedge", 5), {}, { designs: { sedge: marked } });
  const finishes = spec.ok ? spec.value.wings!.bass.face.edges.map(({ finish }) => finish) : [];
  expect(finishes).toEqual([undefined, undefined, "hand", undefined]);
  const wrong = design.replace(edge, "- { id: rim, finish: knife, through");
  const problems = toldProblems(resolved(orderText("sedge", 5), {}, { designs: { sedge: wrong } }));
  expect(problems[0]).toMatchObject({ allowed: "hand" });
});

describe("what a shop must say before anything is cut along a template", () => {
  const shop = sampleText("shops", "samphire.yaml");
  const wrong = (from: string, to: string) => {
    expect(shop).toContain(from);
    return toldProblems(resolved(orderText("sedge", 5), {}, { shops: { samphire: shop.replace(from, to) } }));
  };
  it.each([
    ["which way a spindle turns", "mount: table, rotation: ccw, ", "mount: table, ", "rotation"],
    ["what moves", "mount: hand, rotation: cw, moves: tool, ", "mount: hand, rotation: cw, ", "moves"],
    [
      "the day that a cutter was measured",
      "diameter: 19.05 mm, measured: 2026-10-02, length",
      "diameter: 19.05 mm, length",
      "measured",
    ],
    [
      "a day of measuring that is one",
      "12.68 mm, measured: 2026-10-02, length",
      "12.68 mm, measured: lately, length",
      "measured",
    ],
    [
      "a guide's diameter",
      "kind: bush, fits: [hand-router], diameter: 16.0 mm, ",
      "kind: bush, fits: [hand-router], ",
      "diameter",
    ],
  ])("%s", (_, from, to, name) => {
    const [problem, more] = wrong(from, to);
    expect(more).toBeUndefined();
    expect(problem!.name).toContain(name);
    expect(problem!.position.file).toBe("samphire.yaml");
  });
});
