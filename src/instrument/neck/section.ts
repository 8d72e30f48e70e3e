import { biarcBetween, noBiarc } from "../../geometry/fair/biarc.ts";
import { mirrored } from "../../geometry/mirror.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";
import { reversedPath } from "../../geometry/reversed-path.ts";
import { tolerance } from "../../geometry/tolerance.ts";

/**
 * A section of the neck square to x: half its width and its depth, mm; `fullness` from 0, half an ellipse, towards 1, its
 * box; `square` from 0, that D, to 1, the box itself, between which the carving runs out.
 */
export type SectionForm = {
  readonly half: number;
  readonly depth: number;
  readonly fullness: number;
  readonly square: number;
};

type Direction = readonly [number, number];

/** A pinned place of the treble half, and the directions in which its outline arrives and leaves on the way down. */
type Pinned = {
  readonly x: number;
  readonly y: number;
  readonly arrive: Direction;
  readonly leave: Direction;
};

/** Where the outline is pinned: degrees from the board's edge down to the middle of the back. The box's corner is one. */
const turns = [0, 22.5, 45, 67.5, 90];

/**
 * The outline of a section: y to the treble side, z out of the front with 0 at its flat top; counter-clockwise from the
 * middle of the back. Always as many points, so that sections can be lofted; arcs run on tangent but at the top's two ends
 * and, where the D runs out, at the corners that come up.
 *
 * The D is pinned to a superellipse, |y/half|^n + |z/depth|^n = 1 (Lamé), with the n that makes it reach `fullness` of the
 * way from half an ellipse to its box, along the box's diagonal; between, it strays from it by some hundredths of a mm. `clearance` (mm) moves its back and sides outward.
 */
export function sectionPath(form: SectionForm, clearance = 0): Path {
  const treble = trebleSide(form, clearance);
  const up = reversedPath(treble).points;
  const down = reversedPath(mirrored(treble, "x")).points;
  return { closed: true, points: [...up, ...down.slice(0, -1)] };
}

/** A section's treble half alone: open, from the top's treble end down its side to the middle of the back. */
export function trebleSide(form: SectionForm, clearance = 0): Path {
  const pinned = turns.map((turn) => pinnedAt(form, turn, clearance));
  const back = pinned.at(-1)!;
  const points = [
    ...pinned.slice(1).flatMap((to, i) => legBetween(pinned[i]!, to)),
    { x: back.x, y: back.y, bulge: 0 },
  ];
  return { closed: false, points };
}

function pinnedAt({ half, depth, fullness, square }: SectionForm, turn: number, clearance: number): Pinned {
  const angle = (turn * Math.PI) / 180;
  // Exact on the axes, where a sine or a cosine isn't.
  const [c, s] = turn === 0 ? [1, 0] : turn === 90 ? [0, 1] : [Math.cos(angle), Math.sin(angle)];
  const round = roundRadius(c, s, fullness);
  const box = 1 / Math.max(c, s);
  const radius = round.radius + square * (box - round.radius);
  const directionFor = (boxSlope: number): Direction => {
    const slope = round.slope + square * (boxSlope - round.slope);
    const [dx, dy] = [half * (slope * c - radius * s), -depth * (slope * s + radius * c)];
    const size = Math.hypot(dx, dy);
    return [dx / size, dy / size];
  };
  const arrive = directionFor(turn <= 45 ? s / (c * c) : -c / (s * s));
  const leave = directionFor(turn < 45 ? s / (c * c) : -c / (s * s));
  const [ax, ay] = [arrive[0] + leave[0], arrive[1] + leave[1]];
  // Outward is to the left of the way down; both sides of a corner move by the clearance.
  const out = (2 * clearance) / (ax * ax + ay * ay);
  return { x: half * radius * c - ay * out, y: -depth * radius * s + ax * out, arrive, leave };
}

/** The D's radius in a box of unit half-width and depth, and how it changes with the angle, in the direction (c, s). */
function roundRadius(c: number, s: number, fullness: number): { radius: number; slope: number } {
  const n = -Math.LN2 / Math.log(Math.SQRT1_2 + fullness * (1 - Math.SQRT1_2));
  // Not the language's own power, which differs in its last bit from one version to the next.
  const power = (base: number, by: number) => (base === 0 ? 0 : Math.exp(by * Math.log(base)));
  const sum = power(c, n) + power(s, n);
  const radius = power(sum, -1 / n);
  return { radius, slope: (-radius * (c * power(s, n - 1) - s * power(c, n - 1))) / sum };
}

/**
 * The two arcs from one pinned place to the next, by the points that they leave from. Their tangents' lengths are in the ratio
 * of the two ways to where the end directions meet, so that both arcs turn the same way: the outline has no hollow.
 */
function legBetween(from: Pinned, to: Pinned): PathPoint[] {
  const [vx, vy] = [to.x - from.x, to.y - from.y];
  const [atStart, atEnd] = [
    Math.abs(from.leave[0] * vy - from.leave[1] * vx),
    Math.abs(vx * to.arrive[1] - vy * to.arrive[0]),
  ];
  const straight = Math.max(atStart, atEnd) < tolerance.exact;
  const ratio = straight ? 1 : Math.min(50, Math.max(1 / 50, atEnd / atStart));
  const biarc = noBiarc();
  if (!biarcBetween(from.x, from.y, ...from.leave, to.x, to.y, ...to.arrive, ratio, biarc))
    throw new RangeError("a section of the neck has no outline");
  return [
    { x: from.x, y: from.y, bulge: straight ? 0 : biarc.bulge0 },
    { x: biarc.jointX, y: biarc.jointY, bulge: straight ? 0 : biarc.bulge1 },
  ];
}
