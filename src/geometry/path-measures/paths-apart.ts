import { extentsApart, extentsOf } from "../measure.ts";
import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { segmentsOf } from "../segment.ts";
import { depthsIn } from "./depth-in.ts";
import { pointOn } from "./segment-places.ts";

/** In how many steps each line and arc is looked at, and how often the nearest step is halved. */
const looks = { steps: 6, halvings: 10 };

/**
 * How far the areas inside two closed paths are apart, mm; where they overlap, how far a place on one lies in the other, negative. Each path is looked at
 * from the other's places, and nearer round the least: two lines and arcs come nearest at an end of one or between, so this is
 * exact to a thousandth but for a path that turns within a sixth of a piece. Of two whose boxes are `far` apart or more, how far these are, which is no more.
 */
export function pathsApart(a: Path, b: Path, far = Number.POSITIVE_INFINITY): number {
  const boxes = extentsApart(extentsOf([a])!, extentsOf([b])!);
  if (boxes >= far) return boxes;
  return apartBy(a, b, depthsIn(a), depthsIn(b));
}

/** `pathsApart` of two paths that are near, by how deep places lie in either, for whoever asks it of one path often. */
export function apartBy(
  a: Path,
  b: Path,
  inA: (place: Point) => number,
  inB: (place: Point) => number,
): number {
  return Math.min(
    leastOver(a, (place) => -inB(place)),
    leastOver(b, (place) => -inA(place)),
  );
}

/** The least that something is over the places on a path, such as how deep they lie in another, which changes by no more than the way along it; found as pathsApart says. */
export function leastOver(path: Path, of: (place: Point) => number): number {
  const found = segmentsOf(path).map((segment) => {
    const values = Array.from({ length: looks.steps + 1 }, (_, i) => of(pointOn(segment, i / looks.steps)));
    const least = Math.min(...values);
    return { segment, at: values.indexOf(least) / looks.steps, least };
  });
  const best = Math.min(...found.map(({ least }) => least));
  // Between two steps it can't fall by more than half of the way between them.
  const near = found.filter(({ least, segment }) => least - best <= stepOf(segment));
  return Math.min(best, ...near.map(({ segment, at, least }) => nearer(segment, at, least, of)));
}

type Piece = ReturnType<typeof segmentsOf>[number];

function stepOf({ from, to }: Piece): number {
  // An arc of half a turn is longer than its chord by half of pi.
  return ((Math.PI / 2) * Math.hypot(to.x - from.x, to.y - from.y)) / (2 * looks.steps) + 1e-6;
}

function nearer(segment: Piece, at: number, least: number, of: (place: Point) => number): number {
  let [middle, best, step] = [at, least, 0.5 / looks.steps];
  for (let i = 0; i < looks.halvings; i++, step /= 2) {
    for (const share of [middle - step, middle + step]) {
      if (share < 0 || share > 1) continue;
      const value = of(pointOn(segment, share));
      if (value < best) [middle, best] = [share, value];
    }
  }
  return best;
}
