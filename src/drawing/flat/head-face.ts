import { circle } from "../../geometry/circle.ts";
import { fairCurve } from "../../geometry/fair/fair-curve.ts";
import { fairPath } from "../../geometry/fair/fair-path.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, type Note, turnedOver } from "./flat.ts";

/** What a head's face shows, in its own plane; mm. Places are along from the nut's head edge and across to the treble side. */
export type HeadFaceInput = {
  readonly hand: "right" | "left";
  readonly length: number;
  readonly half: number;
  readonly nutHalf: number;
  /** How far the board's edge turns from the centreline, degrees. */
  readonly edge: number;
  readonly shoulder: number;
  readonly corner: number;
  /** Diameters at the face, to which it is bored, and at the back, to which a peg's is reamed. */
  readonly hole: { readonly face: number; readonly back: number };
  /** Whether it only holds the strings' ends: several stand in a row then, and each string's name beside its hole. */
  readonly bare: boolean;
  readonly tuners: readonly { readonly name: string; readonly along: number; readonly y: number }[];
};

/**
 * The head's face, square to itself, end of the head at the left: its outline for reference, and the tuners' holes to bore, each
 * with its string. The first axis runs toward the tail, 0 at the nut's head edge. The head is sawn from the plan, so its
 * shoulders are fair there; here the same stations are made fair again, which is the same to a few hundredths of a millimetre.
 */
export const headFaceFlat = step("outline.head-face", 2, (given: HeadFaceInput): Flat => {
  const { hand, length, half, hole, bare, tuners } = given;
  const flat: Flat = {
    shapes: [
      { layer: layers.part, path: headFacePath(given) },
      { layer: layers.note, path: lineBetween(-length - 4, 0, 4, 0), chain: true },
      ...tuners.map(({ along, y }) => ({
        layer: layers.bore(hole.face),
        path: circle({ x: -along, y }, hole.face / 2),
      })),
    ],
    notes: [
      ...tuners.map(
        (tuner): Note => ({
          ...(bare ? besideHole(tuner, hole.face) : outside(tuner, half)),
          ...{ text: tuner.name, height: letterHeight, turn: 0 },
        }),
      ),
      ...(hole.back > hole.face ? [reaming(hole, -length, half + 4 + 2 * letterHeight)] : []),
    ],
  };
  return hand === "left" ? turnedOver(flat, "y") : flat;
});

/** The outline of a head's face, counter-clockwise; mm. */
export function headFacePath(given: Omit<HeadFaceInput, "hand" | "hole" | "bare" | "tuners">): Path {
  const { length, half, nutHalf, edge, shoulder, corner } = given;
  const outline = fairCurve(
    [
      { x: -length, y: -half, corner },
      { x: -shoulder, y: -half, corner: 0, leave: 0 },
      { x: 0, y: -nutHalf, corner: 0, arrive: -edge },
      { x: 0, y: nutHalf, corner: 0, leave: 180 + edge },
      { x: -shoulder, y: half, corner: 0, arrive: 180 },
      { x: -length, y: half, corner },
    ],
    { closed: true },
  );
  const path = outline.kind === "ok" ? fairPath(outline.curve) : undefined;
  if (path?.kind !== "ok") throw new RangeError("the head's face has no outline");
  return path.path;
}

/** Pegs go in from the back, so their holes are bored through at what they are at the face, and opened from the back. */
function reaming({ face, back }: HeadFaceInput["hole"], x: number, y: number): Note {
  const text = `REAM 1:30 FROM BACK, ${face.toFixed(2)} MM AT FACE, ${back.toFixed(2)} MM AT BACK`;
  return { text, x, y, height: letterHeight, turn: 0, align: "left" };
}

type Named = HeadFaceInput["tuners"][number];

/** A name outside the head, at its tuner's side. */
function outside({ along, y }: Named, half: number) {
  return { x: -along, y: y > 0 ? half + 2 : -half - 2 - letterHeight, align: "center" } as const;
}

/** A name on the head beside its hole, on the side away from the centreline, which would strike it out. */
function besideHole({ along, y }: Named, hole: number) {
  const off = hole / 2 + 1.5;
  return { x: -along, y: y >= 0 ? y + off : y - off - letterHeight, align: "center" } as const;
}
