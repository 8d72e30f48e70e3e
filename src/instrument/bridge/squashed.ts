import type { Path, PathPoint } from "../../geometry/path.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentBetween } from "../../geometry/segment.ts";

/**
 * A path whose second coordinates are taken times `factor`, above 0. An arc becomes the arc through its two ends and its
 * middle, so taken: within a ten-thousandth of its size of the ellipse that it is, as long as the factor is as near to 1 as a leaning bridge's.
 */
export function squashed(path: Path, factor: number): Path {
  const lowered = ({ x, y }: Point): Point => ({ x, y: y * factor });
  const points = path.points.map((point, i): PathPoint => {
    const at = lowered(point);
    const next = path.points[(i + 1) % path.points.length]!;
    if (point.bulge === 0) return { ...at, bulge: 0 };
    const middle = lowered(pointOn(segmentBetween(point, next, point.bulge), 0.5));
    return {
      ...at,
      bulge: Math.sign(point.bulge) * Math.tan((Math.PI - angleAt(middle, at, lowered(next))) / 2),
    };
  });
  return { ...path, points };
}

/** The angle under which two points are seen, radians. A chord's angle from its arc is half the arc beyond it. */
function angleAt(from: Point, a: Point, b: Point): number {
  const [p, q] = [a, b].map(({ x, y }) => ({ x: x - from.x, y: y - from.y })) as [Point, Point];
  return Math.atan2(Math.abs(p.x * q.y - p.y * q.x), p.x * q.x + p.y * q.y);
}
