import type { Point } from "../point.ts";
import { slopesThrough } from "./slopes.ts";
import type { Station } from "./station.ts";

/**
 * A piece of a fair curve without a corner: a cubic spline. Piece i runs from station i to the next over `steps[i]` of
 * its parameter (mm, close to its length), with the rates of change `slopes` at the stations. The station list of a
 * closed span names its first station once. `held` says of both ends whether a direction was asked for.
 */
export type FairSpan = {
  readonly closed: boolean;
  readonly stations: readonly Station[];
  readonly steps: readonly number[];
  readonly slopes: readonly Point[];
  readonly held: readonly [boolean, boolean];
};

/** How often the parameter is brought nearer to the length of the curve. */
const ROUNDS = 3;

/**
 * The cubic spline through two or more stations (three if closed), no two following ones at the same place.
 *
 * The parameter starts as the chord length and is then replaced, a few times, by the length of the spline found so far:
 * with unit speed the spline's bending measure, the integral of its second derivative squared, is that of a thin batten.
 */
export function fairSpan(stations: readonly Station[], closed: boolean): FairSpan {
  const count = closed ? stations.length : stations.length - 1;
  const first = stations[0]!;
  const last = stations.at(-1)!;
  const leave = closed || first.leave === undefined ? undefined : direction(first.leave);
  const arrive = closed || last.arrive === undefined ? undefined : direction(last.arrive);
  let steps: number[] = [];
  for (let i = 0; i < count; i++) {
    const next = stations[(i + 1) % stations.length]!;
    steps.push(Math.hypot(next.x - stations[i]!.x, next.y - stations[i]!.y));
  }
  let slopes = slopesThrough(stations, steps, closed, leave, arrive);
  for (let round = 0; round < ROUNDS; round++) {
    steps = lengths(stations, steps, slopes);
    slopes = slopesThrough(stations, steps, closed, leave, arrive);
  }
  return { closed, stations, steps, slopes, held: [leave !== undefined, arrive !== undefined] };
}

function direction(degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** Four-point Gauss rule on 0..1: places and weights. */
const GAUSS = [
  [0.06943184420297371, 0.17392742256872692],
  [0.33000947820757187, 0.32607257743127305],
  [0.6699905217924281, 0.32607257743127305],
  [0.9305681557970262, 0.17392742256872692],
] as const;

function lengths(points: readonly Point[], steps: readonly number[], slopes: readonly Point[]): number[] {
  return steps.map((h, i) => {
    const j = (i + 1) % points.length;
    let sum = 0;
    for (const [t, weight] of GAUSS) {
      const a = (6 * t * (1 - t)) / h;
      const b = (1 - t) * (1 - 3 * t);
      const c = t * (3 * t - 2);
      const vx = a * (points[j]!.x - points[i]!.x) + b * slopes[i]!.x + c * slopes[j]!.x;
      const vy = a * (points[j]!.y - points[i]!.y) + b * slopes[i]!.y + c * slopes[j]!.y;
      sum += weight * Math.hypot(vx, vy);
    }
    return sum * h;
  });
}
