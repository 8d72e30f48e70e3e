import { areaMoments } from "../path-measures/area-moments.ts";
import { type Segment, segmentsOf } from "../segment.ts";
import { type Frame, frameProblem, placeIn, upright } from "./frame.ts";
import type { SolidMeasures } from "./mesh-measures.ts";
import { pathProblem } from "./outline-rings.ts";
import type { Outline, Solid } from "./solid.ts";
import { dot, type Vec3 } from "./vec3.ts";

/** The measures of a solid worked out exactly, or that its recipe doesn't allow that. */
export type ClosedForm =
  | { readonly kind: "ok"; readonly measures: SolidMeasures }
  | { readonly kind: "none" };

/**
 * Volume, centre and extents of a straight extrusion of one outline, placed anywhere, without any faceting; `none` for
 * every other recipe and for one that is plainly faulty. The outline is taken to be simple and its holes inside it.
 */
export function closedForm(solid: Solid): ClosedForm {
  return inFrame(solid, [upright]);
}

/** The same in frames within frames, the outermost first. */
function inFrame(solid: Solid, frames: readonly Frame[]): ClosedForm {
  if (solid.kind === "place") return inFrame(solid.solid, [...frames, solid.frame]);
  if (solid.kind !== "extrude" || solid.outlines.length !== 1 || solid.top || solid.bottom)
    return { kind: "none" };
  const { base = 0, height } = solid;
  const outline = solid.outlines[0]!;
  const paths = [outline.outer, ...outline.holes];
  const sound =
    Number.isFinite(base) &&
    Number.isFinite(height) &&
    height > 0 &&
    frames.every((frame) => !frameProblem(frame));
  if (!sound || paths.some((path) => pathProblem(path) !== undefined)) return { kind: "none" };
  let [area, x, y] = [0, 0, 0];
  for (const [i, path] of paths.entries()) {
    const moments = areaMoments(path);
    const sign = Math.sign(moments.area) * (i === 0 ? 1 : -1);
    area += sign * moments.area;
    x += sign * moments.x;
    y += sign * moments.y;
  }
  if (!(area > 0)) return { kind: "none" };
  const out = (p: Vec3) => frames.reduceRight((q, frame) => placeIn(frame, q.x, q.y, q.z), p);
  const centre = out({ x: x / area, y: y / area, z: base + height / 2 });
  return { kind: "ok", measures: { volume: area * height, centre, ...extents(outline, base, height, out) } };
}

function extents(
  outline: Outline,
  base: number,
  height: number,
  out: (p: Vec3) => Vec3,
): { least: Vec3; most: Vec3 } {
  const origin = out({ x: 0, y: 0, z: 0 });
  const axes = [out({ x: 1, y: 0, z: 0 }), out({ x: 0, y: 1, z: 0 }), out({ x: 0, y: 0, z: 1 })] as const;
  const segments = segmentsOf(outline.outer);
  const reach = (axis: "x" | "y" | "z", sign: number): number => {
    const [u, v, w] = axes.map((a) => sign * (a[axis] - origin[axis])) as [number, number, number];
    const flat = segments.reduce((most, s) => Math.max(most, farthest(s, u, v)), Number.NEGATIVE_INFINITY);
    return sign * (sign * origin[axis] + flat + Math.max(w * base, w * (base + height)));
  };
  return {
    least: { x: reach("x", -1), y: reach("y", -1), z: reach("z", -1) },
    most: { x: reach("x", 1), y: reach("y", 1), z: reach("z", 1) },
  };
}

/** How far a segment reaches in a direction (not of unit length): the greatest u x + v y on it. */
function farthest(segment: Segment, u: number, v: number): number {
  const way: Vec3 = { x: u, y: v, z: 0 };
  const ends = Math.max(dot({ ...segment.from, z: 0 }, way), dot({ ...segment.to, z: 0 }, way));
  if (segment.kind === "line") return ends;
  const { centre, radius, start, sweep } = segment;
  const off = Math.atan2(v, u) - start - sweep / 2;
  const turned = off - 2 * Math.PI * Math.round(off / (2 * Math.PI));
  if (Math.abs(turned) > Math.abs(sweep) / 2) return ends;
  return Math.max(ends, dot({ ...centre, z: 0 }, way) + radius * Math.hypot(u, v));
}
