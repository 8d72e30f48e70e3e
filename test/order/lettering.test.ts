import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lettered } from "../../src/order/lettering.ts";

describe("lettering", () => {
  it.each([
    ["Größe 3 mm", "Groesse 3 mm"],
    ["naïve café, Åse Østby", "naive cafe, Aase Oestby"],
    ["12°", "12 deg"],
    ["plain - 'quoted'", "plain - 'quoted'"],
  ])("spells %j as %j", (text, spelled) => {
    expect(lettered(text)).toBe(spelled);
  });

  it("refuses what it can't spell, rather than drop it", () => {
    for (const text of ["真鍮", "ok ☃", "a\nb", "тест"]) expect(lettered(text)).toBeUndefined();
  });

  it("never loses a letter: what it gives is plain, and no shorter than the text without its accents", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        const spelled = lettered(text);
        if (spelled === undefined) return;
        expect(spelled).toMatch(/^[ -~]*$/);
        expect(spelled.length).toBeGreaterThanOrEqual(
          [...text.normalize("NFD").replace(/\p{M}/gu, "")].length,
        );
      }),
      { seed: 1, numRuns: 1000 },
    );
  });
});
