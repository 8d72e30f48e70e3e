import DxfDrawing from "dxf-writer";
import Handle from "dxf-writer/src/Handle.js";
import { type Flat, flatExtents, type Note, type Shape } from "../../drawing/flat/flat.ts";
import { rounded } from "../../step/rounded.ts";
import { mustBePlain, mustBeWritable, roundedBulge } from "./writable.ts";

/**
 * A flat drawing as DXF text: millimetres, true arcs as bulges, every entity in its layer's colour.
 *
 * Throws for what must never reach a machine: a path that its layer wants closed and that is open, a path without length, a number that
 * is none, a letter that isn't plain ASCII. The same drawing gives the same bytes, whatever was written before.
 */
export function dxfText(flat: Flat): string {
  Handle.seed = 0;
  const drawing = new DxfDrawing();
  drawing.setUnits("Millimeters");
  drawing.header("MEASUREMENT", [[70, 1]]);
  const extents = flatExtents(flat);
  if (extents === undefined) throw new RangeError("a drawing without lines can't be written");
  drawing.header("EXTMIN", corner(extents.minX, extents.minY));
  drawing.header("EXTMAX", corner(extents.maxX, extents.maxY));
  for (const shape of flat.shapes) addShape(drawing, shape);
  for (const note of flat.notes) addNote(drawing, note);
  return drawing.toDxfString();
}

/** Black on white paper, white on a black screen: no colour with a meaning. */
const plainColour = 7;

function corner(x: number, y: number): [number, number][] {
  return [
    [10, rounded(x)],
    [20, rounded(y)],
    [30, 0],
  ];
}

function intoLayer(drawing: DxfDrawing, name: string): void {
  if (!Object.hasOwn(drawing.layers, name)) drawing.addLayer(name, plainColour, "CONTINUOUS");
  drawing.setActiveLayer(name);
}

function addShape(drawing: DxfDrawing, { layer, path: { closed, points } }: Shape): void {
  mustBeWritable({ layer, path: { closed, points } });
  intoLayer(drawing, layer);
  const vertices = points.map(({ x, y, bulge }) => [rounded(x), rounded(y), roundedBulge(bulge)]);
  drawing.drawPolyline(vertices as [number, number][], closed);
}

function addNote(drawing: DxfDrawing, { text, x, y, height, turn, align }: Note): void {
  mustBePlain(text);
  intoLayer(drawing, "NOTE");
  drawing.drawText(rounded(x), rounded(y), height, turn, text, align, "baseline");
}
