import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readQuantity } from "../../src/order/quantity.ts";

describe("a written quantity", () => {
  it.each([
    ["328", 328],
    ["328 mm", 328],
    ["328mm", 328],
    ["12.9 in", 12.9 * 25.4],
    ["1/2 in", 12.7],
    ["1 1/16 in", 26.9875],
    ['1 1/16"', 26.9875],
    ["3.2 cm", 32],
    ["-4 mm", -4],
    ["1e2", 100],
    ["  5.  ", 5],
    [".5 mm", 0.5],
  ])("the length %j is %d mm", (text, mm) => {
    expect(readQuantity(text, "length")).toEqual({ ok: true, value: expect.closeTo(mm, 12) });
  });

  it.each([
    ["12", 12],
    ["12 deg", 12],
    ["12°", 12],
    ["12° 30'", 12.5],
    ["-12° 30'", -12.5],
    ["1° 0' 36\"", 1.01],
  ])("the angle %j is %d degrees", (text, degrees) => {
    expect(readQuantity(text, "angle")).toEqual({ ok: true, value: expect.closeTo(degrees, 12) });
  });

  it.each([
    ["length", "NaN", "type"],
    ["length", "Infinity", "type"],
    ["length", "1e400", "range"],
    ["length", "3,5", "type"],
    ["length", "1/0 in", "type"],
    ["length", "12 furlongs", "unit"],
    ["length", "1/2", "unit"],
    ["length", "", "type"],
    ["length", "mm", "type"],
    ["length", "0x10", "unit"],
    ["length", "12 deg", "unit"],
    ["length", "1 2 mm", "type"],
    ["length", "12 constructor", "unit"],
    ["angle", "12 mm", "unit"],
    ["angle", "12° 75'", "type"],
    ["number", "5 mm", "unit"],
    ["mass-per-length", "0.4 oz/ft", "unit"],
  ] as const)("as a %s, %j is refused by its %s", (kind, text, code) => {
    expect(readQuantity(text, kind)).toMatchObject({ ok: false, code, allowed: expect.stringMatching(/\w/) });
  });

  it("reads any decimal as JavaScript itself does, with or without a unit", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => {
        expect(readQuantity(String(x), "length")).toEqual({ ok: true, value: x + 0 });
        expect(readQuantity(`${x} mm`, "length")).toEqual({ ok: true, value: x + 0 });
      }),
      { seed: 3, numRuns: 1000 },
    );
  });

  it("never throws and never gives a number that is none, whatever is written", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readQuantity(text, "length");
        if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
      }),
      { seed: 5, numRuns: 2000 },
    );
  });
});
