import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import { placesOver } from "../../geometry/path-measures/places-over.ts";
import { type Segment, segmentsOf } from "../../geometry/segment.ts";
import type { SolidMoments } from "../../geometry/solid/slices.ts";
import type { CoreFrame } from "../../instrument/core/frame.ts";
import type { Hole, NeckSolidInput } from "../../instrument/neck/solid.ts";
import { momentsAt, together } from "./moments.ts";

/** What a channel takes out of the neck: columns from its floor to the neck's front, which falls away under a channel that reaches into the core. */
export function channelMoments(
  { side }: NeckSolidInput["profile"],
  core: CoreFrame,
  { path, depth }: NeckSolidInput["channels"][number],
): SolidMoments {
  const segments = segmentsOf(side);
  // Where the front bends, and where it has fallen away to the floor.
  const breaks = [core.start, core.start + (depth - core.drop) / Math.tan((core.slope * Math.PI) / 180)];
  const fronts = new Map<number, number>();
  const frontAt = (x: number) => {
    const front = fronts.get(x) ?? ordinatesAt(segments, x).at(-1) ?? 0;
    fronts.set(x, front);
    return front;
  };
  return together(
    placesOver(path, 6, breaks).map(({ x, y, weight }) => {
      const height = Math.max(0, frontAt(x) + depth);
      return momentsAt(weight * height, { x, y, z: -depth + height / 2 });
    }),
  );
}

/**
 * What a round hole takes out of the neck: a cylinder, or a cone's part where it is tapered, from the face to its bottom or to the neck's back.
 * A part of a cone with ends d0 and d1 across, L apart, holds pi L (d0² + d0 d1 + d1²) / 12; its middle lies L (d0² + 2 d0 d1 + 3 d1²) / 4 (d0² + d0 d1 + d1²)
 * from the first.
 */
export function holeMoments(side: NeckSolidInput["profile"]["side"], hole: Hole): SolidMoments {
  const { at, out, diameter: d0 } = hole;
  const long = Math.min(hole.depth, throughAt(segmentsOf(side), hole));
  const d1 = d0 + ((hole.bottom - d0) * long) / hole.depth;
  const squares = d0 * d0 + d0 * d1 + d1 * d1;
  const down = (long * (d0 * d0 + 2 * d0 * d1 + 3 * d1 * d1)) / (4 * squares);
  const middle = { x: at.x - down * out.x, y: at.y - down * out.y, z: at.z - down * out.z };
  return momentsAt((Math.PI / 12) * long * squares, middle);
}

/** How far along its axis a hole comes out of the neck's back, if it does: by false position, since the back is nearly straight there. */
function throughAt(side: readonly Segment[], { at, out, depth }: Hole): number {
  const inside = (t: number) => at.z - t * out.z - (ordinatesAt(side, at.x - t * out.x)[0] ?? Number.NaN);
  let [a, b] = [0, depth];
  let [over, under] = [inside(a), inside(b)];
  if (!(under < 0)) return depth;
  for (let round = 0; round < 12; round++) {
    const t = a + ((b - a) * over) / (over - under);
    const there = inside(t);
    if (Math.abs(there) < 1e-9) return t;
    if (there > 0) [a, over] = [t, there];
    else [b, under] = [t, there];
  }
  return a + ((b - a) * over) / (over - under);
}
