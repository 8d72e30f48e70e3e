import type { Path } from "../../geometry/path.ts";
import { directionOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";

/** How the fibres lie where an edge is cut: running out ahead of it, diving in, along it, or met end on. */
export type GrainClass = "with" | "against" | "along" | "end grain";

/** A stretch of an edge of one class, from `from` to `to` along it, mm. */
export type GrainStretch = { readonly grain: GrainClass; readonly from: number; readonly to: number };

/** Up to which angle between fibres and edge it is cut along the grain, and over which it is end grain, degrees (G: default, confirm). */
export const grainAngles = { along: 2, end: 60 } as const;

/**
 * The class at a place, from the direction of the cut and the normal out of the wood (unit length) and the fibres' direction either
 * way: g turned so that g·c > 0, then the sign of g·n, or its size beyond the two angles. Fibres square to the cut are end grain.
 */
export function grainAt(cut: Point, normal: Point, fibre: Point): GrainClass {
  const forward = fibre.x * cut.x + fibre.y * cut.y;
  const out = fibre.x * normal.x + fibre.y * normal.y;
  const angle = (Math.atan2(Math.abs(out), Math.abs(forward)) * 180) / Math.PI;
  if (angle <= grainAngles.along) return "along";
  if (angle > grainAngles.end) return "end grain";
  return out * forward > 0 ? "with" : "against";
}

/**
 * The grain along a path with the wood on its left that is cut `along` its direction or `back`, in stretches in the path's own order,
 * exact for arcs: a turn passes the two angles at shares of its length. Neighbours of one class are one stretch.
 */
export function grainStretches(path: Path, way: "along" | "back", fibre: Point): GrainStretch[] {
  const stretches: GrainStretch[] = [];
  let before = 0;
  for (const segment of segmentsOf(path)) {
    const length = segmentLength(segment);
    if (length === 0) continue;
    const start = directionOn(segment, 0);
    const sweep = segment.kind === "arc" ? segment.sweep : 0;
    const shares = turnsAt(Math.atan2(start.y, start.x) - Math.atan2(fibre.y, fibre.x), sweep);
    for (const [i, to] of shares.entries()) {
      const from = i === 0 ? 0 : shares[i - 1]!;
      const along = directionOn(segment, (from + to) / 2);
      const cut = way === "along" ? along : { x: -along.x, y: -along.y };
      const grain = grainAt(cut, { x: along.y, y: -along.x }, fibre);
      const last = stretches.at(-1);
      const end = before + to * length;
      if (last?.grain === grain) stretches[stretches.length - 1] = { ...last, to: end };
      else stretches.push({ grain, from: before + from * length, to: end });
    }
    before += length;
  }
  return stretches;
}

/** The shares of a turn at which the angle between edge and fibres passes one of the two, in order, its end last; radians. */
function turnsAt(start: number, sweep: number): number[] {
  if (sweep === 0) return [1];
  const [along, end] = [(grainAngles.along * Math.PI) / 180, (grainAngles.end * Math.PI) / 180];
  const [low, high] = [Math.min(start, start + sweep), Math.max(start, start + sweep)];
  const shares: number[] = [];
  for (let half = Math.floor(low / Math.PI) - 1; half <= Math.ceil(high / Math.PI) + 1; half++) {
    for (const angle of [along, end, Math.PI - end, Math.PI - along]) {
      const share = (half * Math.PI + angle - start) / sweep;
      if (share > 1e-9 && share < 1 - 1e-9) shares.push(share);
    }
  }
  return [...shares.sort((a, b) => a - b), 1];
}

/** The length of each class along a path, mm. */
export type GrainLengths = { readonly [grain in GrainClass]: number };

/** How much of each class some stretches have in all. */
export function grainLengths(stretches: readonly GrainStretch[]): GrainLengths {
  const sum = (grain: GrainClass) =>
    stretches.filter((one) => one.grain === grain).reduce((all, { from, to }) => all + to - from, 0);
  return { with: sum("with"), against: sum("against"), along: sum("along"), "end grain": sum("end grain") };
}

/**
 * The same edge with the work turned over and cut on the same spindle: the cut runs the other way round the part, so with and against
 * change places, and what is along the grain or end grain stays so.
 */
export function flipped(lengths: GrainLengths): GrainLengths {
  return { ...lengths, with: lengths.against, against: lengths.with };
}
