import { describe, expect, it } from "vitest";
import { frequency, semitonesFromA4 } from "../../src/order/pitch.ts";
import { semitone } from "../../src/order/semitone.ts";

describe("pitches", () => {
  it.each([
    ["E5", 659.26],
    ["A4", 440],
    ["D4", 293.66],
    ["G3", 196],
    ["C3", 130.81],
    ["F2", 87.31],
    ["Bb1", 58.27],
    ["E4", 329.63],
    ["A3", 220],
    ["D3", 146.83],
    ["G2", 98],
    ["C2", 65.41],
    ["F1", 43.65],
  ])("%s is %d Hz at A4 = 440", (name, hertz) => {
    expect(Math.abs(frequency(semitonesFromA4(name)!, 440) - hertz)).toBeLessThan(0.0051);
  });

  it("knows no other names", () => {
    for (const name of ["H4", "a4", "A", "A44", "", "Cb", "A4 "])
      expect(semitonesFromA4(name)).toBeUndefined();
    expect(semitonesFromA4("C#4")).toBe(semitonesFromA4("D4")! - 1);
  });

  it("doubles exactly in an octave, and is the twelfth root of two within a bit", () => {
    for (let n = -48; n <= 48; n++) {
      expect(semitone(n + 12)).toBe(2 * semitone(n));
      expect(Math.abs(semitone(n) / 2 ** (n / 12) - 1)).toBeLessThan(3e-16);
    }
  });
});
