import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { instrument } from "../../src/instrument/instrument.ts";
import { massFromTension } from "../../src/order/string-mass.ts";
import { forces } from "../../src/physics/forces.ts";
import { memoryStore } from "../../src/step/store.ts";
import { orderText, resolved, specOf } from "../samples.ts";
import { toldProblems } from "./problems.ts";

/** Mersenne's law by the test's own arithmetic, N: from g/m, mm and Hz. */
const byLaw = (grams: number, length: number, hertz: number) =>
  (grams / 1000) * 4 * (length / 1000) ** 2 * hertz ** 2;

/** Equal temperament by logarithms, Hz. */
const hertz = (semitones: number, a4: number) => Math.exp(Math.log(a4) + (semitones * Math.LN2) / 12);

function tensionsOf(strings: string, more = "") {
  const spec = specOf("sedge", strings, more);
  const store = memoryStore();
  return { spec, ...forces(spec, instrument(spec, store), store).strings };
}

const withLast = (own: string) => `[E5, A4, D4, { name: G3, ${own} }]`;

describe("a string's mass from its maker's tension", () => {
  it("gives that tension back at the length and pitch that it was given for", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 200, noNaN: true }),
        fc.double({ min: 200, max: 800, noNaN: true }),
        fc.integer({ min: -40, max: 10 }),
        fc.double({ min: 400, max: 470, noNaN: true }),
        (is, at, semitones, a4) => {
          const mass = massFromTension({ is, at, a4 }, semitones);
          const back = byLaw(mass, at, hertz(semitones, a4));
          expect(Math.abs(back - is)).toBeLessThanOrEqual(1e-9 * is);
        },
      ),
    );
  });

  it("holds in an order, where another length and another standard move it by their squares", () => {
    const { spec, tensions } = tensionsOf(
      withLast("tension: { is: 44.6 N, at: 330 mm, a4: 442 Hz }"),
      "set:\n  string.length: 326 mm\n  pitch.standard: 415 Hz\n",
    );
    // The mass behind it is rounded to 1e-6 g/m on its way.
    expect(tensions[3]).toBeCloseTo(44.6 * (326 / 330) ** 2 * (415 / 442) ** 2, 4);
    expect(spec.strings[3]!.marks.mass).toBe("M");
    expect(spec.strings[3]!.strength).toBeNull();
  });

  it("is read in pounds, and at 440 Hz where no standard is given", () => {
    const { tensions } = tensionsOf(withLast("tension: { is: 10 lbf, at: 12.9134 in }"));
    expect(tensions[3]).toBeCloseTo(44.482216 * (328 / (12.9134 * 25.4)) ** 2, 5);
  });

  it("moves every string's tension and pitch with the standard", () => {
    const plain = tensionsOf("5");
    const low = tensionsOf("5", "set:\n  pitch.standard: 432 Hz\n");
    expect(plain.pitches[1]).toBeCloseTo(440, 9);
    expect(low.pitches[1]).toBeCloseTo(432, 9);
    for (const [i, tension] of low.tensions.entries())
      expect(tension).toBeCloseTo(plain.tensions[i]! * (432 / 440) ** 2, 9);
  });
});

describe("a mass of another order of magnitude", () => {
  const told = (own: string) =>
    toldProblems(resolved(orderText("sedge", withLast(own)))).map(({ hint, found }) => ({ hint, found }));

  it.each([
    ["mass: 0.0027", "kg/m"],
    ["mass: 0.000151", "lb/in"],
    ["mass: 2700", "mg/m"],
  ])("is refused: %s is likely meant in %s", (own, unit) => {
    const [problem, ...more] = told(own);
    expect(more).toEqual([]);
    expect(problem!.hint).toContain("the unit is likely wrong");
    expect(problem!.hint).toContain(` ${unit}`);
  });

  it("is refused of no known unit too, and the units that are named are read when they are written", () => {
    expect(told("mass: 130")[0]!.hint).toContain("is the mass in g/m");
    for (const [own, grams] of [
      ["mass: 0.0027 kg/m", 2.7],
      ["mass: 0.000151 lb/in", 2.6965],
      ["mass: 2700 mg/m", 2.7],
    ] as const)
      expect(specOf("sedge", withLast(own)).strings[3]!.mass).toBeCloseTo(grams, 3);
  });

  it("is refused where a maker's tension leads to it", () => {
    expect(told("tension: { is: 4.46 N, at: 3280 mm }")[0]!.hint).toContain(
      "is the tension in N, the length that it holds for in mm",
    );
  });
});
