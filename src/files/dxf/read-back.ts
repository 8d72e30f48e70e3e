import { type Measured, measurePath } from "./measure-dxf.ts";
import { readDxf } from "./read-dxf.ts";

/** What a path of the model measures, to hold the file against. */
export type Expected = Measured;

/** What reading a file back found: how many paths, what they measure in all, and everything that differs. */
export type ReadBack = {
  readonly status: "same" | "differs";
  readonly paths: number;
  readonly area: number;
  readonly length: number;
  readonly differences: readonly string[];
};

/** How far what is read may be from the model: numbers are written to a millionth of a mm. */
const off = 2e-6;

/**
 * Read a DXF text back and hold every path of it against what the model has: layer, closed or open, area, length, extents,
 * and which way its arcs turn. On each layer the file's paths must be the model's, in the same order; its notes are counted.
 */
export function readBackDxf(text: string, expected: readonly Expected[], notes: number): ReadBack {
  const read = readDxf(text);
  if (!read.ok) return { status: "differs", paths: 0, area: 0, length: 0, differences: [read.why] };
  const found = read.paths.map(measurePath);
  const differences: string[] = [];
  if (read.unit !== 4) differences.push(`the unit is ${read.unit}, not 4 for mm`);
  if (read.notes.length !== notes) differences.push(`${read.notes.length} notes, not ${notes}`);
  for (const layer of new Set([...expected, ...found].map((path) => path.layer))) {
    const [model, file] = [expected, found].map((paths) => paths.filter((path) => path.layer === layer));
    if (model!.length !== file!.length)
      differences.push(`${layer}: ${file!.length} paths, not ${model!.length}`);
    for (const [i, path] of model!.entries()) {
      const other = file![i];
      if (other !== undefined)
        differences.push(...compare(path, other).map((what) => `${layer} path ${i + 1}: ${what}`));
    }
  }
  const cut = found.filter(({ layer }) => layer !== "NOTE" && layer !== "PART");
  return {
    status: differences.length === 0 ? "same" : "differs",
    paths: found.length,
    area: round(cut.reduce((sum, { area }) => sum + area, 0)),
    length: round(cut.reduce((sum, { length }) => sum + length, 0)),
    differences,
  };
}

function compare(model: Measured, file: Measured): string[] {
  const said: string[] = [];
  const say = (what: string, a: unknown, b: unknown) => said.push(`${what} ${b}, not ${a}`);
  if (model.closed !== file.closed) say("closed", model.closed, file.closed);
  if (model.arcs.left !== file.arcs.left) say("arcs to the left", model.arcs.left, file.arcs.left);
  if (model.arcs.right !== file.arcs.right) say("arcs to the right", model.arcs.right, file.arcs.right);
  if (!near(model.length, file.length, off * 50)) say("length", model.length, file.length);
  if (!near(model.area, file.area, off * Math.max(model.length, 50))) say("area", model.area, file.area);
  for (const [i, side] of ["left", "bottom", "right", "top"].entries()) {
    if (!near(model.extents[i]!, file.extents[i]!, off)) say(side, model.extents[i], file.extents[i]);
  }
  return said;
}

function near(a: number, b: number, within: number): boolean {
  return Math.abs(a - b) <= within;
}

function round(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
