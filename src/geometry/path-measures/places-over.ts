import { extentsOf } from "../measure.ts";
import type { Path } from "../path.ts";
import { segmentsOf } from "../segment.ts";
import { stretches } from "../stretches.ts";
import { ordinatesAt } from "./ordinates-at.ts";

/** A place in an area and how much of it that stands for, mm and mm². */
export type WeightedPlace = { readonly x: number; readonly y: number; readonly weight: number };

/**
 * Places over the area inside a closed path to integrate at: Gauss's rule of n points along x on each stretch between two
 * vertices or `breaks`, and of as many along y between two sides. A round end, where a side stands upright, costs accuracy: a circle's area
 * comes out 0.2 % too large with n = 5. A path without points has none of it and throws.
 */
export function placesOver(path: Path, n: number, breaks: readonly number[] = []): WeightedPlace[] {
  const segments = segmentsOf(path);
  const { minX, maxX } = extentsOf([path])!;
  const ends = [...path.points.map(({ x }) => x), ...breaks];
  return stretches(minX, maxX, ends, n).flatMap((along) => {
    const sides = ordinatesAt(segments, along.x);
    const spans = Array.from({ length: Math.floor(sides.length / 2) }, (_, i) => i);
    return spans.flatMap((i) =>
      stretches(sides[2 * i]!, sides[2 * i + 1]!, [], n).map(({ x: y, weight }) => {
        return { x: along.x, y, weight: along.weight * weight };
      }),
    );
  });
}
