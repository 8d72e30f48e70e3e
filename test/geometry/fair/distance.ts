import type { Path } from "../../../src/geometry/path.ts";

type Place = { readonly x: number; readonly y: number };
type Piece = { a: Place; b: Place; centre?: Place; radius: number; bulge: number };

/** The pieces of a path, worked out from the DXF standard's own wording and from nothing that is tested here. */
function pieces(path: Path): Piece[] {
  const count = path.closed ? path.points.length : path.points.length - 1;
  const out: Piece[] = [];
  for (let i = 0; i < count; i++) {
    const a = path.points[i]!;
    const b = path.points[(i + 1) % path.points.length]!;
    if (a.bulge === 0) {
      out.push({ a, b, radius: 0, bulge: 0 });
      continue;
    }
    const angle = 4 * Math.atan(a.bulge);
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const radius = chord / 2 / Math.sin(angle / 2);
    const toCentre = Math.atan2(b.y - a.y, b.x - a.x) + Math.PI / 2 - angle / 2;
    const centre = { x: a.x + radius * Math.cos(toCentre), y: a.y + radius * Math.sin(toCentre) };
    out.push({ a, b, centre, radius: Math.abs(radius), bulge: a.bulge });
  }
  return out;
}

/** A function that gives the least distance of a place from a path, mm. */
export function distanceTo(path: Path): (place: Place) => number {
  const all = pieces(path);
  return (place) => {
    let least = Number.POSITIVE_INFINITY;
    for (const piece of all) least = Math.min(least, pieceDistance(piece, place));
    return least;
  };
}

function pieceDistance({ a, b, centre, radius, bulge }: Piece, p: Place): number {
  const ends = Math.min(Math.hypot(p.x - a.x, p.y - a.y), Math.hypot(p.x - b.x, p.y - b.y));
  const [vx, vy] = [b.x - a.x, b.y - a.y];
  if (!centre) {
    const t = ((p.x - a.x) * vx + (p.y - a.y) * vy) / (vx * vx + vy * vy);
    if (t < 0 || t > 1) return ends;
    return Math.hypot(p.x - a.x - t * vx, p.y - a.y - t * vy);
  }
  const turned = (q: Place) => Math.atan2(q.y - centre.y, q.x - centre.x);
  const around = (from: number, to: number) => {
    const angle = (to - from) * Math.sign(bulge);
    return angle - 2 * Math.PI * Math.floor(angle / (2 * Math.PI));
  };
  const inside = around(turned(a), turned(p)) <= around(turned(a), turned(b));
  return inside ? Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - radius) : ends;
}

/** The greatest angle (degrees) between the directions in which one piece arrives and the next leaves. */
export function greatestKink(path: Path): number {
  const all = pieces(path).map(({ a, b, bulge }) => {
    const chord = Math.atan2(b.y - a.y, b.x - a.x);
    const half = 2 * Math.atan(bulge);
    return { leaves: chord - half, arrives: chord + half };
  });
  let worst = 0;
  for (let i = path.closed ? 0 : 1; i < all.length; i++) {
    const angle = all[i]!.leaves - all.at(i - 1)!.arrives;
    worst = Math.max(worst, Math.abs(angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))));
  }
  return (worst * 180) / Math.PI;
}
