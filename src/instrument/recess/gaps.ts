import { type Extents, extentsApart, extentsOf } from "../../geometry/measure.ts";
import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import { apartBy } from "../../geometry/path-measures/paths-apart.ts";
import type { Point } from "../../geometry/point.ts";
import { between, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import { boxRound, far } from "../near-by.ts";
import type { Rod, Upright } from "./ground.ts";

/** Something upright that is looked at from many sides: the box round its outline, and how deep places lie in that. */
export type Looked = Upright & { readonly box: Extents; readonly inside: (place: Point) => number };

/** Makes something upright ready to be looked at often. */
export function looked(upright: Upright): Looked {
  let made: ((place: Point) => number) | undefined;
  const inside = (place: Point) => {
    made ??= depthsIn(upright.path);
    return made(place);
  };
  return { ...upright, box: extentsOf([upright.path])!, inside };
}

/** How far apart two gaps in plan and in height leave two things: where they overlap in one the other decides, where in both the lesser overlap, negative. */
function both(plan: number, height: number): number {
  if (plan > 0 && height > 0) return Math.hypot(plan, height);
  return Math.max(plan, height);
}

/** The wood between two things that stand upright, mm; negative where they overlap. */
export function uprightsApart(a: Looked, b: Looked): number {
  const height = Math.max(a.low - b.high, b.low - a.high);
  const plan = extentsApart(a.box, b.box);
  if (Math.max(height, plan) >= far) return both(plan, height);
  return both(apartBy(a.path, b.path, a.inside, b.inside), height);
}

/** The wood between something upright and a straight round hole, mm: its axis is looked at all along, and nearer round the nearest place. */
export function uprightToRod(upright: Looked, rod: Rod): number {
  const radius = rod.diameter / 2;
  const { from, to } = rod;
  const plan = extentsApart(upright.box, boxRound(from, to));
  const height = Math.max(upright.low - Math.max(from.z, to.z), Math.min(from.z, to.z) - upright.high);
  if (Math.max(plan, height) - radius >= far) return both(plan, height) - radius;
  return (
    leastShare((share) => {
      const at = alongRod(rod, share);
      return both(-upright.inside(at), Math.max(upright.low - at.z, at.z - upright.high));
    }) - radius
  );
}

/** The wood between two straight round holes, mm. */
export function rodsApart(a: Rod, b: Rod): number {
  return segmentsApart(a, b) - (a.diameter + b.diameter) / 2;
}

/** The place at a share of a straight hole's axis, mm. */
export function alongRod({ from, to }: Rod, share: number): Vec3 {
  return {
    x: from.x + share * (to.x - from.x),
    y: from.y + share * (to.y - from.y),
    z: from.z + share * (to.z - from.z),
  };
}

/** The least of something along a stretch, by shares of it from 0 to 1. */
export function leastShare(of: (share: number) => number): number {
  const steps = 24;
  const values = Array.from({ length: steps + 1 }, (_, i) => of(i / steps));
  let best = Math.min(...values);
  let at = values.indexOf(best) / steps;
  for (let step = 0.5 / steps; step > 1e-5; step /= 2) {
    for (const share of [at - step, at + step]) {
      if (share < 0 || share > 1) continue;
      const value = of(share);
      if (value < best) [best, at] = [value, share];
    }
  }
  return best;
}

/** The least distance of two straight stretches: of each one's place the nearest on the other is known, and so it falls toward the least. */
function segmentsApart(a: Rod, b: Rod): number {
  const run = between(b.from, b.to);
  const square = dot(run, run);
  return leastShare((share) => {
    const at = alongRod(a, share);
    const way = between(b.from, at);
    const k = square === 0 ? 0 : Math.min(1, Math.max(0, dot(way, run) / square));
    return Math.hypot(way.x - k * run.x, way.y - k * run.y, way.z - k * run.z);
  });
}
