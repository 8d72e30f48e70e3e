import type { Path } from "../path.ts";
import { areaMoments } from "../path-measures/area-moments.ts";
import { type Frame, frameProblem, upright } from "./frame.ts";
import { pathProblem } from "./outline-rings.ts";
import type { Solid } from "./solid.ts";
import { between, dot, type Vec3 } from "./vec3.ts";

/**
 * A level cut of a solid at z: an outer path and its holes, each taken with its own sign. Between two slices the walls are
 * ruled, point by point.
 */
export type Slice = { readonly z: number; readonly paths: readonly Path[] };

/** A solid as level slices of a frame, or that it is no such solid. */
export type Slices =
  | { readonly kind: "ok"; readonly frame: Frame; readonly slices: readonly Slice[] }
  | { readonly kind: "none" };

/**
 * The slices of a straight extrusion of one outline, or of a loft whose sections are level with each other and whose paths
 * have the same bulges, so that what lies between two of them has these bulges too. `none` for every other recipe.
 */
export function slicesOf(solid: Solid): Slices {
  if (solid.kind === "extrude") return extruded(solid);
  return solid.kind === "loft" ? lofted(solid) : { kind: "none" };
}

function extruded({ outlines, base = 0, height, top, bottom }: Extract<Solid, { kind: "extrude" }>): Slices {
  const [outline] = outlines;
  if (outline === undefined || outlines.length > 1 || top || bottom) return { kind: "none" };
  if (!Number.isFinite(base) || !(Number.isFinite(height) && height > 0)) return { kind: "none" };
  const paths = [outline.outer, ...outline.holes];
  if (paths.some((path) => pathProblem(path) !== undefined)) return { kind: "none" };
  return {
    ...{ kind: "ok", frame: upright },
    slices: [
      { z: base, paths },
      { z: base + height, paths },
    ],
  };
}

function lofted({ sections }: Extract<Solid, { kind: "loft" }>): Slices {
  const first = sections.find((section) => section.kind === "path");
  if (first?.kind !== "path" || frameProblem(first.frame) || pathProblem(first.path)) return { kind: "none" };
  const { frame } = first;
  const within = (p: Vec3) => {
    const away = between(frame.origin, p);
    return { x: dot(away, frame.u), y: dot(away, frame.v), z: dot(away, frame.w) };
  };
  const slices: Slice[] = [];
  for (const section of sections) {
    const at = within(section.kind === "path" ? section.frame.origin : section.at);
    const shape = section.kind === "path" ? section.path : tip(first.path);
    const level =
      section.kind !== "path" || (alike(section.frame, frame) && alikeBulges(section.path, first.path));
    if (!level || (section.kind === "path" && pathProblem(section.path))) return { kind: "none" };
    const points = shape.points.map(({ x, y, bulge }) => ({ x: x + at.x, y: y + at.y, bulge }));
    slices.push({ z: at.z, paths: [{ closed: true, points }] });
  }
  const steps = slices.slice(1).map(({ z }, i) => Math.sign(z - slices[i]!.z));
  if (slices.length < 2 || steps.some((step) => step === 0 || step !== steps[0])) return { kind: "none" };
  return { kind: "ok", frame, slices: steps[0]! > 0 ? slices : slices.reverse() };
}

/** A path drawn together to one place. */
function tip({ points }: Path): Path {
  return { closed: true, points: points.map(({ bulge }) => ({ x: 0, y: 0, bulge })) };
}

function alike(a: Frame, b: Frame): boolean {
  return (["u", "v", "w"] as const).every(
    (axis) => a[axis].x === b[axis].x && a[axis].y === b[axis].y && a[axis].z === b[axis].z,
  );
}

function alikeBulges(a: Path, b: Path): boolean {
  return (
    a.points.length === b.points.length && a.points.every(({ bulge }, i) => bulge === b.points[i]!.bulge)
  );
}

/** Integrals over the solid between the slices: of 1 (mm³), x, y and z (mm⁴). */
export type SolidMoments = {
  readonly volume: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
};

/**
 * The moments of the solid between slices in the order of their z; exact.
 *
 * Along a ruled wall places move in a straight line with z, and an arc keeps its sweep, so areas are quadratic in z and first
 * moments cubic: Simpson's rule over each pair of slices, with the slice half-way, is exact for both.
 */
export function momentsBetween(slices: readonly Slice[]): SolidMoments {
  let [volume, x, y, z] = [0, 0, 0, 0];
  for (let i = 1; i < slices.length; i++) {
    const [low, high] = [slices[i - 1]!, slices[i]!];
    for (const [slice, weight] of [
      [low, 1],
      [half(low, high), 4],
      [high, 1],
    ] as const) {
      const share = ((high.z - low.z) * weight) / 6;
      const flat = flatMoments(slice.paths);
      volume += share * flat.area;
      x += share * flat.x;
      y += share * flat.y;
      z += share * flat.area * slice.z;
    }
  }
  return { volume, x, y, z };
}

function half(a: Slice, b: Slice): Slice {
  const paths = a.paths.map((path, i): Path => {
    const other = b.paths[i]!;
    const points = path.points.map(({ x, y, bulge }, k) => {
      const q = other.points[k]!;
      return { x: (x + q.x) / 2, y: (y + q.y) / 2, bulge };
    });
    return { closed: true, points };
  });
  return { z: (a.z + b.z) / 2, paths };
}

/** The moments of an outer path less its holes, whatever their winding. */
function flatMoments(paths: readonly Path[]): { area: number; x: number; y: number } {
  const sums = { area: 0, x: 0, y: 0 };
  for (const [i, path] of paths.entries()) {
    const moments = areaMoments(path);
    const sign = Math.sign(moments.area) * (i === 0 ? 1 : -1);
    for (const key of ["area", "x", "y"] as const) sums[key] += sign * moments[key];
  }
  return sums;
}
