import { didYouMean } from "./nearest.ts";
import { type Checked, type Problem, quoted } from "./problem.ts";
import { readQuantity } from "./quantity.ts";
import type { WrittenFace } from "./schema/face.ts";
import type { Measure } from "./schema/measure.ts";
import type { FramePoint, SpecFace, SpecValue } from "./spec.ts";
import type { Written } from "./yaml.ts";

type Values = { readonly [id: string]: SpecValue };

/**
 * A face's outline in mm: each measure a length, a fraction of the side of the frame that it stands along, or taken from a
 * dimension. `path` says where the face stands in its file, `curves` what its edges may follow. A corner and a hole's size are
 * fractions of the frame's `along` side; a corner is never negative and a hole has a size.
 */
export function resolveFace(
  face: WrittenFace,
  values: Values,
  written: Written,
  path: readonly PropertyKey[],
  curves: readonly string[],
): Checked<SpecFace> {
  const problems: Problem[] = [];
  const dimension = (id: string, where: readonly PropertyKey[]): number => {
    return heldBy(id, values, written, [...path, ...where], problems);
  };
  const along = dimension(face.frame.along, ["frame", "along"]);
  const out = dimension(face.frame.out, ["frame", "out"]);
  const length = (measure: Measure, side: number, where: readonly PropertyKey[]): number => {
    return lengthOf(measure, side, values, written, [...path, ...where], problems);
  };
  const point = ([x, y]: readonly [Measure, Measure], where: readonly PropertyKey[]): FramePoint => {
    return [length(x, along, [...where, 0]), length(y, out, [...where, 1])];
  };
  const refuse = (where: readonly PropertyKey[], found: string, allowed: string, hint: string) => {
    const at = [...path, ...where];
    const name = at.map(String).join(".");
    problems.push({ code: "range", position: written.at(at), name, found, allowed, hint });
  };
  for (const [i, { follows }] of face.edges.entries()) {
    if (follows === undefined || curves.includes(follows)) continue;
    const hint = didYouMean(follows, curves, "name a curve of this part");
    refuse(["edges", i, "follows"], quoted(follows), curves.join(", "), hint);
  }
  const edges = face.edges.map((edge, i) => ({
    id: edge.id,
    to: edge.to === undefined ? null : point(edge.to, ["edges", i, "to"]),
    through: (edge.through ?? []).map((place, k) => point(place, ["edges", i, "through", k])),
    follows: edge.follows ?? null,
    corner: edge.corner === undefined ? 0 : length(edge.corner, along, ["edges", i, "corner"]),
    joined: typeof edge.use === "object" ? edge.use.joined : null,
    ...(edge.finish === undefined ? {} : { finish: edge.finish }),
  }));
  const holes = (face.holes ?? []).map((hole, i) => ({
    id: hole.id,
    at: point(hole.at, ["holes", i, "at"]),
    size: length(hole.size, along, ["holes", i, "size"]),
  }));
  for (const [i, { corner }] of edges.entries()) {
    if (corner < 0) refuse(["edges", i, "corner"], `${corner} mm`, "0 mm or more", "write a radius");
  }
  for (const [i, { size }] of holes.entries()) {
    if (!(size > 0)) refuse(["holes", i, "size"], `${size} mm`, "more than 0 mm", "write a diameter");
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { along, out, edges, holes } };
}

/**
 * One measure, mm; a plain number is a fraction of the dimension `side`. `path` says where it stands in its file. What is wrong with it is added to `problems`, and
 * it is 0 then.
 */
export function resolveMeasure(
  measure: Measure,
  values: Values,
  side: string,
  written: Written,
  path: readonly PropertyKey[],
  problems: Problem[],
): number {
  const before = problems.length;
  const whole = heldBy(side, values, written, path, problems);
  const value = lengthOf(measure, whole, values, written, path, problems);
  return problems.length > before ? 0 : value;
}

function heldBy(
  id: string,
  values: Values,
  written: Written,
  path: readonly PropertyKey[],
  problems: Problem[],
): number {
  const value = values[id]?.value;
  if (value === undefined) problems.push(problem(written, path, id, "a dimension that can be set"));
  return value ?? 0;
}

function lengthOf(
  measure: Measure,
  side: number,
  values: Values,
  written: Written,
  path: readonly PropertyKey[],
  problems: Problem[],
): number {
  if (typeof measure === "string") {
    const share = readQuantity(measure, "number");
    if (share.ok) return share.value * side;
    const read = readQuantity(measure, "length");
    if (!read.ok) problems.push(problem(written, path, measure, read.allowed));
    return read.ok ? read.value : 0;
  }
  if ("dim" in measure) return heldBy(measure.dim, values, written, path, problems);
  return heldBy(measure.of, values, written, path, problems) * measure.part + (measure.plus ?? 0);
}

function problem(written: Written, path: readonly PropertyKey[], found: string, allowed: string): Problem {
  const hint = "12 mm, 0.62, { dim: NAME } or { part: 0.5, of: NAME, plus: 3 mm }";
  return {
    code: "type",
    position: written.at(path),
    name: path.map(String).join("."),
    found: quoted(found),
    allowed,
    hint,
  };
}
