import type { Point } from "../../../geometry/point.ts";
import type { Annotation } from "../annotate.ts";
import { leaderMarks } from "../leader.ts";
import { textBox } from "../lettering.ts";
import type { Marks } from "../sheet.ts";

/** A part's name in a view: what it points at, mm on paper, which part that is, and which part is seen at a place, null where none is. */
export type PartLabel = {
  readonly text: string;
  readonly at: Point;
  readonly own: number;
  readonly seenAt: (place: Point) => number | null;
};

/** From one place at which it is asked what lies there to the next, from one direction to the next, and how long leaders are; mm on paper, degrees. */
const steps = { look: 1.5, turn: 15, long: 4 } as const;
const lengths = { least: 6, most: 90 } as const;

/**
 * A part's name with a leader to it: over as few other parts as can be had, so that nobody takes it for theirs; then as near as is clear. Its words stand on its own
 * part or on none, where that can be had.
 */
export function partLabel({ text, at, own, seenAt }: PartLabel): Annotation {
  return {
    name: text,
    ways: function* () {
      const rest: { readonly marks: Marks; readonly over: number }[] = [];
      for (let long = lengths.least; long < lengths.most; long += steps.long) {
        for (let turn = 0; turn < 360; turn += steps.turn) {
          const marks = leaderMarks(text, at, turn + 60, long);
          const over = partsUnder(marks, own, seenAt);
          if (over === 0) yield marks;
          else rest.push({ marks, over });
        }
      }
      yield* rest.toSorted((a, b) => a.over - b.over).map(({ marks }) => marks);
    },
  };
}

/** How many parts but its own a leader and its words lie over. */
function partsUnder({ lines, texts }: Marks, own: number, seenAt: PartLabel["seenAt"]): number {
  const places = [
    ...lines.flatMap(({ weight, path: { points } }) =>
      weight === "arrow" ? [] : between(points[0]!, points[1]!),
    ),
    ...texts.flatMap((words) => {
      const { minX, minY, maxX, maxY } = textBox(words);
      return [minY, (minY + maxY) / 2, maxY].flatMap((y) => between({ x: minX, y }, { x: maxX, y }));
    }),
  ];
  const others = places.map(seenAt).filter((part) => part !== null && part !== own);
  return new Set(others).size;
}

function between(from: Point, to: Point): Point[] {
  const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / steps.look));
  return Array.from({ length: count + 1 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / count,
    y: from.y + ((to.y - from.y) * i) / count,
  }));
}
