import { type Measured, measurePath } from "./measure-dxf.ts";
import { type ReadDxf, type ReadNote, type ReadPath, readDxf } from "./read-dxf.ts";

/** A path of the model: what it measures and where it runs. */
export type ExpectedPath = Measured & { readonly vertices: ReadPath["vertices"] };

/** What a file must hold: paths, notes, and the extents that its head states. */
export type Expected = {
  readonly paths: readonly ExpectedPath[];
  readonly notes: readonly ReadNote[];
  readonly extents: readonly [minX: number, minY: number, maxX: number, maxY: number];
};

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
 * Read a DXF text back and hold it against what the model has.
 *
 * Of every path: layer, closed or open, area, length, extents, which way its arcs turn, and each vertex with its bulge; on each
 * layer the file's paths must be the model's, in the same order. Of every note: layer, words, place, height and turn. Of the
 * head: version, unit and measuring system, which R12 has none of, and extents.
 */
export function readBackDxf(text: string, expected: Expected, version: "r12" | "later" = "later"): ReadBack {
  const read = readDxf(text);
  if (!read.ok) return { status: "differs", paths: 0, area: 0, length: 0, differences: [read.why] };
  const found = read.paths.map((path) => ({ ...measurePath(path), vertices: path.vertices }));
  const layers = [...new Set([...expected.paths, ...found].map((path) => path.layer))];
  const differences = [
    ...headDifferences(read, expected, version),
    ...layers.flatMap((layer) => {
      const [model, file] = [expected.paths, found].map((paths) =>
        paths.filter((path) => path.layer === layer),
      );
      return layerDifferences(layer, model!, file!);
    }),
    ...noteDifferences(expected.notes, read.notes),
  ];
  const cut = found.filter(({ layer }) => layer !== "NOTE" && layer !== "PART");
  return {
    status: differences.length === 0 ? "same" : "differs",
    paths: found.length,
    area: round(cut.reduce((sum, { area }) => sum + area, 0)),
    length: round(cut.reduce((sum, { length }) => sum + length, 0)),
    differences,
  };
}

function headDifferences(
  { version, unit, measurement, extents }: Extract<ReadDxf, { ok: true }>,
  expected: Expected,
  wanted: "r12" | "later",
): string[] {
  const said: string[] = [];
  if (version !== wanted) said.push(`the version is ${version}, not ${wanted}`);
  if (wanted === "later" && unit !== 4) said.push(`the unit is ${unit}, not 4 for mm`);
  if (wanted === "later" && measurement !== 1)
    said.push(`the measuring system is ${measurement}, not 1 for metric`);
  if (extents.some((value, i) => !near(value, expected.extents[i]!, off)))
    said.push(`the extents are ${extents.join(", ")}`);
  return said;
}

function layerDifferences(
  layer: string,
  model: readonly ExpectedPath[],
  file: readonly ExpectedPath[],
): string[] {
  const count = model.length === file.length ? [] : [`${layer}: ${file.length} paths, not ${model.length}`];
  const paths = model.flatMap((path, i) => {
    const other = file[i];
    return other === undefined ? [] : compare(path, other).map((what) => `${layer} path ${i + 1}: ${what}`);
  });
  return [...count, ...paths];
}

function noteDifferences(model: readonly ReadNote[], file: readonly ReadNote[]): string[] {
  if (model.length !== file.length) return [`${file.length} notes, not ${model.length}`];
  return model.flatMap((note, i) => {
    const other = file[i]!;
    const same = note.text === other.text && note.layer === other.layer && note.height === other.height;
    const there = near(note.x, other.x, off) && near(note.y, other.y, off) && note.turn === other.turn;
    return same && there ? [] : [`note ${i + 1}: ${JSON.stringify(other)}, not ${JSON.stringify(note)}`];
  });
}

function compare(model: ExpectedPath, file: ExpectedPath): string[] {
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
  if (model.vertices.length !== file.vertices.length)
    say("vertices", model.vertices.length, file.vertices.length);
  for (const [i, { x, y, bulge }] of model.vertices.entries()) {
    const other = file.vertices[i];
    if (other === undefined) break;
    if (!near(x, other.x, off) || !near(y, other.y, off))
      say(`vertex ${i + 1}`, `${x}, ${y}`, `${other.x}, ${other.y}`);
    if (!near(bulge, other.bulge, off)) say(`bulge ${i + 1}`, bulge, other.bulge);
  }
  return said;
}

function near(a: number, b: number, within: number): boolean {
  return Math.abs(a - b) <= within;
}

function round(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
