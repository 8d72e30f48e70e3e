import type { Path } from "../../geometry/path.ts";
import { distanceTo } from "../../geometry/path-measures/segment-places.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import type { WastePin } from "../../workshop/bandsaw/waste-pins.ts";
import { letterHeight, type Note } from "./flat.ts";
import { lineNote } from "./line-note.ts";

/** How far the words stand from the hole, how long they are at most, and how far from any line they are kept, mm. */
const sizes = { beside: 2.5, long: 14, clear: 2 };

/** An index pin's size beside its hole: right of it, left, over or under it, wherever its words lie off some lines first. */
export function pinNote({ at, diameter }: WastePin, lines: readonly Path[]): Note {
  const round = diameter / 2;
  const aside = round + sizes.beside;
  const text = `PIN ${diameter}`;
  const level = at.y - letterHeight / 2;
  const ways: readonly { readonly from: number; readonly note: Note }[] = [
    { from: at.x + aside, note: lineNote(text, at.x + aside, level, "left") },
    { from: at.x - aside - sizes.long, note: lineNote(text, at.x - aside, level, "right") },
    ...[at.y + aside, at.y - aside - letterHeight].flatMap((y) => [
      { from: at.x - round, note: lineNote(text, at.x - round, y, "left") },
      { from: at.x + round - sizes.long, note: lineNote(text, at.x + round, y, "right") },
    ]),
  ];
  const segments = lines.flatMap(segmentsOf);
  const isClear = ({ from, note }: (typeof ways)[number]) =>
    [0, 0.25, 0.5, 0.75, 1].every((share) => {
      const middle = { x: from + share * sizes.long, y: note.y + letterHeight / 2 };
      return distanceTo(segments, middle) >= letterHeight / 2 + sizes.clear;
    });
  return (ways.find(isClear) ?? ways[0]!).note;
}
