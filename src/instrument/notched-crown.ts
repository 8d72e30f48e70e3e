import type { PathPoint } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";

/** A circle, mm. */
export type Circle = { readonly centre: Point; readonly radius: number };

/** A round-bottomed notch for a string: the middle of its bottom's circle and its radius, mm. */
export type Notch = Circle;

/**
 * The points of a crown from its treble end to its bass end, counter-clockwise along its circle, cut by notches; the last
 * point is the bass end, with bulge 0 for whatever follows.
 *
 * Notches are given from treble to bass and must neither touch each other nor the ends. A notch whose middle lies under the
 * crown gets upright walls up to it; one whose middle lies over it cuts the crown where the circles cross, and one that lies
 * wholly over it leaves no mark.
 */
export function notchedCrown(
  crown: Circle,
  treble: number,
  bass: number,
  notches: readonly Notch[],
): PathPoint[] {
  const points: PathPoint[] = [];
  let from = onCircle(crown, treble);
  for (const notch of notches) {
    const cut = cutOf(crown, notch);
    if (cut === undefined) continue;
    points.push(alongCrown(crown, from, cut.right));
    points.push(...cut.down);
    from = cut.left;
  }
  const end = onCircle(crown, bass);
  return [...points, alongCrown(crown, from, end), { ...end, bulge: 0 }];
}

/** The crown's height over some place across it, on its upper half. */
export function onCircle({ centre, radius }: Circle, x: number): Point {
  return { x, y: centre.y + Math.sqrt(radius ** 2 - (x - centre.x) ** 2) };
}

function alongCrown({ centre }: Circle, from: Point, to: Point): PathPoint {
  const angle = (point: Point) => Math.atan2(point.y - centre.y, point.x - centre.x);
  return { ...from, bulge: Math.tan((angle(to) - angle(from)) / 4) };
}

/**
 * The notch takes away its bottom's disc and all that stands over it. On either side the cut meets the crown at the top of an
 * upright wall where the crown is higher than the notch's middle, or else where the circles cross.
 */
function cutOf(crown: Circle, notch: Notch): { right: Point; left: Point; down: PathPoint[] } | undefined {
  const { centre, radius } = notch;
  const crossing = crossings(crown, notch);
  const side = (sign: 1 | -1) => {
    const rim = onCircle(crown, centre.x + sign * radius);
    if (rim.y > centre.y) return { rim, foot: { x: rim.x, y: centre.y } };
    const at = sign === 1 ? crossing?.right : crossing?.left;
    return at === undefined ? undefined : { rim: at, foot: at };
  };
  const [right, left] = [side(1), side(-1)];
  if (right === undefined || left === undefined) return undefined;
  const angle = (point: Point) => Math.atan2(point.y - centre.y, point.x - centre.x);
  const turn = angle(left.foot) - angle(right.foot);
  const bulge = Math.tan((turn > 0 ? turn - 2 * Math.PI : turn) / 4);
  const wall = right.foot === right.rim ? [] : [{ ...right.rim, bulge: 0 }];
  const after = left.foot === left.rim ? [] : [{ ...left.foot, bulge: 0 }];
  return { right: right.rim, left: left.rim, down: [...wall, { ...right.foot, bulge }, ...after] };
}

/** Where two circles cross, the right-hand place first; nothing where they don't. */
function crossings(a: Circle, b: Circle): { right: Point; left: Point } | undefined {
  const [dx, dy] = [b.centre.x - a.centre.x, b.centre.y - a.centre.y];
  const apart = Math.hypot(dx, dy);
  const along = (apart ** 2 + a.radius ** 2 - b.radius ** 2) / (2 * apart);
  const aside = a.radius ** 2 - along ** 2;
  if (!(aside > 0)) return undefined;
  const side = Math.sqrt(aside);
  const place = (sign: number) => ({
    x: a.centre.x + (dx * along + sign * dy * side) / apart,
    y: a.centre.y + (dy * along - sign * dx * side) / apart,
  });
  const [p, q] = [place(1), place(-1)];
  return p.x > q.x ? { right: p, left: q } : { right: q, left: p };
}
