import { describe, expect, it } from "vitest";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { forced, movesIn } from "../forced.ts";
import { everyCount, frettedSpec, specOf } from "../samples.ts";

const problemsOf = (spec: Spec) => contradictions(spec, instrument(spec, memoryStore()));

const sedge = specOf("sedge", 5);
const thrift = frettedSpec(5);
const bare = specOf("thrift", 5);
/** Sedge's leaf on a board with thrift's dots in its face. */
const dotted: Spec = {
  ...sedge,
  values: { ...bare.values, ...sedge.values },
  dots: { face: [3, 5, 7, 9, 12, 15, 19], side: [] },
};

type Case = [what: string, spec: Spec, name: string, found: RegExp];

const cases: Case[] = [
  [
    "a high string in the board at the nut",
    forced(sedge, { "string.clearance.nut.high": -0.2 }),
    "string.clearance.nut.high",
    /string 1.*0\.2 mm below the board's surface at the nut/,
  ],
  [
    "a low string in the board at its end",
    forced(sedge, { "string.clearance.end.low": -0.3 }),
    "string.clearance.end.low",
    /string 5.*0\.3 mm below the board's surface at the board's end/,
  ],
  [
    "strings in a board that rises along its length",
    forced(sedge, { "fingerboard.scoop.low": -6 }),
    "string.clearance.nut.low",
    /string 5.*below the board's surface \d+ mm from the nut/,
  ],
  [
    "a nut whose crown ends under the board",
    forced(sedge, { "string.clearance.nut.low": 8 }),
    "string.clearance.nut.low",
    /a nut whose finished crown is .* under the board/,
  ],
  [
    "an edge under two millimetres",
    forced(sedge, { "fingerboard.edge": 2.4 }),
    "fingerboard.edge",
    /edge 1\.7\d mm thick/,
  ],
  [
    "an edge that its scoop thins",
    forced(sedge, { "fingerboard.scoop.low": 3.5 }),
    "fingerboard.scoop.low",
    /bass edge 1\.\d+ mm thick, 1\d\d/,
  ],
  [
    "a fret that reaches over the board's end",
    forced(frettedSpec(5, "", 24), { "fret.crown.width": 50 }),
    "frets",
    /a last fret whose crown reaches/,
  ],
  [
    "strings beyond the flat of the frets",
    forced(thrift, { "fret.dressing": 4 }),
    "fret.dressing",
    /outer string on the treble side .* beyond the flat of fret/,
  ],
  ["a dot through the board", forced(thrift, { "dot.depth": 9 }), "dot.depth", /dot 3 9 mm deep/],
  [
    "a dot wider than two frets are apart",
    forced(thrift, { "dot.size": 4.3 }),
    "dot.size",
    /dot 24 with .* of wood to a fret's slot/,
  ],
  [
    "two dots in each other",
    forced(thrift, { "dot.apart": 3 }),
    "dot.apart",
    /two dots of 3\.5 mm whose middles are 3 mm apart/,
  ],
  [
    "two dots over the board's edges",
    forced(thrift, { "dot.apart": 36 }),
    "dot.apart",
    /between dot 12 and the board's edge/,
  ],
  [
    "a dot beyond the board's end",
    { ...bare, dots: { face: [12, 33], side: [] } },
    "fingerboard.length",
    /dot 33 reaching/,
  ],
  [
    "a side dot beyond the board's end",
    { ...bare, dots: { face: [], side: [35] } },
    "fingerboard.length",
    /side dot 35 reaching/,
  ],
  [
    "a side dot larger than the edge",
    forced(thrift, { "side-dot.size": 4.8 }),
    "side-dot.size",
    /side dot \d+, 4\.8 mm across, in an edge/,
  ],
  [
    "a side dot past the board's middle",
    forced(thrift, { "side-dot.depth": 20 }),
    "side-dot.depth",
    /20 mm deep, in a board/,
  ],
  ["a dot in an inlay", dotted, "dot.size", /dot 15 .*inlay leaf|inlay leaf/],
];

describe("boards and dots that contradict the rest", () => {
  it.each(cases)("%s", (_, spec, name, found) => {
    const problems = problemsOf(spec);
    const problem = problems.find((one) => found.test(one.found));
    expect(problem, JSON.stringify(problems)).toMatchObject({ name });
    expect(`${problem!.found} ${problem!.allowed} ${problem!.hint}`).not.toMatch(/NaN|undefined|Infinity/);
    expect(problem!.position.file.length).toBeGreaterThan(0);
    // What it tells to move to a number is enough.
    for (const { id, to } of movesIn(problem!.hint))
      expect(problemsOf(forced(spec, { [id]: to })).filter((one) => one.found === problem!.found)).toEqual(
        [],
      );
  });

  it("mends are named with a number where one is known", () => {
    const moved = cases.filter(([, spec, , found]) => {
      const problem = problemsOf(spec).find((one) => found.test(one.found));
      return movesIn(problem!.hint).length > 0;
    });
    expect(moved.length).toBeGreaterThan(5);
  });

  it.each(everyCount)("$design with $count strings has none", ({ design, count }) => {
    expect(problemsOf(specOf(design, count))).toEqual([]);
  });

  it.each([4, 5, 6, 7])("thrift with frets and %i strings has none, at any number of frets", (count) => {
    for (const frets of [1, 2, 12, 24]) expect(problemsOf(frettedSpec(count, "", frets))).toEqual([]);
  });
});
