import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { upright } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import { letteredBelow, letteringSize, pieceLines } from "./lettered.ts";
import { type Key, type Piece, pieceOf } from "./piece.ts";

/** A hole of a drill plate: its middle, mm. */
export type DrillPlace = { readonly x: number; readonly y: number };

/**
 * A plate with pilot holes, mm: its outline and thickness, the holes' places and their finished diameter with what is added to it, so that it comes out so;
 * lips that stand up from it and hook over the wood's edges, so high. `lines` are sunk into the face that it is printed on, in the middle of each
 * piece, their tops at y = `lettersAt`. `mirrored`: of the other hand. `key` joins its pieces.
 */
export type DrillPlateInput = {
  readonly outline: Path;
  readonly thickness: number;
  readonly holes: readonly DrillPlace[];
  readonly pilot: number;
  readonly growth: number;
  readonly lips: readonly Path[];
  readonly lipHeight: number;
  readonly mirrored: boolean;
  readonly lines: readonly string[];
  readonly lettersAt: number;
  readonly key: Key;
  readonly piece: Piece;
};

/** What a hand drill is started with, mm, and how thick a plate that it is held square in (G). */
export const drilling = { pilot: 3, thick: 8, lip: 6, lipWide: 4 } as const;

/** The other way across: y turned round. */
const turned = { ...upright, v: { x: 0, y: -1, z: 0 } };

/**
 * A plate that is laid on a face of wood, its upper face as it is printed down on that, with holes square to it for a hand drill's pilot. The letters are to be
 * read from the side that the drill comes from.
 */
export const drillPlate = step("jig.drill-plate", 1, (given: DrillPlateInput): Solid => {
  const { outline, thickness, lips, lipHeight, mirrored, lines, lettersAt, piece, key } = given;
  const raised = (outer: Path, height: number): Solid => {
    return { kind: "extrude", outlines: [{ outer, holes: [] }], height };
  };
  const plate = raised(outline, thickness);
  // The lips stand on the bed too: they are one with the plate all down its height.
  const body: Solid =
    lips.length === 0
      ? plate
      : { kind: "union", solids: [plate, ...lips.map((lip) => raised(lip, thickness + lipHeight))] };
  const radius = (given.pilot + given.growth) / 2;
  const bits = given.holes.map((place): Solid => {
    const outlines = [{ outer: circle(place, radius), holes: [] }];
    return { kind: "extrude", outlines, base: -1, height: thickness + lipHeight + 2 };
  });
  const bored: Solid = bits.length === 0 ? body : { kind: "cut", from: body, by: bits };
  const cut = pieceOf(bored, piece, key);
  const handed: Solid = mirrored ? { kind: "place", solid: cut, frame: turned } : cut;
  const { minX, maxX } = extentsOf([outline])!;
  const x = ((piece.from ?? minX) + (piece.to ?? maxX)) / 2;
  const y = mirrored ? letteringSize(lines).height - lettersAt : lettersAt;
  return letteredBelow(handed, { lines: pieceLines(lines, piece), x, y });
});
