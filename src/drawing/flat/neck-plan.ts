import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Pin } from "../../instrument/neck/pins.ts";
import type { Rod } from "../../instrument/neck/rods.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, type Note, type Shape, turnedOver } from "./flat.ts";

/**
 * What a neck's plan shows; mm. `holes` are the tuners' places as they project into the plan. Index pins that go
 * through stand in the waste past its ends.
 */
export type NeckPlanInput = {
  readonly hand: "right" | "left";
  readonly path: Path;
  readonly holes: readonly { readonly x: number; readonly y: number }[];
  readonly rods: readonly Pick<Rod, "y" | "start" | "length" | "depth" | "path">[];
  readonly pins: readonly Pin[];
  readonly pockets: readonly PlanPocket[];
  readonly marks: readonly { readonly name: string; readonly x: number }[];
};

/** What is sunk square into the core's front, where it projects into the plan; `bore` is the diameter of what is drilled. */
export type PlanPocket = {
  readonly id: string;
  readonly path: Path;
  readonly depth: number;
  readonly bore: number | null;
};

/** Half the size of the cross that marks a place to bore at, mm. */
const cross = 3;

function crossAt({ x, y }: { readonly x: number; readonly y: number }): Shape[] {
  return [lineBetween(x - cross, y, x + cross, y), lineBetween(x, y - cross, x, y + cross)].map((path) => {
    return { layer: layers.scribe, path };
  });
}

/**
 * The neck from the front, head at the left: its outline to saw and shape, its centreline, the places of nut, board's end,
 * core and bridge, and the tuners' places. These are projected: they are bored square to the head's own face. The channels of
 * its rods; of its index pins those under the board as bores, those in the waste, which is no part of it, as crosses. What is sunk into the core's front
 * is projected too: it goes in square to that front.
 */
export const neckPlanFlat = step(
  "outline.neck-plan",
  3,
  ({ hand, path, holes, rods, pins, pockets, marks }: NeckPlanInput): Flat => {
    const { minX, maxX, minY, maxY } = extentsOf([path])!;
    const [waste, under] = [true, false].map((through) =>
      pins.filter(({ depth }) => (depth === "through") === through),
    ) as [Pin[], Pin[]];
    const upright = (text: string, x: number): Note => {
      const at = { x: x + letterHeight / 2, y: maxY + 4 };
      return { text, ...at, height: letterHeight, turn: 90, align: "left" };
    };
    const flat: Flat = {
      shapes: [
        { layer: layers.outer, path },
        { layer: layers.part, path },
        { layer: layers.note, path: lineBetween(minX - 4, 0, maxX + 4, 0), chain: true },
        ...[...marks, ...pins].map(({ x }) => ({
          ...{ layer: layers.note, path: lineBetween(x, minY - 2, x, maxY + 2) },
        })),
        ...[...holes, ...waste].flatMap(crossAt),
        ...rods.map(({ depth, path: channel }) => ({ layer: layers.recess(depth), path: channel })),
        ...under.map(({ x, y, diameter }) => ({
          layer: layers.bore(diameter),
          path: circle({ x, y }, diameter / 2),
        })),
        ...pockets.map(({ path: sunk, depth, bore }) => ({
          layer: bore === null ? layers.recess(depth) : layers.bore(bore),
          path: sunk,
        })),
      ],
      notes: [
        ...pocketNotes(pockets),
        ...rods.map(({ start, length, y }): Note => {
          const at = { x: start + length + 2, y: y - letterHeight / 2 };
          return { text: "ROD", ...at, height: letterHeight, turn: 0, align: "left" };
        }),
      ],
    };
    const { shapes, notes } = hand === "left" ? turnedOver(flat, "y") : flat;
    // What stands over the neck is not turned over with it: under it there is the title.
    const over = [...marks, ...pins.map((pin) => ({ name: pinText(pin), x: pin.x }))];
    const square: Note = {
      text: "POCKETS SQUARE TO THE CORE'S FRONT",
      ...{ x: maxX, y: maxY + 4, height: letterHeight, turn: 0, align: "right" },
    };
    return {
      shapes,
      notes: [
        ...[...notes, ...over.map(({ name, x }) => upright(name, x))],
        ...(pockets.length > 0 ? [square] : []),
      ],
    };
  },
);

/** Beside each, on the head's side. */
function pocketNotes(pockets: readonly PlanPocket[]): Note[] {
  return pockets.map(({ id, path, depth, bore }) => {
    const { minX, minY, maxY } = extentsOf([path])!;
    const text = `${id.toUpperCase()} ${bore === null ? "" : `${bore.toFixed(2)} `}${depth.toFixed(2)} DEEP`;
    // Over the centreline, which a cradle lies across.
    const at = { x: minX - 1.5, y: (minY + maxY) / 2 + (bore === null ? 1 : -letterHeight / 2) };
    return { text, ...at, height: letterHeight, turn: 0, align: "right" };
  });
}

function pinText({ id, diameter, depth }: Pin): string {
  const deep = depth === "through" ? "THROUGH" : `${depth.toFixed(2)} DEEP`;
  return `${id.toUpperCase()} PIN ${diameter.toFixed(2)} ${deep}`;
}
