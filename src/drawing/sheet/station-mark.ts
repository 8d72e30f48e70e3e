import type { Annotation } from "./annotate.ts";
import { baseFromMiddle, lettering } from "./lettering.ts";
import type { Marks } from "./sheet.ts";
import { arrow, corridor, stroke } from "./strokes.ts";

/** A section's letter and where its ends stand over and under a view, mm on paper; it is seen toward -x. */
export type StationEnd = {
  readonly letter: string;
  readonly x: number;
  readonly edge: number;
  readonly outward: 1 | -1;
};

/** How long the thick end is, and how far its letter stands off it, mm on paper. */
const thick = 6;
const off = 3.4;

/** How long the arrow is at least, mm on paper; its letter may stand at its outer end. */
const shaft = 6;

/**
 * One end of the line along which a section is cut: a thin line out of the view, a thick end, an arrow that points the way in which the
 * section is seen, and its letter; as near the view as is clear.
 */
export function stationMark(of: StationEnd): Annotation {
  return {
    name: `section ${of.letter}`,
    keep: [corridor({ x: of.x, y: of.edge }, { x: of.x, y: of.edge + of.outward * (thick + 6) })],
    ways: function* () {
      for (let out = 1; out < 70; out += 2) {
        for (const letterAt of ["beyond", "left", "right"] as const) {
          for (const side of [1, -1] as const) yield marksOf(of, out, side, letterAt, shaft);
        }
        for (const long of [shaft, shaft + 3, shaft + 6, shaft + 10, shaft + 14]) {
          for (const side of [-1, 1] as const) yield marksOf(of, out, side, "shaft", long);
        }
      }
    },
  };
}

function marksOf(
  { letter, x, edge, outward }: StationEnd,
  out: number,
  side: 1 | -1,
  letterAt: "beyond" | "left" | "right" | "shaft",
  long: number,
): Marks {
  const at = (by: number, dx = 0) => ({ x: x + dx, y: edge + outward * by });
  const end = out + thick;
  const height = lettering.title;
  const place = {
    beyond: at(end + 4),
    left: at(out + thick / 2 - 0.3, -off),
    right: at(out + thick / 2 - 0.3, off),
    shaft: at(end, side * (long + 2.6)),
  }[letterAt];
  const tip = side === 1 ? at(end) : at(end, -long);
  const tail = side === 1 ? at(end, long) : at(end);
  return {
    lines: [
      ...(out > 1 ? [stroke("extension", at(1), at(out))] : []),
      stroke("station", at(out), at(end)),
      stroke("dimension", tail, tip),
      arrow(tip, Math.PI),
    ],
    texts: [
      {
        ...{ text: letter, x: place.x, y: place.y + baseFromMiddle(height) },
        ...{ height, turn: 0, align: "center" as const },
      },
    ],
  };
}
