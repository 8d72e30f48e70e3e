/**
 * What of a polygon, given by its corners in order, lies where `within` is not negative: its corners there, and where its edges leave and come back
 * (Sutherland and Hodgman). `between` gives the place at a share of the way from one corner to another. Exact for convex polygons; a hollow
 * one may keep edges along the limit.
 */
export function cutPolygon<P>(
  corners: readonly P[],
  within: (corner: P) => number,
  between: (from: P, to: P, share: number) => P,
): P[] {
  const kept: P[] = [];
  let before = corners.at(-1);
  if (before === undefined) return kept;
  let a = within(before);
  for (const corner of corners) {
    const b = within(corner);
    if (a < 0 !== b < 0) kept.push(between(before, corner, a / (a - b)));
    if (b >= 0) kept.push(corner);
    [before, a] = [corner, b];
  }
  return kept;
}
