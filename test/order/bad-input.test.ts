import { describe, expect, it } from "vitest";
import type { Problem } from "../../src/order/problem.ts";
import type { Options } from "../../src/order/resolve.ts";
import { resolved } from "../samples.ts";
import { good, toldProblems } from "./problems.ts";

/** The problems of an order in which one piece of text was replaced. */
function problemsOf(from: string, to: string, options: Options = {}): readonly Problem[] {
  expect(good).toContain(from);
  return problemsIn(good.replace(from, to), options);
}

function problemsIn(text: string, options: Options = {}): readonly Problem[] {
  return toldProblems(resolved(text, options));
}

it("is good to begin with", () => {
  expect(problemsIn(good)).toEqual([]);
});

describe("an order that is wrong in one place", () => {
  it.each<[string, string, string, Partial<Problem>, [line: number, column: number]]>([
    ["not YAML", "hand: right", "hand: [right", { code: "syntax" }, [5, 1]],
    ["a tab", "hand: right", "hand:\n\t- right", { code: "syntax" }, [5, 1]],
    ["a duplicate key", "hand: right", "hand: right\nhand: left", { code: "syntax" }, [5, 1]],
    ["two documents", "order: T-1", "order: T-1\n---\norder: T-2", { code: "syntax" }, [2, 1]],
    ["a tag", "strings: 5", "strings: !!int 5", { code: "syntax" }, [3, 10]],
    ["an alias", "strings: 5", "strings: &a 5\nrevision: *a", { code: "alias" }, [3, 13]],
    [
      "an unknown key",
      "hand: right",
      "hnad: right",
      { code: "unknown-key", hint: "did you mean hand?" },
      [4, 1],
    ],
    ["__proto__", "hand: right", "hand: right\n__proto__: { a: 1 }", { code: "unknown-key" }, [5, 1]],
    ["a wrong type", "hand: right", "hand: [right]", { code: "type", name: "hand" }, [4, 7]],
    ["a wrong word", "hand: right", "hand: rihgt", { hint: "did you mean right?", found: '"rihgt"' }, [4, 7]],
    ["a missing key", "hand: right\n", "", { code: "missing", name: "hand" }, [1, 1]],
    ["a wrong unit", "326 mm", "326 furlongs", { code: "unit", name: "string.length" }, [8, 18]],
    ["a bad fraction", "326 mm", "12 15/0 in", { code: "type", name: "string.length" }, [8, 18]],
    ["NaN", "326 mm", ".nan", { code: "type", name: "string.length" }, [8, 18]],
    ["infinite", "326 mm", "1e400", { code: "range", name: "string.length" }, [8, 18]],
    ["zero", "326 mm", "0", { code: "range", found: "0 mm", allowed: "322 mm to 335 mm" }, [8, 18]],
    ["negative", "326 mm", "-326 mm", { code: "range", name: "string.length" }, [8, 18]],
    ["absurd", "326 mm", "326 m", { code: "range", hint: "the design allows no more; try 335 mm" }, [8, 18]],
    ["out of range", "326 mm", "345 mm", { code: "range", name: "string.length" }, [8, 18]],
    ["three strings", "strings: 5", "strings: 3", { code: "count", name: "strings" }, [3, 10]],
    [
      "seven where six is most",
      "strings: 5",
      "strings: 7",
      { allowed: "design sedge has 4, 5, 6 strings" },
      [3, 10],
    ],
    ["eight strings", "strings: 5", "strings: 8", { code: "count", name: "strings" }, [3, 10]],
    ["4.5 strings", "strings: 5", "strings: 4.5", { code: "count", found: '"4.5"' }, [3, 10]],
    ["no strings", "strings: 5", "strings:", { code: "count", name: "strings" }, [3, 9]],
    ["out of pitch order", "strings: 5", "strings: [E5, D4, A4, G3]", { code: "order-of-strings" }, [3, 19]],
    ["a string twice", "strings: 5", "strings: [E5, A4, A4, G3]", { code: "order-of-strings" }, [3, 19]],
    ["an unknown string", "strings: 5", "strings: [E5, A4, D4, B4]", { code: "unknown-name" }, [3, 23]],
    ["a string too few", "strings: 5", "strings: [E5, A4, D4]", { code: "count" }, [3, 10]],
    [
      "a mass in kg/m",
      "strings: 5",
      "strings: [E5, A4, D4, { name: G3, mass: 0.0027 }]",
      { code: "range" },
      [3, 23],
    ],
    ["an unknown design", "sedge", "segde", { code: "unknown-name", hint: "did you mean sedge?" }, [2, 9]],
    ["a design elsewhere", "sedge", "../../sedge", { name: "design" }, [2, 9]],
    [
      "an unknown shop",
      "samphire",
      "saphire",
      { code: "unknown-name", hint: "did you mean samphire?" },
      [6, 7],
    ],
    [
      "an unknown dimension",
      "string.length",
      "string.lenght",
      { hint: "did you mean string.length?" },
      [8, 3],
    ],
    [
      "a derived dimension",
      "string.length: 326 mm",
      "nut.spread: 20 mm",
      { code: "derived", name: "nut.spread" },
      [8, 3],
    ],
    ["an empty id", "order: T-1", "order: ''", { code: "type", name: "order" }, [1, 8]],
    ["an id with a bell", "order: T-1", 'order: "T\\a1"', { name: "order" }, [1, 8]],
    ["an id that leaves", "order: T-1", "order: ../T-1", { name: "order" }, [1, 8]],
    ["an id of dots", "order: T-1", "order: ..", { name: "order" }, [1, 8]],
    ["an id that is a device", "order: T-1", "order: NUL", { name: "order" }, [1, 8]],
    ["an id of a variant", "order: T-1", "order: T-1~abc", { name: "order" }, [1, 8]],
    ["frets", "frets: none", "frets: { count: 24 }", { code: "contradiction", name: "frets" }, [5, 8]],
    [
      "too many frets",
      "frets: none",
      "frets: { count: 50 }",
      { code: "count", name: "frets.count" },
      [5, 17],
    ],
    ["a mistyped count", "frets: none", "frets: { cuont: 5 }", { hint: "did you mean count?" }, [5, 10]],
    ["an anchor", "strings: 5", "strings: &a 5", { code: "alias", found: "the anchor &a" }, [3, 13]],
    [
      "a map for strings",
      "strings: 5",
      "strings: { a: 1 }",
      { allowed: "a count from 4 to 7, or a list of strings" },
      [3, 10],
    ],
    [
      "an empty set",
      "  string.length: 326 mm\n",
      "",
      { name: "set", allowed: "a map of dimensions and their values" },
      [7, 5],
    ],
    [
      "a design with its ending",
      "sedge",
      "sedge.yaml",
      { code: "unknown-name", hint: "write sedge" },
      [2, 9],
    ],
    [
      "a string that is no pitch",
      "strings: 5",
      "strings: [E5, A4, D4, { name: length }]",
      { name: "strings.3.name" },
      [3, 31],
    ],
  ])("%s", (_, from, to, problem, [line, column]) => {
    const [first] = problemsOf(from, to);
    expect(first).toMatchObject({ ...problem, position: { file: "order.yaml", line, column } });
  });

  it("a derived dimension says what it follows from", () => {
    const [problem] = problemsOf("string.length: 326 mm", "nut.spread: 20 mm");
    expect(problem!.hint).toBe(
      "nut.spread follows from nut.gap, the strings' diameters: change one of these",
    );
  });

  it("an overrule of what is never overruled, or without a reason", () => {
    const overrule = (text: string) => problemsIn(`${good}overrule:\n  - ${text}\n`)[0];
    expect(overrule("{ check: feed.climb, reason: quick }")).toMatchObject({ code: "overrule" });
    expect(overrule("{ check: clamp.swept.neck-shaper, reason: quick }")).toMatchObject({ code: "overrule" });
    expect(overrule("{ check: wall.nut }")).toMatchObject({ code: "missing", name: "overrule.0.reason" });
    expect(overrule("{ check: wall.nut, reason: '  ' }")).toMatchObject({ name: "overrule.0.reason" });
    expect(overrule("{ check: wall.nut, reason: 真鍮のナット }")).toMatchObject({
      name: "overrule.0.reason",
    });
    expect(overrule("{ check: wall.nut, reason: Größe ø 3 – naïve }")).toBeUndefined();
    expect(problemsIn(`${good}overrule:\n  - { check: wall.nut, reason: tried it }\n`)).toEqual([]);
  });

  it("an alias bomb, a deep nest and a huge file end at once", () => {
    const bomb = `a: &a [x, x, x]\n${[..."bcdefghij"].map((c, i) => `${c}: &${c} [*${"abcdefghij"[i]}, *${"abcdefghij"[i]}]`).join("\n")}`;
    expect(problemsIn(bomb)[0]).toMatchObject({ code: "alias" });
    expect(problemsIn(`order: ${"[".repeat(20000)}`)[0]).toMatchObject({ code: "syntax" });
    expect(problemsIn(`order: ${"[".repeat(300)}${"]".repeat(300)}`)[0]).toMatchObject({ code: "syntax" });
    expect(problemsIn("#".repeat(1_000_001))[0]).toMatchObject({ code: "syntax" });
    expect(problemsIn("")[0]).toBeDefined();
    expect(problemsIn("just words")[0]).toMatchObject({ code: "type" });
  });

  it("several at once, all of them", () => {
    const names = problemsIn(
      good.replace("hand: right", "hand: up").replace("frets: none", "frets: some"),
    ).map(({ name }) => name);
    expect(names).toEqual(["hand", "frets"]);
  });
});
