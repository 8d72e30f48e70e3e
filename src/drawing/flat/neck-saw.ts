import { circle } from "../../geometry/circle.ts";
import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { rectangleOf } from "../../geometry/rectangle.ts";
import { step } from "../../step/step.ts";
import type { SawnOutline } from "../../workshop/bandsaw/sawn-outline.ts";
import { type Flat, layers, letterHeight, lineBetween, type Note, type Shape, turnedOver } from "./flat.ts";
import { grainArrow } from "./grain-arrow.ts";
import { lineNote } from "./line-note.ts";
import { type SawNotesInput, sawNotes } from "./saw-notes.ts";
import { stackedNotes } from "./stacked-notes.ts";

/** What a neck's saw lines are drawn from: the finished outline, the blank's rectangle, how it is sawn, what is told; mm. */
export type NeckSawInput = {
  readonly view: "plan" | "side";
  readonly hand: "right" | "left";
  readonly part: Path;
  readonly blank: Extents;
  readonly sawn: SawnOutline;
  readonly told: SawNotesInput;
};

type Place = Extract<SawnOutline, { kind: "ok" }>["tight"][number];

/** Radius of the circle round a tight place, and how far its radius stands from that, mm. */
const sizes = { ring: 4, clear: 4 };

/**
 * The saw lines of a neck's blank, seen from the front or from the side, head at the left: the blank scribed, the finished
 * outline for reference, the lines and their relief cuts, each tight place ringed with its radius, the grain, the order of
 * the cuts and the cautions of the saw. A plan is turned over for a left hand; a side is the same for both.
 */
export const neckSawFlat = step("outline.neck-saw", 1, (given: NeckSawInput): Flat => {
  const { view, hand, part, blank, sawn, told } = given;
  const { minX, maxX, minY, maxY } = blank;
  const places = sawn.kind === "ok" ? sawn.tight : [];
  const right: Flat = {
    shapes: [
      { layer: layers.part, path: part },
      { layer: layers.scribe, path: rectangleOf(blank) },
      ...(sawn.kind === "ok" ? sawn.lines.map(({ path }) => ({ layer: layers.saw, path })) : []),
      ...places.flatMap(markShapes),
      ...(view === "plan" ? [centreLine(minX - 4, maxX + 4)] : []),
    ],
    notes: places.flatMap((place) => markNotes(place, blank)),
  };
  const flat = view === "plan" && hand === "left" ? turnedOver(right, "y") : right;
  // What is written round the blank keeps its place for either hand: the blank itself is alike on both sides.
  const grain = grainArrow(maxX - 10, minY - 9);
  return {
    shapes: [...flat.shapes, ...grain.shapes],
    notes: [...flat.notes, ...grain.notes, ...stackedNotes(sawNotes(told), minX, maxY + 8)],
  };
});

function centreLine(from: number, to: number): Shape {
  return { layer: layers.note, path: lineBetween(from, 0, to, 0), chain: true };
}

function markShapes({ x, y, relief }: Place): Shape[] {
  const ring = { layer: layers.note, path: circle({ x, y }, sizes.ring) };
  return relief.kind === "cut" ? [{ layer: layers.saw, path: relief.path }, ring] : [ring];
}

/** A tight place's radius stands inside the neck, and the name of its relief cut outside the blank. */
function markNotes({ x, y, radius, turn, side, relief }: Place, { minY, maxY }: Extents): Note[] {
  const inward = side === "low" ? y + sizes.ring + sizes.clear : y - sizes.ring - sizes.clear - letterHeight;
  const outside = side === "low" ? minY - 2.5 - letterHeight : maxY + 2.5;
  const way = {
    cut: "RELIEF",
    leg: "IN ALONG THE LINE",
    none: "NO STRAIGHT WAY IN",
  }[relief.kind];
  // Where the neck bulges it narrows toward the tail: to the head's side of the place there is room.
  const bulges = (side === "low") === (turn === "left");
  const start = relief.kind === "cut" ? relief.path.points[0]!.x : x;
  return [
    lineNote(radius > 0 ? `R ${radius.toFixed(2)}` : "CORNER", x, inward, bulges ? "right" : "center"),
    lineNote(way, start, outside, "center"),
  ];
}
