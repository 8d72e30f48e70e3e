import { type Segment, segmentsOf } from "../segment.ts";
import { type Frame, frameProblem, fromFrame, upright } from "./frame.ts";
import type { SolidMeasures } from "./mesh-measures.ts";
import { momentsBetween, type Slice, slicesOf } from "./slices.ts";
import type { Solid } from "./solid.ts";
import { dot, type Vec3 } from "./vec3.ts";

/** The measures of a solid worked out exactly, or that its recipe doesn't allow that. */
export type ClosedForm =
  | { readonly kind: "ok"; readonly measures: SolidMeasures }
  | { readonly kind: "none" };

/**
 * Volume, centre and extents without any faceting of a straight extrusion of one outline, or of a loft between level sections of
 * the same bulges (a cone, a wedge to a tip, a tapered post), placed anywhere; `none` for every other recipe and for one
 * that is plainly faulty. Outlines are taken to be simple and holes to lie inside them.
 */
export function closedForm(solid: Solid): ClosedForm {
  return inFrame(solid, [upright]);
}

/** The same in frames within frames, the outermost first. */
function inFrame(solid: Solid, frames: readonly Frame[]): ClosedForm {
  if (solid.kind === "place") return inFrame(solid.solid, [...frames, solid.frame]);
  const sliced = slicesOf(solid);
  if (sliced.kind !== "ok" || frames.some((frame) => frameProblem(frame))) return { kind: "none" };
  const moments = momentsBetween(sliced.slices);
  if (!(moments.volume > 0)) return { kind: "none" };
  const { volume } = moments;
  const all = [...frames, sliced.frame];
  const out = (p: Vec3) => all.reduceRight((q, frame) => fromFrame(frame, q.x, q.y, q.z), p);
  const centre = out({ x: moments.x / volume, y: moments.y / volume, z: moments.z / volume });
  return { kind: "ok", measures: { volume, centre, ...extents(sliced.slices, out) } };
}

/** Walls are ruled, so nothing reaches farther than the slices do. */
function extents(slices: readonly Slice[], out: (p: Vec3) => Vec3): { least: Vec3; most: Vec3 } {
  const origin = out({ x: 0, y: 0, z: 0 });
  const axes = [out({ x: 1, y: 0, z: 0 }), out({ x: 0, y: 1, z: 0 }), out({ x: 0, y: 0, z: 1 })] as const;
  const rims = slices.map(({ z, paths }) => ({ z, segments: segmentsOf(paths[0]!) }));
  const reach = (axis: "x" | "y" | "z", sign: number): number => {
    const [u, v, w] = axes.map((a) => sign * (a[axis] - origin[axis])) as [number, number, number];
    const far = rims.flatMap(({ z, segments }) => segments.map((segment) => w * z + farthest(segment, u, v)));
    return sign * (sign * origin[axis] + Math.max(...far));
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
