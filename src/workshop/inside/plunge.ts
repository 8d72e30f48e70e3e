import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { depthsIn } from "../../geometry/path-measures/depth-in.ts";
import type { Point } from "../../geometry/point.ts";

/** Where a bit goes into the wood, and how far the guide then stands off the opening's edge, mm; negative where it has no room. */
export type Plunge = { readonly at: Point; readonly room: number };

/** How far a guide stands off its opening's edge at least where the bit goes in, mm (G: default, confirm). */
export const leastPlay = 0.5;

/** How many places are looked at along and across, and how often closer round the best of them. */
const looks = { across: 10, closer: 14 } as const;

/** The place of an opening that lies deepest in it, for a guide of a radius; mm. An opening of equal width has several: the first as they are looked at. */
export function plungeIn(opening: Path, radius: number): Plunge {
  const deep = depthsIn(opening);
  const { minX, minY, maxX, maxY } = extentsOf([opening])!;
  let best = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  let depth = deep(best);
  const look = (at: Point) => {
    const here = deep(at);
    if (here > depth + 1e-9) [best, depth] = [at, here];
  };
  const [dx, dy] = [(maxX - minX) / looks.across, (maxY - minY) / looks.across];
  for (let i = 1; i < looks.across; i++)
    for (let k = 1; k < looks.across; k++) look({ x: minX + i * dx, y: minY + k * dy });
  for (let half = 1; half <= looks.closer; half++) {
    const { x, y } = best;
    const [sx, sy] = [dx / 2 ** half, dy / 2 ** half];
    for (const [a, b] of around) look({ x: x + a * sx, y: y + b * sy });
  }
  return { at: best, room: depth - radius };
}

const around = [-1, 0, 1].flatMap((a) => [-1, 0, 1].map((b) => [a, b] as const));
