import type { Point } from "../../geometry/point.ts";
import type { Annotation } from "./annotate.ts";
import { baseFromMiddle, lettering } from "./lettering.ts";
import type { Marks, SheetText } from "./sheet.ts";
import { arrow, stroke } from "./strokes.ts";

/** A mark in words that points at something: from `at` (mm on paper) on in one of the directions (degrees), the best first. */
export type Leader = {
  readonly text: string;
  readonly at: (direction: number) => Point;
  readonly directions: readonly number[];
};

const shelf = 2;

/** A leader with its words on a level shelf at its end, as near as is clear. */
export function leader({ text, at, directions }: Leader): Annotation {
  return {
    name: text,
    ways: function* () {
      for (let long = 6; long < 90; long += 3) {
        for (const direction of directions) yield leaderMarks(text, at(direction), direction, long);
      }
    },
  };
}

/** A leader from `tip` on in a direction (degrees), `long` mm on paper, its words on a level shelf at its end. */
export function leaderMarks(text: string, tip: Point, direction: number, long: number): Marks {
  const angle = (direction * Math.PI) / 180;
  const elbow = { x: tip.x + long * Math.cos(angle), y: tip.y + long * Math.sin(angle) };
  const side = Math.cos(angle) < 0 ? -1 : 1;
  const end = { x: elbow.x + side * shelf, y: elbow.y };
  const note: SheetText = {
    ...{ text, x: end.x + side * 0.8, y: end.y + baseFromMiddle(lettering.height) },
    ...{ height: lettering.height, turn: 0, align: side === 1 ? "left" : "right" },
  };
  return {
    lines: [stroke("dimension", tip, elbow), stroke("dimension", elbow, end), arrow(tip, angle + Math.PI)],
    texts: [note],
  };
}

/** A leader to a circle's border, with its measured diameter and tolerance written by `text`. */
export function atCircle(
  text: string,
  centre: Point,
  radius: number,
  directions: readonly number[],
): Annotation {
  const at = (direction: number) => {
    const angle = (direction * Math.PI) / 180;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  };
  return leader({ text, at, directions });
}
