import { describe, expect, it } from "vitest";
import { annotated } from "../../src/drawing/sheet/annotate.ts";
import { nearby, standing, takenBy } from "../../src/drawing/sheet/clear.ts";
import { hatched } from "../../src/drawing/sheet/hatch.ts";
import { boxOf, textBox } from "../../src/drawing/sheet/lettering.ts";
import { measured, stacked } from "../../src/drawing/sheet/linear.ts";
import { papersOf } from "../../src/drawing/sheet/papers.ts";
import type { Marks, SheetText } from "../../src/drawing/sheet/sheet.ts";
import { sheetFiles } from "../../src/drawing/sheet/sheets.ts";
import { spreadOut } from "../../src/drawing/sheet/spread-out.ts";
import { stroke } from "../../src/drawing/sheet/strokes.ts";
import { titledSheet } from "../../src/drawing/sheet/titled-sheet.ts";
import { wrapped } from "../../src/drawing/sheet/wrapped.ts";
import { circle } from "../../src/geometry/circle.ts";
import { pathLength } from "../../src/geometry/measure.ts";
import { rectangle } from "../../src/geometry/rectangle.ts";
import { reversedPath } from "../../src/geometry/reversed-path.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";

const words = (text: string, x = 0, y = 0): SheetText => {
  return { text, x, y, height: 2.5, turn: 0, align: "left" };
};
const square = { lines: [{ weight: "outline", path: rectangle(0, 0, 40, 20) }], texts: [] } as const;

describe("hatching", () => {
  it("covers a ring's area, by the lines' length times their spacing, and none of its hole", () => {
    const [outer, hole] = [circle({ x: 3, y: -2 }, 30), reversedPath(circle({ x: 5, y: 1 }, 12))];
    const lines = hatched([outer, hole], 0.5);
    const area = lines.reduce((sum, { path }) => sum + pathLength(path), 0) * 0.5;
    expect(Math.abs(area - Math.PI * (900 - 144))).toBeLessThan(5);
    for (const { path } of lines) {
      const [a, b] = [path.points[0]!, path.points[1]!];
      expect(Math.atan2(b.y - a.y, b.x - a.x)).toBeCloseTo(Math.PI / 4, 9);
      expect(Math.hypot((a.x + b.x) / 2 - 5, (a.y + b.y) / 2 - 1)).toBeGreaterThan(11.99);
    }
  });
});

describe("texts that step aside", () => {
  it("stand apart, keep their order, stay where they have room, and move as little as it takes", () => {
    const places = [0, 1, 2, 30, 30, 70];
    const spread = spreadOut(places, 5);
    for (const [i, x] of spread.entries())
      if (i > 0) expect(x - spread[i - 1]!).toBeGreaterThanOrEqual(5 - 1e-9);
    expect(spread[5]).toBe(70);
    expect(spread.slice(0, 3)).toEqual([-4, 1, 6]);
    expect(spread.slice(3, 5)).toEqual([27.5, 32.5]);
    expect(spreadOut([2, 0, 1], 5)).toEqual([6, -4, 1]);
  });
});

describe("what stands clear", () => {
  const taken = takenBy({ ...square, texts: [words("52.00", 5, 8)] });
  const stands = (more: Partial<Marks>) =>
    standing(nearby(taken), takenBy({ lines: [], texts: [], ...more }));

  it.each<[string, Partial<Marks>, string]>([
    ["a text far off", { texts: [words("1", 60, 60)] }, "clear"],
    ["a text on a text", { texts: [words("1", 8, 9)] }, "blocked"],
    ["a text on the outline", { texts: [words("1", 39, 10)] }, "blocked"],
    ["a text that nearly touches the outline", { texts: [words("1", 40.3, 10)] }, "blocked"],
    ["a line through a text", { lines: [stroke("extension", { x: 8, y: 1 }, { x: 8, y: 19 })] }, "blocked"],
    [
      "a dimension's line along the outline",
      { lines: [stroke("dimension", { x: 5, y: 20.4 }, { x: 30, y: 20.4 })] },
      "blocked",
    ],
    [
      "a dimension's line under another's text",
      { lines: [stroke("dimension", { x: 4, y: 6 }, { x: 30, y: 6 })] },
      "blocked",
    ],
    [
      "a thin line across the outline",
      { lines: [stroke("extension", { x: 30, y: 10 }, { x: 30, y: 40 })] },
      "clear",
    ],
  ])("tells of %s", (_, more, kind) => {
    expect(stands(more)).toBe(kind);
  });

  it("tells of a dimension's line across another's", () => {
    const one = takenBy({ lines: [stroke("dimension", { x: 0, y: 0 }, { x: 9, y: 0 })], texts: [] });
    const other = takenBy({ lines: [stroke("dimension", { x: 4, y: -5 }, { x: 4, y: 5 })], texts: [] });
    expect(standing(nearby(one), other)).toBe("crossing");
  });
});

describe("what is looked up by where it lies", () => {
  it("is all that touches a box, and nothing else, of many stretches and texts", () => {
    const at = (i: number) => ({ x: (i * 37) % 100, y: (i * 61) % 90 });
    const lines = Array.from({ length: 200 }, (_, i) => stroke("edge", at(i), at(i + 7)));
    const texts = Array.from({ length: 40 }, (_, i) => words("12.5", at(3 * i).x, at(3 * i).y));
    const all = takenBy({ lines, texts });
    const near = nearby(all);
    let some = 0;
    for (let i = 0; i < 50; i++) {
      const { x, y } = at(5 * i);
      const box = { minX: x, minY: y, maxX: x + 12, maxY: y + 7 };
      const touches = (one: typeof box) =>
        one.minX <= box.maxX && box.minX <= one.maxX && one.minY <= box.maxY && box.minY <= one.maxY;
      const found = near(box);
      expect(new Set(found.stretches)).toEqual(new Set(all.stretches.filter(touches)));
      expect(new Set(found.boxes)).toEqual(new Set(all.boxes.filter(touches)));
      some += found.boxes.length;
    }
    expect(some).toBeGreaterThan(20);
  });
});

describe("dimensions", () => {
  const of = {
    name: "length",
    along: "x",
    from: { x: 0, y: 20 },
    to: { x: 40, y: 20 },
    tolerance: 0.1,
  } as const;

  it("say what is drawn: a place that moves by 0.1 changes the text", () => {
    const text = (to: number) => {
      const made = annotated(square, [stacked({ ...of, to: { x: to, y: 20 } }, 1, 20, 1)]);
      return made.kind === "ok" ? made.marks.texts[0]!.text : made.kind;
    };
    expect(text(40)).toBe("40.00 ±0.10");
    expect(text(40.1)).toBe("40.10 ±0.10");
    expect(measured(of)).toBe(40);
  });

  it("go outward until each is clear, in the order given, the same each time", () => {
    const three = [of, of, of].map((each) => stacked(each, 1, 20, 1));
    const made = annotated(square, three);
    if (made.kind !== "ok") throw new Error(made.kind);
    const heights = made.marks.texts.map((text) => textBox(text).minY);
    expect(heights[1]! - heights[0]!).toBeCloseTo(7, 9);
    expect(heights[2]! - heights[1]!).toBeCloseTo(7, 9);
    expect(annotated(square, three)).toEqual(made);
  });

  it("are named when they have no place at all", () => {
    const onIt = { lines: [], texts: [words("1", 39, 10)] };
    const made = annotated(square, [{ name: "lost", ways: () => [onIt] }]);
    expect(made).toEqual({ kind: "no-place", name: "lost" });
  });
});

describe("the neck's sheet", () => {
  const answer = (design: string, count: number, more = "") => {
    const store = memoryStore();
    return sheetFiles[0]!.of(modelOf(specOf(design, count, more), store), store);
  };
  const title = { order: "T-1", part: "neck", fingerprint: "f", hand: "right", seenFrom: "front" } as const;

  it("cuts rods' channels out of the sections, hatching too", () => {
    const { value } = answer("bulrush", 4);
    const cuts = value.lines.filter(({ weight }) => weight === "cut").map(({ path }) => path);
    expect(cuts).toHaveLength(4);
    // A D has 16 arcs and its top; two channels add four corners each.
    for (const path of cuts) expect(path.points.length).toBeGreaterThanOrEqual(24);
    expect(answer("sedge", 4).value.lines.filter(({ weight }) => weight === "hatch").length).toBeGreaterThan(
      15,
    );
  });

  it("is drawn anew for what it shows and not for what it doesn't", () => {
    const key = answer("sedge", 5).key;
    expect(answer("sedge", 5, "set:\n  core.depth: 31\n").key).not.toBe(key);
    expect(answer("sedge", 5, "set:\n  bridge.tilt: 1\n").key).toBe(key);
  });

  it("goes to a print shop where the shop's own paper is too small", () => {
    const small = papersOf([{ id: "A5", width: 148, height: 210, margin: 6 }]);
    expect(small.map(({ id }) => id)).toEqual(["A5", "A2", "A1", "A0"]);
    expect(papersOf([{ id: "A0", width: 841, height: 1189, margin: 6 }])[0]!.id).toBe("A2");
  });

  it("tells in its title what was overruled, as far as there is room, and counts on the rest", () => {
    const { value } = answer("sedge", 4);
    const reason = "wall-between: tried on scrap wood of the same board twice";
    const one = titledSheet(value, { ...title, overruled: [reason] });
    expect(one.texts.some(({ text }) => text.includes("OVERRULED WALL-BETWEEN"))).toBe(true);
    const many = titledSheet(value, { ...title, overruled: Array.from({ length: 9 }, () => reason) });
    expect(many.texts.some(({ text }) => text.startsWith("MORE IS OVERRULED"))).toBe(true);
    const { minX, minY, maxX, maxY } = many.titleBox;
    const inside = many.texts.filter(({ y, x }) => x >= minX && y <= maxY).map(textBox);
    for (const box of inside) {
      expect(box.minX >= minX && box.maxX <= maxX && box.minY >= minY && box.maxY <= maxY).toBe(true);
    }
    expect(boxOf(many).maxX).toBeLessThanOrEqual(value.frame.maxX + 1e-9);
  });

  it("breaks a word only where a line can't hold it", () => {
    expect(wrapped("ONE TWO THREE", 7)).toEqual(["ONE TWO", "THREE"]);
    expect(wrapped("ABCDEFGHIJ K", 4)).toEqual(["ABCD", "EFGH", "IJ K"]);
  });
});
