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

  it("has none on a design without wings", () => {
    const [problem] = told("thrift", "fixtures:\n  wing-bass-router: { cutter: straight-12 }\n");
    expect(problem).toMatchObject({ code: "unknown-name", allowed: "none: this design has no fixtures" });
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
