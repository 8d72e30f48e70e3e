import DxfDrawing from "dxf-writer";
import Handle from "dxf-writer/src/Handle.js";
import { type Flat, flatExtents, mustClose, type Note, type Shape } from "../../drawing/flat/flat.ts";
import { pathLength } from "../../geometry/measure.ts";
import { rounded } from "../../step/rounded.ts";
import { straight } from "./straight.ts";

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
  if (mustClose(layer) && !closed) throw new RangeError(`an open path on layer ${layer}`);
  if (points.length < 2) throw new RangeError(`a path without length on layer ${layer}`);
  if (!(pathLength({ closed, points }) > 1e-6))
    throw new RangeError(`a path without length on layer ${layer}`);
  if (!/^[A-Z][A-Z0-9_]*(-[A-Z0-9_]+)*$/.test(layer) || /-0_00$/.test(layer))
    throw new RangeError(`a layer named ${layer}`);
  intoLayer(drawing, layer);
  const vertices = points.map(({ x, y, bulge }) => [rounded(x), rounded(y), roundedBulge(bulge)]);
  drawing.drawPolyline(vertices as [number, number][], closed);
}

/**
 * A bulge is no length: on a chord of 100 mm a millionth of it would already be 0.05 micrometres, so it keeps nine decimals.
 */
function roundedBulge(bulge: number): number {
  if (!Number.isFinite(bulge)) throw new RangeError(`a bulge that is not finite (${bulge})`);
  const value = Math.round(bulge * 1e9) / 1e9 + 0;
  return Math.abs(value) < straight ? 0 : value;
}

function addNote(drawing: DxfDrawing, { text, x, y, height, turn, align }: Note): void {
  if (!/^[\u0020-\u007e]+$/.test(text))
    throw new RangeError(`a note that isn't plain ASCII: ${JSON.stringify(text)}`);
  intoLayer(drawing, "NOTE");
  drawing.drawText(rounded(x), rounded(y), height, turn, text, align, "baseline");
}
