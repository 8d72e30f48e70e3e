import { type Frame, upright } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { plateText } from "../gauges/plate-text.ts";
import { raisedText, textSize } from "../gauges/raised-text.ts";

/** Lines of text on a jig, mm: centred on x, the capitals' tops at y, on a face z high. */
export type Lettering = {
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
  readonly z: number;
};

/** How wide and how high lines of text on a jig are with their strokes, mm. */
export function letteringSize(lines: readonly string[]): { readonly width: number; readonly height: number } {
  return textSize({ lines, ...plateText });
}

/** A jig with raised letters on a level face. */
export function lettered(jig: Solid, { lines, x, y, z }: Lettering): Solid {
  return { kind: "union", solids: [jig, raisedText({ lines, ...plateText }, x, y, z)] };
}

/** A jig with raised letters on any flat face: x and y of the text lie along the frame's u and v, w points out of the face. */
export function letteredOn(jig: Solid, frame: Frame, { lines, x, y, z }: Lettering): Solid {
  const text: Solid = { kind: "place", solid: raisedText({ lines, ...plateText }, x, y, z), frame };
  return { kind: "union", solids: [jig, text] };
}

/** Turned over to be read from below: x to the other side. */
const fromBelow: Frame = { ...upright, u: { x: -1, y: 0, z: 0 }, w: { x: 0, y: 0, z: -1 } };

/**
 * A jig with letters sunk into the face that it is printed on, z = 0, where what it lies on in use is its upper face. They are to be read from
 * below; x and y are the jig's own, whichever way it is read.
 */
export function letteredBelow(jig: Solid, { lines, x, y }: Omit<Lettering, "z">): Solid {
  const origin = { x: 2 * x, y: 0, z: plateText.raised / 2 };
  const text = raisedText({ lines, ...plateText }, x, y, 0);
  return { kind: "cut", from: jig, by: [{ kind: "place", solid: text, frame: { ...fromBelow, origin } }] };
}

/** Lines of text with what a piece is lettered beside them, at the end of the last: which one it is of how many; nothing on a jig in one piece. */
export function pieceLines(
  lines: readonly string[],
  { number, of }: { readonly number: number; readonly of: number },
): readonly string[] {
  return of === 1 ? lines : [...lines.slice(0, -1), `${lines.at(-1) ?? ""} ${number}/${of}`];
}
