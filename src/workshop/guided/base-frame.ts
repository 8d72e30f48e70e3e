import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { polygon } from "../../geometry/polygon.ts";

/** Axes on a fixture's base: along the joined edge from its first end, and away from the work; both of unit length. */
export type BaseFrame = { readonly origin: Point; readonly along: Point; readonly away: Point };

/** The frame on the joined edge from one end to the other, with the work on the other side of it than `inside`. */
export function baseFrame(from: Point, to: Point, inside: Point): BaseFrame {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const left = along.x * (inside.y - from.y) - along.y * (inside.x - from.x) > 0;
  const away = left ? { x: along.y, y: 0 - along.x } : { x: 0 - along.y, y: along.x };
  return { origin: from, along, away };
}

/** The place at `s` along and `h` away, mm. */
export function onBase({ origin, along, away }: BaseFrame, s: number, h: number): Point {
  return { x: origin.x + along.x * s + away.x * h, y: origin.y + along.y * s + away.y * h };
}

/** The rectangle between two places of the frame. */
export function boxOnBase(frame: BaseFrame, s1: number, h1: number, s2: number, h2: number): Path {
  return polygon([
    onBase(frame, s1, h1),
    onBase(frame, s2, h1),
    onBase(frame, s2, h2),
    onBase(frame, s1, h2),
  ]);
}

/** Where a place lies along the frame and away, mm. */
export function inBase({ origin, along, away }: BaseFrame, { x, y }: Point): { s: number; h: number } {
  const [dx, dy] = [x - origin.x, y - origin.y];
  return { s: dx * along.x + dy * along.y, h: dx * away.x + dy * away.y };
}
