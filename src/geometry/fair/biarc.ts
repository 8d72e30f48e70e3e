/**
 * Two arcs, tangent to each other where they meet, the joint (mm). `curvature0` and `curvature1` are 1/mm, positive
 * counter-clockwise; `bulge0` and `bulge1` the same two arcs as tan(sweep / 4); `acrossX`, `acrossY` the direction of
 * travel at the joint, of no set length.
 */
export type Biarc = {
  jointX: number;
  jointY: number;
  acrossX: number;
  acrossY: number;
  curvature0: number;
  curvature1: number;
  bulge0: number;
  bulge1: number;
};

/**
 * Writes into `biarc` the biarc from a place with a direction to another, and says whether there is one.
 *
 * `ratio` is the tangent length of the first arc over that of the second. There is none where an arc would sweep half a
 * circle or more, or the two directions face away from the way between. All plain numbers, and one `biarc` written over
 * and over: this is called some ten thousand times for one curve. From the chord of the two tangents' ends, which the
 * joint divides: |v - d0 a - d1 b| = d0 + d1 (Bolton, *Biarc curves*, Computer-Aided Design 7, 1975).
 */
export function biarcBetween(
  px: number,
  py: number,
  ax: number,
  ay: number,
  qx: number,
  qy: number,
  bx: number,
  by: number,
  ratio: number,
  biarc: Biarc,
): boolean {
  const vx = qx - px;
  const vy = qy - py;
  const square = vx * vx + vy * vy;
  const along = ratio * (vx * ax + vy * ay) + vx * bx + vy * by;
  if (!(along > 0)) return false;
  const apart = (ax - bx) * (ax - bx) + (ay - by) * (ay - by);
  const d1 = square / (along + Math.sqrt(along * along + ratio * apart * square));
  const d0 = ratio * d1;
  const sx = px + d0 * ax;
  const sy = py + d0 * ay;
  const rx = qx - d1 * bx;
  const ry = qy - d1 * by;
  const share = d0 / (d0 + d1);
  const jx = sx + share * (rx - sx);
  const jy = sy + share * (ry - sy);
  const ex = jx - px;
  const ey = jy - py;
  const fx = qx - jx;
  const fy = qy - jy;
  const forward0 = ax * ex + ay * ey;
  const forward1 = bx * fx + by * fy;
  if (!(forward0 > 0 && forward1 > 0)) return false;
  const aside0 = ax * ey - ay * ex;
  const aside1 = fx * by - fy * bx;
  const chord0 = ex * ex + ey * ey;
  const chord1 = fx * fx + fy * fy;
  biarc.jointX = jx;
  biarc.jointY = jy;
  biarc.acrossX = rx - sx;
  biarc.acrossY = ry - sy;
  biarc.curvature0 = (2 * aside0) / chord0;
  biarc.curvature1 = (2 * aside1) / chord1;
  biarc.bulge0 = aside0 / (Math.sqrt(chord0) + forward0);
  biarc.bulge1 = aside1 / (Math.sqrt(chord1) + forward1);
  return true;
}

/** A biarc to be written over. */
export function noBiarc(): Biarc {
  return {
    jointX: 0,
    jointY: 0,
    acrossX: 0,
    acrossY: 0,
    curvature0: 0,
    curvature1: 0,
    bulge0: 0,
    bulge1: 0,
  };
}
