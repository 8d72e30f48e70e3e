import type { Edge } from "./edge.ts";
import type { Run } from "./runs.ts";

/** Half of a run: number 2k is run k as it goes, 2k + 1 the same backwards. Its other half is `half ^ 1`. */
export type Half = number;

/** For each junction the halves that leave it, counter-clockwise. */
export type Fans = ReadonlyMap<number, readonly Half[]>;

/** An edge as it leaves a vertex: its direction there, and how far it goes. */
type Leaving = {
  readonly half: Half;
  readonly angle: number;
  readonly chord: number;
  readonly at: AtDistance;
};
type AtDistance = (distance: number) => readonly [number, number];

/**
 * The halves that leave each junction, counter-clockwise. By direction; where two leave in nearly one direction, by
 * which lies to the left of the other farther out, half way along the shorter: edges do not cross between vertices, so
 * it is the same all the way.
 */
export function fansOf(runs: readonly Run[]): Fans {
  const leaving = new Map<number, Leaving[]>();
  const add = (vertex: number, item: Leaving) => {
    const list = leaving.get(vertex);
    if (list === undefined) leaving.set(vertex, [item]);
    else list.push(item);
  };
  runs.forEach((run, k) => {
    if (run.from < 0) return;
    add(run.from, leave(run.edges[0]!, true, 2 * k));
    add(run.to, leave(run.edges.at(-1)!, false, 2 * k + 1));
  });
  const fans = new Map<number, Half[]>();
  for (const [vertex, list] of leaving) fans.set(vertex, ordered(list));
  return fans;
}

/** An edge seen from one of its ends. */
function leave(edge: Edge, forward: boolean, half: Half): Leaving {
  const [px, py, qx, qy] = forward
    ? [edge.ax, edge.ay, edge.bx, edge.by]
    : [edge.bx, edge.by, edge.ax, edge.ay];
  const chord = Math.sqrt((qx - px) ** 2 + (qy - py) ** 2);
  const turn = forward ? edge.turn : -edge.turn;
  const [ex, ey] = [(qx - px) / chord, (qy - py) / chord];
  // The direction at distance s swings from the tangent to the chord: sin(half sweep) = s / 2r.
  const direction = (distance: number): readonly [number, number] => {
    if (turn === 0) return [ex, ey];
    const whole = Math.min(1, chord / (2 * edge.r));
    const part = Math.min(1, distance / (2 * edge.r));
    const sine = turn * (part * Math.sqrt(1 - whole * whole) - whole * Math.sqrt(1 - part * part));
    const cosine = Math.sqrt(Math.max(0, 1 - sine * sine));
    return [ex * cosine - ey * sine, ey * cosine + ex * sine];
  };
  const [tx, ty] = direction(0);
  return { half, angle: Math.atan2(ty, tx), chord, at: direction };
}

function ordered(list: Leaving[]): Half[] {
  list.sort((a, b) => a.angle - b.angle || a.half - b.half);
  const seam = widestGap(list);
  const turned = [...list.slice(seam), ...list.slice(0, seam)];
  for (let i = 1; i < turned.length; i++) {
    for (let j = i; j > 0 && isRightOf(turned[j]!, turned[j - 1]!); j--)
      [turned[j - 1], turned[j]] = [turned[j]!, turned[j - 1]!];
  }
  return turned.map((item) => item.half);
}

/** The place in the sorted list before which the widest empty angle lies: nothing has to be compared across it. */
function widestGap(list: readonly Leaving[]): number {
  let widest = list[0]!.angle + 2 * Math.PI - list.at(-1)!.angle;
  let seam = 0;
  for (let i = 1; i < list.length; i++) {
    const gap = list[i]!.angle - list[i - 1]!.angle;
    if (gap > widest) [widest, seam] = [gap, i];
  }
  return seam;
}

/** Directions nearer than this (radians) are told apart farther out. */
const nearlyOne = 1e-3;

/** Whether a neighbour in the fan, put to the left by its direction, lies to the right in truth. */
function isRightOf(a: Leaving, b: Leaving): boolean {
  const between = Math.abs(a.angle - b.angle);
  if (Math.min(between, 2 * Math.PI - between) > nearlyOne) return false;
  const distance = Math.min(a.chord, b.chord) / 2;
  const [ax, ay] = a.at(distance);
  const [bx, by] = b.at(distance);
  return bx * ay - by * ax < 0;
}
