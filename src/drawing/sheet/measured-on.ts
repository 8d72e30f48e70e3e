import { intersectSegments } from "../../geometry/intersect/intersect-segments.ts";
import type { Path } from "../../geometry/path.ts";
import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { tolerance } from "../../geometry/tolerance.ts";

/** The lowest and the highest place of a path at x; a `RangeError` where it doesn't reach x. */
export function across(path: Path, x: number): readonly [Point, Point] {
  const found = ordinatesAt(segmentsOf(path), x);
  if (found.length === 0) throw new RangeError(`nothing of the outline is at x = ${x}`);
  return [
    { x, y: found[0]! },
    { x, y: found.at(-1)! },
  ];
}

/** The place of a path that is met first from a place on or off it in a direction (radians), past `tolerance.join`. */
export function metFrom(path: Path, from: Point, direction: number): Point {
  const far = 5000;
  const [ux, uy] = [Math.cos(direction), Math.sin(direction)];
  const ray = { kind: "line", from, to: { x: from.x + far * ux, y: from.y + far * uy } } as const;
  const places = segmentsOf(path).flatMap((segment): readonly Point[] => {
    const found = intersectSegments(ray, segment);
    if (found.outcome === "none" || found.outcome === "overlapping") return [];
    return found.outcome === "two" ? found.at : [found.at];
  });
  const away = ({ x, y }: Point) => (x - from.x) * ux + (y - from.y) * uy;
  const next = places.filter((place) => away(place) > tolerance.join).sort((a, b) => away(a) - away(b))[0];
  if (next === undefined) throw new RangeError("the outline isn't met in that direction");
  return next;
}

/**
 * Whether a path's lowest and highest place at a shifted x lie, on paper, where they lie at x: then a dimension's line may stand
 * there without a thin line leading to it. `shift` in mm on paper.
 */
export function stillThere(path: Path, x: number, scale: number) {
  const here = across(path, x);
  return (shift: number): readonly [boolean, boolean] => {
    const found = ordinatesAt(segmentsOf(path), x + shift / scale);
    if (found.length === 0) return [false, false];
    const near = (y: number, other: number) => Math.abs(y - other) * scale < 0.25;
    return [near(here[0].y, found[0]!), near(here[1].y, found.at(-1)!)];
  };
}

/** The upper of the arcs of a path that end at its least or greatest x: its middle and its radius. */
export function cornerAt(
  path: Path,
  end: "least" | "greatest",
): { readonly middle: Point; readonly radius: number } | undefined {
  const xs = path.points.map(({ x }) => x);
  const x = end === "least" ? Math.min(...xs) : Math.max(...xs);
  const corners = segmentsOf(path).flatMap((segment) => {
    if (segment.kind !== "arc") return [];
    const { from, to, centre, radius, start, sweep } = segment;
    if (Math.abs(from.x - x) > tolerance.exact && Math.abs(to.x - x) > tolerance.exact) return [];
    const angle = start + sweep / 2;
    const middle = { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
    return [{ middle, radius }];
  });
  return corners.sort((a, b) => b.middle.y - a.middle.y)[0];
}
