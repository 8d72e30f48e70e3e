import type { Solid } from "../../geometry/solid/solid.ts";
import type { Step } from "../../step/step.ts";
import { stepKey } from "../../step/step-key.ts";
import type { SolidFile } from "../solids/solid-file.ts";
import { type Key, type Piece, whole } from "./piece.ts";
import { piecesOf, type Stretch } from "./pieces.ts";
import { type PrintRules, roomOn } from "./print-rules.ts";

/** How long, wide and high a jig's largest piece lies on the bed, mm. */
export type Size = { readonly x: number; readonly y: number; readonly z: number };

/** A printed jig: its name, how large its largest piece is, and its files; none where it doesn't go onto the printer's bed. */
export type Jig = { readonly name: string; readonly size: Size; readonly files: readonly SolidFile[] };

/**
 * What a jig is called, whose part it is for, what it is for, and how it lies: along x, so wide and so high, mm. One with a `key` may be cut into
 * pieces, but not within the stretches `uncut`.
 */
export type JigGiven = {
  readonly name: string;
  readonly part: string;
  readonly what: string;
  readonly along: Stretch;
  readonly wide: number;
  readonly high: number;
  readonly key?: Key;
  readonly uncut?: readonly Stretch[];
};

/** A jig whose pieces are each what a step makes of `input` and the piece. */
export function jigOf<In>(
  { name, part, what, along, wide, high, key, uncut }: JigGiven,
  rules: PrintRules,
  make: Step<In & { readonly piece: Piece }, Solid>,
  input: In,
): Jig {
  const room = roomOn(rules);
  const length = along.to - along.from;
  const pieces = key === undefined ? [whole] : piecesOf(along, room.x, key.reach, uncut);
  const lengths = (pieces ?? [whole]).map(({ from, to }) => {
    return (to === null ? along.to : to + (key?.reach ?? 0)) - (from ?? along.from);
  });
  const size = { x: pieces === null ? length : Math.max(...lengths), y: wide, z: high };
  const fits = size.x <= room.x && size.y <= room.y && size.z <= room.z;
  if (pieces === null || !fits) return { name, size, files: [] };
  const files = pieces.map((piece): SolidFile => {
    const own = { ...input, piece };
    return {
      ...{ folder: "printed", part, key: stepKey(make, own) },
      name: piece.of === 1 ? name : `${name}-${piece.number}-${piece.of}`,
      what: piece.of === 1 ? what : `piece ${piece.number} of ${piece.of} of the ${what}`,
      solid: (store) => store.answer(make, own).value,
    };
  });
  return { name, size, files };
}

/** What every jig's description ends with: a printed part guides no cutter (trade notes, "Printing"). */
export const handOnly = "it never guides a cutter, guards, or clamps near one";
