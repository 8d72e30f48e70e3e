import { extentsOf } from "../../geometry/measure.ts";
import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { rounded } from "../../step/rounded.ts";

/** A line of text: where its lower left corner (or its lower middle, lower right) stands, mm; `turn` in degrees. */
export type Note = {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly turn: number;
  readonly align: "left" | "center" | "right";
};

/** A path and the layer that says what is to be done along it; `chain` draws it as a centre line is drawn in pictures. */
export type Shape = { readonly layer: string; readonly path: Path; readonly chain?: true };

/** A flat drawing for a machine, at full size in mm: what to cut, in which layers, and what is written beside it. */
export type Flat = {
  readonly shapes: readonly Shape[];
  readonly notes: readonly Note[];
};

/** The height of lettering on a flat drawing, mm; nothing smaller is written. */
export const letterHeight = 2.5;

/**
 * The names of layers, in words that every DXF version allows: what to do along their paths. `PART`, `GUIDED-EDGE` and `NOTE`
 * are for reference and are not cut. Depths and diameters stand in mm with two decimals, an underscore for the point.
 */
export const layers = {
  outer: "OUTER-EDGE",
  inner: "INNER-EDGE",
  saw: "SAW-LINE",
  scribe: "SCRIBE",
  note: "NOTE",
  part: "PART",
  guided: "GUIDED-EDGE",
  recess: (depth: number) => `RECESS-${inName(depth)}`,
  bore: (diameter: number) => `BORE-${inName(diameter)}`,
} as const;

function inName(length: number): string {
  return rounded(length).toFixed(2).replace(".", "_");
}

/** Whether the paths of a layer must be closed. */
export function mustClose(layer: string): boolean {
  return [layers.outer, layers.inner, layers.part].includes(layer as never) || /^(RECESS|BORE)-/.test(layer);
}

/** A drawing of the same part for the other hand: its lines turned over one axis, its words left readable. */
export function turnedOver({ shapes, notes }: Flat, axis: "x" | "y"): Flat {
  return {
    shapes: shapes.map((shape) => ({ ...shape, path: mirrored(shape.path, axis) })),
    notes: notes.map((note) => ({ ...note, ...turnedNote(note, axis) })),
  };
}

/** Where a note's own box lies after turning over, by the corner that it is known by: its words stay readable. */
function turnedNote({ x, y, height, turn, align }: Note, axis: "x" | "y"): Partial<Note> {
  const opposite = ({ left: "right", right: "left", center: "center" } as const)[align];
  const upright = turn === 90;
  if (axis === "x") return upright ? { x: height - x } : { x: -x, align: opposite };
  return upright ? { y: -y, align: opposite } : { y: -y - height };
}

/** The extents of a drawing's lines, mm; a drawing without lines has none. */
export function flatExtents({ shapes }: Flat) {
  return extentsOf(shapes.map(({ path }) => path));
}

/** A straight line as a path. */
export function lineBetween(x1: number, y1: number, x2: number, y2: number): Path {
  return {
    closed: false,
    points: [
      { x: x1, y: y1, bulge: 0 },
      { x: x2, y: y2, bulge: 0 },
    ],
  };
}
