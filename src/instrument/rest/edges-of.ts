import { facet } from "../../geometry/facet.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Straight } from "../../geometry/solid/segments-apart.ts";

/** How far the facets of an outline may stray, mm: far less than any wood that is asked for. */
const chord = 0.05;

/** The corners of a path's facets, mm. */
export function cornersOf(path: Path): readonly Point[] {
  return facet(path, chord).points;
}

/** A path's facets as straight pieces in the plane z = 0, mm. */
export function edgesOf(path: Path): Straight[] {
  const corners = cornersOf(path).map(({ x, y }) => ({ x, y, z: 0 }));
  const ends = path.closed ? [...corners.slice(1), corners[0]!] : corners.slice(1);
  return ends.map((to, i) => ({ from: corners[i]!, to }));
}
