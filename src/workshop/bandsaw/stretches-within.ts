import { intersectSegments } from "../../geometry/intersect/intersect-segments.ts";
import type { Extents } from "../../geometry/measure.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";
import { nearestShare, pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { type Segment, segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { tolerance } from "../../geometry/tolerance.ts";

type Bit = { readonly from: Point; readonly to: Point; readonly bulge: number };

/** The stretches of an open path that lie inside a rectangle by more than `tolerance.exact`, in order, arcs kept; mm. */
export function stretchesWithin(path: Path, within: Extents): Path[] {
  const stretches: Bit[][] = [];
  let running = false;
  for (const segment of segmentsOf(path).filter((one) => segmentLength(one) > 0)) {
    for (const { bit, middle } of bitsOf(segment, within)) {
      const inside = liesIn(middle, within);
      if (inside && running) stretches.at(-1)!.push(bit);
      else if (inside) stretches.push([bit]);
      running = inside;
    }
  }
  return stretches.map(pathOf);
}

function liesIn({ x, y }: Point, { minX, maxX, minY, maxY }: Extents): boolean {
  const { exact } = tolerance;
  return x > minX + exact && x < maxX - exact && y > minY + exact && y < maxY - exact;
}

/** A segment cut where it meets the rectangle's edges, each bit with its middle. */
function bitsOf(segment: Segment, within: Extents): { bit: Bit; middle: Point }[] {
  const places = edgesOf(within).flatMap((edge) => meetings(segment, edge));
  const shares = [0, ...places.map((place) => nearestShare(segment, place)), 1].sort((a, b) => a - b);
  const length = segmentLength(segment);
  const cuts = shares.filter((share, i) => i === 0 || (share - shares[i - 1]!) * length > tolerance.exact);
  if (cuts.at(-1) !== 1) cuts[cuts.length === 1 ? 1 : cuts.length - 1] = 1;
  return cuts.slice(1).map((end, i) => {
    const start = cuts[i]!;
    const bulge = segment.kind === "arc" ? Math.tan((segment.sweep * (end - start)) / 4) : 0;
    const bit = { from: pointOn(segment, start), to: pointOn(segment, end), bulge };
    return { bit, middle: pointOn(segment, (start + end) / 2) };
  });
}

function edgesOf({ minX, maxX, minY, maxY }: Extents): Segment[] {
  const corners = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
  return corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % 4]! }));
}

function meetings(segment: Segment, edge: Segment): readonly Point[] {
  const met = intersectSegments(segment, edge);
  if (met.outcome === "two") return met.at;
  return met.outcome === "one" || met.outcome === "tangent" ? [met.at] : [];
}

function pathOf(bits: readonly Bit[]): Path {
  const points = bits.map(({ from, bulge }): PathPoint => ({ x: from.x, y: from.y, bulge }));
  const { x, y } = bits.at(-1)!.to;
  return { closed: false, points: [...points, { x, y, bulge: 0 }] };
}
