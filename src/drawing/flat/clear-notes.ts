import { entered } from "../../geometry/extents/entered.ts";
import { grown } from "../../geometry/extents/grown.ts";
import { overlap } from "../../geometry/extents/overlap.ts";
import { facet } from "../../geometry/facet.ts";
import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { layers, letterHeight, lineBetween, type Note, type Shape } from "./flat.ts";

/** A label: what it says, the place that it belongs to and how far what it names reaches about that, mm; 0 lets it stand on the place itself. */
export type Label = { readonly text: string; readonly at: Point; readonly reach: number };

/** The width of a letter as a share of its height: wider than the types that pictures and drawings are lettered in. */
const letterWidth = 0.95;

/** The room round a label, how far from one try to the next, how often, and from how far on it is led to, mm. */
const tries = { room: 0.8, step: 3, most: 40, led: 4 } as const;

/** The box of a note that stands upright, mm. */
export function noteBox({ text, x, y, height, align }: Note): Extents {
  const long = text.length * letterWidth * height;
  const start = { left: 0, center: -long / 2, right: -long }[align];
  return { minX: x + start, maxX: x + start + long, minY: y - 0.2 * height, maxY: y + height };
}

/**
 * Labels where neither a line nor another label crosses them, in their order, each as near to its place as it goes; one that stands away from it is led
 * there by a line on the note layer. `taken` are notes that stand already. One with no clear place within reach stands by its place all the same.
 */
export function clearNotes(
  labels: readonly Label[],
  shapes: readonly Shape[],
  taken: readonly Note[] = [],
): { readonly notes: readonly Note[]; readonly leaders: readonly Shape[] } {
  const lines = shapes.flatMap(({ path }) => chordsOf(path));
  const boxes = taken.map(noteBox);
  const notes: Note[] = [];
  const leaders: Shape[] = [];
  for (const label of labels) {
    const ways = placesFor(label);
    const found = ways.find(({ note, leader }) => {
      const box = grown(noteBox(note), tries.room);
      const clear =
        boxes.every((other) => !overlap(box, other)) && lines.every((line) => !crosses(box, line));
      return clear && (leader === null || boxes.every((other) => !crosses(other, leader)));
    });
    const { note, leader } = found ?? ways[0]!;
    notes.push(note);
    boxes.push(noteBox(note));
    if (leader === null) continue;
    lines.push(leader);
    const [a, b] = leader;
    leaders.push({ layer: layers.note, path: lineBetween(a.x, a.y, b.x, b.y) });
  }
  return { notes, leaders };
}

type Line = readonly [Point, Point];
type Way = { readonly note: Note; readonly leader: Line | null };

/** Below, above, right and left first, then between. */
const round: readonly Point[] = [
  ...[
    { x: 0, y: -1 },
    { x: 0, y: 1 },
    { x: 1, y: 0 },
    { x: -1, y: 0 },
  ],
  ...[1, -1].flatMap((x) => [1, -1].map((y) => ({ x: x * Math.SQRT1_2, y: y * Math.SQRT1_2 }))),
];

function placesFor({ text, at, reach }: Label): Way[] {
  const note = (x: number, y: number, align: Note["align"]): Note => ({
    ...{ text, x, y: y - letterHeight / 2, height: letterHeight, turn: 0, align },
  });
  const here: Way[] = reach === 0 ? [{ note: note(at.x, at.y, "center"), leader: null }] : [];
  const away = Array.from({ length: tries.most }, (_, k) => k * tries.step).flatMap((further) =>
    round.map(({ x, y }): Way => {
      const far = reach + 1.5 + further;
      const up = Math.abs(y) > 0.9 ? letterHeight / 2 : 0;
      const end = { x: at.x + x * far, y: at.y + y * far };
      const align = x > 0.1 ? "left" : x < -0.1 ? "right" : "center";
      const placed = note(end.x, end.y + Math.sign(y) * up, align);
      const from = { x: at.x + x * reach, y: at.y + y * reach };
      const tip = { x: end.x - x * 0.9, y: end.y - y * 0.9 };
      return { note: placed, leader: further >= tries.led ? [from, tip] : null };
    }),
  );
  return [...here, ...away];
}

function chordsOf(path: Path): Line[] {
  return segmentsOf(facet(path, 0.1)).map(({ from, to }): Line => [from, to]);
}

function crosses(box: Extents, [a, b]: Line): boolean {
  return entered(box, a.x, a.y, b.x, b.y);
}
