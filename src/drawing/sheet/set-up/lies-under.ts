import { pointOn } from "../../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../../geometry/point.ts";
import { segmentLength, segmentsOf } from "../../../geometry/segment.ts";
import type { Box, SheetLine } from "../sheet.ts";

/** How far apart lines are looked at along their length, and how wide a cell is that places are kept in, mm on paper. */
const looks = { apart: 0.5, cell: 4 } as const;

/**
 * Tells whether a box has something of some lines in it, from places along them: quick, and never wrong when it says so. A line that only cuts
 * a box's corner may be missed.
 */
export function liesUnder(lines: readonly SheetLine[]): (box: Box) => boolean {
  const cells = new Map<string, Point[]>();
  for (const { path } of lines)
    for (const segment of segmentsOf(path)) {
      const count = Math.max(1, Math.ceil(segmentLength(segment) / looks.apart));
      for (let i = 0; i <= count; i++) {
        const place = pointOn(segment, i / count);
        const key = `${cellOf(place.x)} ${cellOf(place.y)}`;
        const there = cells.get(key);
        if (there === undefined) cells.set(key, [place]);
        else there.push(place);
      }
    }
  return ({ minX, maxX, minY, maxY }) => {
    for (let i = cellOf(minX); i <= cellOf(maxX); i++)
      for (let k = cellOf(minY); k <= cellOf(maxY); k++)
        if (cells.get(`${i} ${k}`)?.some(({ x, y }) => x > minX && x < maxX && y > minY && y < maxY))
          return true;
    return false;
  };
}

function cellOf(value: number): number {
  return Math.floor(value / looks.cell);
}
