import { expect, test } from "vitest";
import { extentsOf } from "../../src/geometry/measure.ts";
import { textStrokes } from "../../src/geometry/text-strokes.ts";

test("capitals stand as high as asked for, on 0, and a longer text is wider", () => {
  for (const letter of ["H", "E", "N", "T", "8"]) {
    const { strokes } = textStrokes(letter, 4);
    expect(extentsOf(strokes), letter).toMatchObject({ minY: 0, maxY: 4 });
  }
  expect(textStrokes("SY-0417", 4).width).toBeGreaterThan(textStrokes("SY-04", 4).width);
  expect(textStrokes(" ", 4)).toEqual({ strokes: [], width: 0 });
});

test("every printable letter of ASCII has strokes, and no two digits or capitals the same", () => {
  const letters = Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i));
  const drawn = letters.map((letter) => JSON.stringify(textStrokes(letter, 3).strokes));
  expect(drawn.filter((strokes) => strokes === "[]")).toEqual([]);
  const told = drawn.filter((_, i) => /[0-9A-Z]/.test(letters[i]!));
  expect(new Set(told).size).toBe(36);
});
