import { describe, expect, it } from "vitest";
import { rectangle } from "../../src/geometry/rectangle.ts";
import { wastePins } from "../../src/workshop/bandsaw/waste-pins.ts";

const bar = (wide: number, spare: number) => ({
  blank: { minX: -20, maxX: 320, minY: -wide / 2, maxY: wide / 2 },
  kept: rectangle(0, -wide / 2 + spare, 300, wide / 2 - spare),
  cuts: [],
  kerf: 1,
});

describe("index pins in the waste of a blank", () => {
  // A fingerboard's blank for four strings: the pins once lay beside it.
  it.each([40, 47, 60, 90])("of one %d wide lie in it with wood all round", (wide) => {
    const found = wastePins(bar(wide, 3));
    if (found.kind !== "ok") throw new Error("no pins");
    for (const { at, diameter } of found.pins) {
      const round = diameter / 2 + 3 - 1e-9;
      expect(Math.abs(at.y) + round).toBeLessThanOrEqual(wide / 2);
      expect(at.x - round).toBeGreaterThanOrEqual(-20);
      expect(at.x + round).toBeLessThanOrEqual(320);
      expect(at.x < 0 - round || at.x > 300 + round).toBe(true);
    }
  });

  it("are none where the waste at both ends is too narrow", () => {
    const given = bar(47, 3);
    expect(wastePins({ ...given, blank: { ...given.blank, minX: -8, maxX: 308 } }).kind).toBe("none");
  });
});
