import type { Point } from "../../../geometry/point.ts";
import type { Annotation } from "../annotate.ts";
import { lettering, textLength } from "../lettering.ts";
import type { Marks, SheetText } from "../sheet.ts";
import { arrow, stroke } from "../strokes.ts";
import { wrapped } from "../wrapped.ts";

/** How many letters a line of a name has, how long the level end of its leader is and how far its words stand from that, mm. */
const sizes = { letters: 21, shelf: 2, aside: 0.8, line: 4.2 } as const;

/** A name in short lines on a leader to a place, or to a circle's border round it (mm on paper), in one of some directions (degrees), as near as is clear. */
export function nameAt(text: string, at: Point, radius: number, directions: readonly number[]): Annotation {
  const lines = wrapped(text, sizes.letters);
  return {
    name: text,
    ways: function* () {
      for (let long = 6; long < 120; long += 3)
        for (const direction of directions) yield marksOf(lines, at, radius, direction, long);
    },
  };
}

function marksOf(
  lines: readonly string[],
  at: Point,
  radius: number,
  direction: number,
  long: number,
): Marks {
  const angle = (direction * Math.PI) / 180;
  const on = (r: number): Point => ({ x: at.x + r * Math.cos(angle), y: at.y + r * Math.sin(angle) });
  const [tip, elbow] = [on(radius), on(radius + long)];
  const side = Math.cos(angle) < -1e-9 ? -1 : 1;
  const end = { x: elbow.x + side * sizes.shelf, y: elbow.y };
  const { height } = lettering;
  const first = end.y - height / 2 + ((lines.length - 1) * sizes.line) / 2;
  const texts = lines.map((text, i): SheetText => {
    const x = end.x + side * sizes.aside + (side === 1 ? 0 : -textLength({ text, height }));
    return { text, x, y: first - i * sizes.line, height, turn: 0, align: "left" };
  });
  return {
    lines: [stroke("dimension", tip, elbow), stroke("dimension", elbow, end), arrow(tip, angle + Math.PI)],
    texts,
  };
}
