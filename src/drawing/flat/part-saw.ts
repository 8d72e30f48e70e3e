import { circle } from "../../geometry/circle.ts";
import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { rectangleOf } from "../../geometry/rectangle.ts";
import { step } from "../../step/step.ts";
import type { PartLine } from "../../workshop/bandsaw/part-lines.ts";
import type { PartSawn, PartTight } from "../../workshop/bandsaw/part-sawn.ts";
import { type Flat, layers, letterHeight, lineBetween, type Note, type Shape, turnedOver } from "./flat.ts";
import { grainArrow } from "./grain-arrow.ts";
import { lineNote } from "./line-note.ts";
import { type PartSawNotesInput, partSawNotes } from "./part-saw-notes.ts";
import { pinNote } from "./pin-note.ts";
import { stackedNotes } from "./stacked-notes.ts";

/** What a part's saw lines are drawn from, in its own plane: whether that is drawn turned over, the finished outline, the blank's rectangle, how it is sawn, what is told; mm. */
export type PartSawInput = {
  readonly turned: boolean;
  readonly part: Path;
  readonly blank: Extents;
  readonly sawn: PartSawn;
  /** Where the blank's pieces are glued edge to edge, across it. */
  readonly glued: readonly number[];
  readonly told: PartSawNotesInput;
};

/** Radius of the circle round a tight place, and how far words stand from the blank, mm. */
const sizes = { ring: 4, beside: 2.5 };

/**
 * The saw lines of a part on its blank, from the front, head at the left: the blank scribed, the finished outline for reference, lines and relief
 * cuts, the blank's glue lines, each tight place ringed with its radius, index pins in the waste, the grain, each cut's set-up and the cautions of the saw.
 */
export const partSawFlat = step("outline.part-saw", 1, (given: PartSawInput): Flat => {
  const { turned, part, blank, sawn, glued, told } = given;
  const drawn: Flat = {
    shapes: [
      { layer: layers.part, path: part },
      { layer: layers.scribe, path: rectangleOf(blank) },
      ...glued.map((y) => ({
        layer: layers.note,
        path: lineBetween(blank.minX - 4, y, blank.maxX + 4, y),
        chain: true as const,
      })),
      ...(sawn.kind === "ok" ? sawnShapes(sawn) : []),
    ],
    notes: [
      ...(sawn.kind === "ok" ? sawnNotes(sawn, blank) : []),
      ...glued.map((y) => lineNote("GLUE LINE", blank.maxX + 6, y - letterHeight / 2, "left")),
    ],
  };
  const flat = turned ? turnedOver(drawn, "y") : drawn;
  const { minX, maxX } = blank;
  const [low, high] = turned ? [-blank.maxY, -blank.minY] : [blank.minY, blank.maxY];
  const grain = grainArrow(maxX - 10, low - 15);
  return {
    shapes: [...flat.shapes, ...grain.shapes],
    notes: [...flat.notes, ...grain.notes, ...stackedNotes(partSawNotes(told), minX, high + 10)],
  };
});

type Sawn = Extract<PartSawn, { kind: "ok" }>;

function sawnShapes({ lines, entry, tight, pins }: Sawn): Shape[] {
  const reliefs = [entry, ...tight.map(({ relief }) => relief)];
  return [
    ...lines.map(({ path }) => ({ layer: layers.saw, path })),
    ...reliefs.flatMap((way) => (way?.kind === "cut" ? [{ layer: layers.saw, path: way.path }] : [])),
    ...tight.map(({ x, y }) => ({ layer: layers.note, path: circle({ x, y }, sizes.ring) })),
    ...(pins.kind === "none"
      ? []
      : pins.pins.map(({ at, diameter }) => ({
          layer: layers.bore(diameter),
          path: circle(at, diameter / 2),
        }))),
  ];
}

function sawnNotes({ lines, entry, tight, pins }: Sawn, blank: Extents): Note[] {
  const reliefs = [entry, ...tight.map(({ relief }) => relief)];
  const taken = [
    ...[rectangleOf(blank), ...lines.map(({ path }) => path)],
    ...reliefs.flatMap((way) => (way?.kind === "cut" ? [way.path] : [])),
  ];
  return [
    ...lines.flatMap((line) => lineName(line, blank)),
    ...(entry?.kind === "cut" ? [besideBlank("IN HERE", entry.path.points[0]!, blank)] : []),
    ...tight.map((place) => markNote(place, blank)),
    ...(pins.kind === "none" ? [] : pins.pins.map((pin) => pinNote(pin, taken))),
  ];
}

/** A line's name where it begins: outside the blank, if that is on its edge. */
function lineName({ cut, path }: PartLine, blank: Extents): Note[] {
  return cut === "outline" ? [] : [besideBlank(cut.toUpperCase(), path.points[0]!, blank)];
}

/** A tight place's way in and its radius, outside the blank where that begins. */
function markNote({ x, y, radius, relief }: PartTight, blank: Extents): Note {
  const way = { cut: "RELIEF", leg: "IN ALONG THE LINE", none: "NO STRAIGHT WAY IN" }[relief.kind];
  const start = relief.kind === "cut" ? relief.path.points[0]! : { x, y };
  return besideBlank(`${way}, ${radius > 0 ? `R ${radius.toFixed(2)}` : "CORNER"}`, start, blank);
}

/** Words outside the blank beside a place on its edge; at the nearest edge to a place inside. */
function besideBlank(text: string, { x, y }: Point, { minX, maxX, minY, maxY }: Extents): Note {
  const { beside } = sizes;
  const edges = [
    { away: x - minX, note: lineNote(text, minX - beside, y - letterHeight / 2, "right") },
    { away: maxX - x, note: lineNote(text, maxX + beside, y - letterHeight / 2, "left") },
    { away: y - minY, note: lineNote(text, x, minY - beside - letterHeight, "center") },
    { away: maxY - y, note: lineNote(text, x, maxY + beside, "center") },
  ];
  return edges.reduce((nearest, edge) => (edge.away < nearest.away ? edge : nearest)).note;
}
