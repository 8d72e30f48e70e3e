/**
 * How far (mm, positive to the left) a place stands from the circle of an arc, without loss where it is nearly straight.
 *
 * (gx, gy) is the place as seen from a point of the arc, (tx, ty) the unit direction in which the arc leaves that point,
 * `curvature` its turning (1/mm, positive counter-clockwise). Beyond the centre the distance is that to the near side.
 */
export function offArc(gx: number, gy: number, tx: number, ty: number, curvature: number): number {
  const f = tx * gy - ty * gx - (curvature * (gx * gx + gy * gy)) / 2;
  return (2 * f) / (1 + Math.sqrt(Math.max(0, 1 - 2 * curvature * f)));
}
