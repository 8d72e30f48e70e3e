import { intersectSegments } from "../../geometry/intersect/intersect-segments.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentsOf } from "../../geometry/segment.ts";
import { tolerance } from "../../geometry/tolerance.ts";
import { windingAt } from "../../geometry/winding-at.ts";
import type { SheetLine } from "./sheet.ts";
import { stroke } from "./strokes.ts";

/**
 * Hatching at 45 degrees inside closed paths on paper (outlines counter-clockwise, holes clockwise), `spacing` mm apart, cut off
 * exactly at their lines and arcs. Lines are counted from the paper's origin, so two regions beside each other are hatched alike.
 */
export function hatched(paths: readonly Path[], spacing: number): SheetLine[] {
  const extents = extentsOf(paths);
  if (extents === undefined) return [];
  const { minX, minY, maxX, maxY } = extents;
  const segments = paths.flatMap(segmentsOf).map((segment) => ({ segment, ...riseOf(segment) }));
  const apart = spacing * Math.SQRT2;
  const lines: SheetLine[] = [];
  for (let k = Math.ceil((minY - maxX) / apart); k * apart < maxY - minX; k++) {
    const up = k * apart;
    const from = { x: minX - 1, y: minX - 1 + up };
    const to = { x: maxX + 1, y: maxX + 1 + up };
    const found = segments.flatMap(({ segment, least, most }) =>
      up < least || up > most ? [] : meetings(intersectSegments({ kind: "line", from, to }, segment)),
    );
    const places = found.map(({ x }) => x).sort((a, b) => a - b);
    for (const [i, x] of places.entries()) {
      const next = places[i + 1];
      if (next === undefined || next - x < tolerance.exact) continue;
      const middle = (x + next) / 2;
      if (windingAt(paths, { x: middle, y: middle + up }) === 0) continue;
      lines.push(stroke("hatch", { x, y: x + up }, { x: next, y: next + up }));
    }
  }
  return lines;
}

/** Between which heights over the paper's origin a line at 45 degrees may meet a segment, with room for rounding, mm. */
function riseOf(segment: Segment): { readonly least: number; readonly most: number } {
  const ends = [segment.from, segment.to].map(({ x, y }) => y - x);
  if (segment.kind === "arc") {
    const middle = segment.centre.y - segment.centre.x;
    ends.push(middle - segment.radius * Math.SQRT2, middle + segment.radius * Math.SQRT2);
  }
  return { least: Math.min(...ends) - tolerance.exact, most: Math.max(...ends) + tolerance.exact };
}

function meetings(found: ReturnType<typeof intersectSegments>): readonly Point[] {
  if (found.outcome === "none") return [];
  if (found.outcome === "overlapping") return [found.from, found.to];
  return found.outcome === "two" ? found.at : [found.at];
}
