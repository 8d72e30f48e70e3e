import type { Path } from "../../geometry/path.ts";
import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import { boxesApart, pathsApart } from "../../geometry/path-measures/paths-apart.ts";
import { between, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import type { Rod, Upright } from "./ground.ts";

/** What is farther apart than this, mm, is told by the boxes round it, which is no more than it is: nobody asks for so much wood. */
const far = 8;

/** How far apart two gaps in plan and in height leave two things: where they overlap in one the other decides, where in both the lesser overlap, negative. */
function both(plan: number, height: number): number {
  if (plan > 0 && height > 0) return Math.hypot(plan, height);
  return Math.max(plan, height);
}

/** The wood between two things that stand upright, mm; negative where they overlap. */
export function uprightsApart(a: Upright, b: Upright): number {
  const height = Math.max(a.low - b.high, b.low - a.high);
  return height >= far ? height : both(pathsApart(a.path, b.path, far), height);
}

/** The wood between something upright and a straight round hole, mm: its axis is looked at all along, and nearer round the nearest place. */
export function uprightToRod(upright: Upright, rod: Rod): number {
  const radius = rod.diameter / 2;
  const apart = boxesApart(upright.path, chord(rod));
  if (apart - radius >= far) return apart - radius;
  const heights = Math.max(
    upright.low - Math.max(rod.from.z, rod.to.z),
    Math.min(rod.from.z, rod.to.z) - upright.high,
  );
  if (heights - radius >= far) return heights - radius;
  const inside = depthsIn(upright.path);
  const to = (share: number) => {
    const at = alongRod(rod, share);
    const height = Math.max(upright.low - at.z, at.z - upright.high);
    return both(-inside(at), height);
  };
  return leastShare(to) - radius;
}

/** The wood between two straight round holes, mm. */
export function rodsApart(a: Rod, b: Rod): number {
  return segmentsApart(a, b) - (a.diameter + b.diameter) / 2;
}

function chord({ from, to }: Rod): Path {
  return { closed: false, points: [from, to].map(({ x, y }) => ({ x, y, bulge: 0 })) };
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
  for (let step = 0.5 / steps; step > 1e-6; step /= 2) {
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
