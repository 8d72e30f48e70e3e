import type { Path, PathPoint } from "../path.ts";
import type { Stretch } from "./seen-lines.ts";

type Place = { readonly x: number; readonly y: number };

/** Places nearer than this, mm, are one. */
const same = 1e-3;

/** Stretches joined end to end into paths, each with as few points as keep it within a tenth of `fine` (mm); paths shorter than `fine` are left out. */
export function chained(stretches: readonly Stretch[], fine: number): Path[] {
  const key = (x: number, y: number) => `${Math.round(x / same)},${Math.round(y / same)}`;
  const ends = new Map<string, number[]>();
  const known = new Set<string>();
  const kept = stretches.filter(([x1, y1, x2, y2]) => {
    const [a, b] = [key(x1, y1), key(x2, y2)];
    const both = a < b ? `${a} ${b}` : `${b} ${a}`;
    // Two edges behind each other are seen as one.
    if (a === b || known.has(both)) return false;
    known.add(both);
    return true;
  });
  for (const [i, [x1, y1, x2, y2]] of kept.entries()) {
    for (const end of [key(x1, y1), key(x2, y2)]) ends.set(end, [...(ends.get(end) ?? []), i]);
  }
  const used = new Set<number>();
  const follow = (from: Place): Place[] => {
    const run: Place[] = [];
    for (let at = from; ; ) {
      const here = key(at.x, at.y);
      const next = ends.get(here)?.find((i) => !used.has(i));
      if (next === undefined) return run;
      used.add(next);
      const [x1, y1, x2, y2] = kept[next]!;
      at = key(x1, y1) === here ? { x: x2, y: y2 } : { x: x1, y: y1 };
      run.push(at);
    }
  };
  return kept.flatMap(([x1, y1, x2, y2], i): Path[] => {
    if (used.has(i)) return [];
    used.add(i);
    const [a, b] = [
      { x: x1, y: y1 },
      { x: x2, y: y2 },
    ];
    const run = thinned([...follow(a).reverse(), a, b, ...follow(b)], fine / 10);
    return lengthOf(run) < fine ? [] : [{ closed: false, points: run.map(straight) }];
  });
}

function straight({ x, y }: Place): PathPoint {
  return { x, y, bulge: 0 };
}

function lengthOf(run: readonly Place[]): number {
  return run.slice(1).reduce((sum, { x, y }, i) => sum + Math.hypot(x - run[i]!.x, y - run[i]!.y), 0);
}

/** Without the places that lie within `off` of the straight lines through those that are kept (Ramer, Douglas and Peucker). */
function thinned(run: readonly Place[], off: number): Place[] {
  const kept = new Uint8Array(run.length);
  kept[0] = 1;
  kept[run.length - 1] = 1;
  const parts: [number, number][] = [[0, run.length - 1]];
  for (let part = parts.pop(); part !== undefined; part = parts.pop()) {
    const [from, to] = part;
    let [most, at] = [off, -1];
    for (let i = from + 1; i < to; i++) {
      const away = distance(run[i]!, run[from]!, run[to]!);
      if (away > most) [most, at] = [away, i];
    }
    if (at < 0) continue;
    kept[at] = 1;
    parts.push([from, at], [at, to]);
  }
  return run.filter((_, i) => kept[i] === 1);
}

function distance({ x, y }: Place, a: Place, b: Place): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const share = square > 0 ? Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / square)) : 0;
  return Math.hypot(x - a.x - share * dx, y - a.y - share * dy);
}
