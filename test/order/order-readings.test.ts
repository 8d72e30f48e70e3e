import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Problem } from "../../src/order/problem.ts";
import type { Options } from "../../src/order/resolve.ts";
import { orderText, resolved, sampleText, specOf } from "../samples.ts";
import { good, toldProblems } from "./problems.ts";

function problemsIn(text: string, options: Options = {}): readonly Problem[] {
  return toldProblems(resolved(text, options));
}

describe("options", () => {
  it.each<[Options, Partial<Problem>]>([
    [{ strings: "3" }, { code: "count", name: "strings", found: "3" }],
    [{ strings: "4.5" }, { code: "count", found: "4.5" }],
    [{ hand: "up" }, { code: "type", name: "hand" }],
    [{ set: [{ name: "string.length", text: "1 mile" }] }, { code: "unit", name: "string.length" }],
    [{ set: [{ name: "string.lenght", text: "326" }] }, { hint: "did you mean string.length?" }],
  ])("%j", (options, problem) => {
    expect(problemsIn(good, options)[0]).toMatchObject({ ...problem, position: { file: "command line" } });
  });
});

describe("what is read", () => {
  it("keeps an id 0417 as it stands", () => {
    const spec = resolved(good.replace("T-1", "0417"));
    expect(spec.ok && spec.value.order).toBe("0417");
  });

  it("knows of every value where it came from", () => {
    const spec = specOf("sedge", 5, "set:\n  string.length: 326 mm\n", {
      set: [{ name: "nut.margin", text: "3.9" }],
    });
    const from = (id: string) => [spec.values[id]!.source, spec.values[id]!.position.file];
    expect(from("string.length")).toEqual(["order", "order.yaml"]);
    expect(from("nut.margin")).toEqual(["command line", "command line"]);
    expect(from("nut.gap")).toEqual(["string count", expect.stringContaining("sedge.yaml")]);
    expect(from("core.slope")).toEqual(["design", expect.stringContaining("sedge.yaml")]);
    expect(spec.values["string.length"]!.position.line).toBe(8);
  });

  it("lets what refers to a dimension move with it", () => {
    const [a, b] = [specOf("sedge", 5), specOf("sedge", 5, "set:\n  string.length: 330 mm\n")];
    expect(b.values.afterlength!.value - a.values.afterlength!.value).toBeCloseTo(2 / 6, 9);
    expect(b.values["bridge.foot.width"]!.value).toBe(a.values["core.width"]!.value - 4);
  });

  it("says of a value that follows another which one to change", () => {
    const spec = resolved(
      orderText("sedge", 5, "set:\n  string.length: 322\n"),
      {},
      {
        designs: { sedge: sampleText("designs", "sedge.yaml").replace("least: 50 mm", "least: 54 mm") },
      },
    );
    expect(!spec.ok && spec.problems[0]).toMatchObject({
      ...{ code: "range", name: "afterlength" },
      hint: "it follows from string.length: change that less, or set afterlength too",
    });
  });

  it("takes a string as the order describes it", () => {
    const spec = specOf(
      "sedge",
      "[E5, { name: A4, diameter: 0.68 mm }, D4, { name: G3, pitch: F#3, mass: 2.9 g/m }]",
    );
    expect(spec.strings.map(({ diameter }) => diameter)).toEqual([0.26, 0.68, 0.8, 0.83]);
    expect(spec.strings.map(({ semitones }) => semitones)).toEqual([7, 0, -7, -15]);
    expect(spec.strings[3]!.marks).toEqual({ diameter: "G", mass: "M" });
  });

  it("never throws, whatever a person writes: any text, and any one damage to a good order", () => {
    const words = fc.constantFrom(
      "",
      "{",
      "[",
      "]",
      ":",
      "-",
      "&a",
      "*a",
      "!!x",
      "'",
      "\t",
      "\n",
      "0",
      "1e999",
      "null",
      "<<:",
    );
    const damaged = fc.tuple(fc.nat(good.length), fc.nat(20), words).map(([at, cut, word]) => {
      return good.slice(0, at) + word + good.slice(at + cut);
    });
    let refused = 0;
    fc.assert(
      fc.property(fc.oneof(damaged, fc.string()), (text) => {
        if (problemsIn(text).length > 0) refused++;
      }),
      { seed: 11, numRuns: 1500 },
    );
    expect(refused).toBeGreaterThan(500);
  });
});
