import { boxesNear } from "../../geometry/boxes-near.ts";
import { entered } from "../../geometry/extents/entered.ts";
import { grown } from "../../geometry/extents/grown.ts";
import { overlap } from "../../geometry/extents/overlap.ts";
import { facet } from "../../geometry/facet.ts";
import type { Path } from "../../geometry/path.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { textBox } from "../sheet/lettering.ts";
import type { Box, SheetText } from "../sheet/sheet.ts";

/** A straight piece of something that words keep off, in the drawing, mm. */
export type Chord = readonly [x1: number, y1: number, x2: number, y2: number];

/** How far chords stray from arcs, the room round words, how far from one try to the next, and how far at most, mm. */
const tries = { chord: 0.1, room: 0.4, step: 2, most: 100 } as const;

/** The chords of some paths. */
export function chordsOf(paths: readonly Path[]): Chord[] {
  return paths.flatMap((path) =>
    segmentsOf(facet(path, tries.chord)).map(({ from, to }): Chord => [from.x, from.y, to.x, to.y]),
  );
}

/**
 * The words of one sheet, each as near to its place as no line and no other word lies under it and all of it is seen through the window `shows`, in
 * the drawing; upright ones are moved along themselves first, since they stand at a place across. Words that find no such place stay where they are.
 */
export function clearTexts(texts: readonly SheetText[], lines: readonly Chord[], shows: Box): SheetText[] {
  const near = boxesNear(lines.filter((line) => entered(shows, ...line)).map(boxed));
  const placed: Box[] = [];
  return texts.map((text) => {
    const found = waysOf(text).find((way) => {
      const box = grown(textBox(way), tries.room);
      return (
        within(box, shows) &&
        placed.every((other) => !overlap(box, other)) &&
        near(box).every(({ line }) => !entered(box, ...line))
      );
    });
    placed.push(textBox(found ?? text));
    return found ?? text;
  });
}

function boxed(line: Chord): Box & { readonly line: Chord } {
  const [x1, y1, x2, y2] = line;
  return {
    ...{ line, minX: Math.min(x1, x2), maxX: Math.max(x1, x2) },
    ...{ minY: Math.min(y1, y2), maxY: Math.max(y1, y2) },
  };
}

/** Below, above, right and left first, then between. */
const turns = [...[0, 8, 4, 12], ...[2, 6, 10, 14], ...[1, 3, 5, 7, 9, 11, 13, 15]].map((sixteenth) => {
  const angle = (Math.PI / 8) * (sixteenth - 4);
  return { x: Math.cos(angle), y: Math.sin(angle) };
});

/** Where it stands, and places round that, nearest first. */
function waysOf(text: SheetText): SheetText[] {
  const along = turns.filter(({ x }) => Math.abs(x) < 1e-9);
  return text.turn === 90 ? [...placesIn(text, along), ...placesIn(text, turns)] : placesIn(text, turns);
}

function placesIn(text: SheetText, round: typeof turns): SheetText[] {
  return Array.from({ length: tries.most / tries.step + 1 }, (_, k) => k * tries.step).flatMap((far) =>
    (far === 0 ? [{ x: 0, y: 0 }] : round).map(({ x, y }) => ({
      ...text,
      x: text.x + x * far,
      y: text.y + y * far,
    })),
  );
}

const within = (a: Box, b: Box) =>
  a.minX >= b.minX && a.maxX <= b.maxX && a.minY >= b.minY && a.maxY <= b.maxY;
