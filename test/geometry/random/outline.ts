import fc from "fast-check";
import type { Path } from "../../../src/geometry/path.ts";
import { crosses } from "./crosses.ts";
import { flat } from "./flat.ts";

/** A star round the origin: corners at random distances, joined by lines and arcs of either curve. */
const star: fc.Arbitrary<Path> = fc
  .array(
    fc.record({ gap: fc.integer({ min: 2, max: 9 }), far: fc.integer({ min: 8, max: 60 }), bulge: bulge() }),
    {
      minLength: 3,
      maxLength: 9,
    },
  )
  .map((corners) => {
    const whole = corners.reduce((sum, { gap }) => sum + gap, 0);
    let passed = 0;
    const points = corners.map(({ gap, far, bulge }) => {
      passed += gap;
      const angle = (2 * Math.PI * passed) / whole;
      return { x: far * Math.cos(angle), y: far * Math.sin(angle), bulge };
    });
    return { closed: true, points };
  });

/** Half of the segments are lines, half arcs; a few of the arcs are half circles. */
function bulge(): fc.Arbitrary<number> {
  return fc.oneof(
    { weight: 5, arbitrary: fc.constant(0) },
    { weight: 5, arbitrary: fc.integer({ min: -60, max: 80 }).map((n) => n / 100) },
    { weight: 1, arbitrary: fc.constantFrom(1, -1, Math.SQRT2 - 1, 1 - Math.SQRT2) },
  );
}

/**
 * A run of steps there and back on a lattice of 10 mm, as a band 10 mm wide that bends at right angles, its corners
 * square, cut or rounded by tangent arcs: full of equal widths and exact coincidences.
 */
const band: fc.Arbitrary<Path> = fc
  .record({
    heights: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 2, maxLength: 6 }),
    depths: fc.array(fc.integer({ min: -2, max: 0 }), { minLength: 6, maxLength: 6 }),
    radius: fc.constantFrom(0, 0, 2, 2.5, 5),
    bulge: fc.constantFrom(Math.SQRT2 - 1, 0, 1 - Math.SQRT2),
  })
  .map(({ heights, depths, radius, bulge }) => {
    const top = heights.flatMap((height, k) => [
      [10 * k, 10 * height],
      [10 * k + 10, 10 * height],
    ]) as [number, number][];
    const bottom = heights.flatMap((_, k) => [
      [10 * k, 10 * depths[k]!],
      [10 * k + 10, 10 * depths[k]!],
    ]) as [number, number][];
    return cornered([...bottom, ...top.reverse()], radius, bulge);
  });

/** Wide and narrow places in turn along a line, upper and lower edge by themselves: an inset parts it. */
const beads: fc.Arbitrary<Path> = fc
  .array(
    fc.record({
      long: fc.integer({ min: 12, max: 30 }),
      up: fc.integer({ min: 1, max: 8 }),
      down: fc.integer({ min: 1, max: 8 }),
      bulges: fc.tuple(bulge(), bulge()),
    }),
    { minLength: 3, maxLength: 6 },
  )
  .map((parts) => {
    let x = 0;
    const upper = parts.map(({ long, up, bulges }, k) => {
      x += long;
      return { x, y: k % 2 === 0 ? 2 * up + 6 : up, bulge: -bulges[0] / 2 };
    });
    const lower = parts.map(({ down, bulges }, k) => {
      return { x: upper[k]!.x, y: k % 2 === 0 ? -2 * down - 6 : -down, bulge: bulges[1] / 2 };
    });
    return { closed: true, points: [...lower, ...upper.reverse()] };
  });

/** A ring that is not quite closed, inner and outer edge by themselves: an outset closes it round a hole. */
const horseshoe: fc.Arbitrary<Path> = fc
  .record({
    inner: fc.array(fc.integer({ min: 6, max: 20 }), { minLength: 6, maxLength: 6 }),
    outer: fc.array(fc.integer({ min: 22, max: 40 }), { minLength: 6, maxLength: 6 }),
    bulges: fc.array(bulge(), { minLength: 12, maxLength: 12 }),
    opening: fc.integer({ min: 6, max: 60 }),
  })
  .map(({ inner, outer, bulges, opening }) => {
    const angleOf = (k: number) => ((opening / 2 + ((360 - opening) * k) / 5) * Math.PI) / 180;
    const at = (far: number, k: number, bulge: number) => {
      return { x: far * Math.cos(angleOf(k)), y: far * Math.sin(angleOf(k)), bulge };
    };
    const outside = outer.map((far, k) => at(far, k, k === 5 ? 0 : bulges[k]! / 2));
    const inside = inner.map((far, k) => at(far, k, k === 0 ? 0 : bulges[k + 6]! / 2));
    return { closed: true, points: [...outside, ...inside.reverse()] };
  });

/** A polygon without its repeated and straight-on corners, each other corner cut back by `radius` and bulged. */
function cornered(polygon: readonly [number, number][], radius: number, bulge: number): Path {
  const corners = cornersOf(polygon);
  if (radius === 0) return { closed: true, points: corners.map(([x, y]) => ({ x, y, bulge: 0 })) };
  const points = corners.flatMap((p, i) => {
    const [before, after] = [corners.at(i - 1)!, corners[(i + 1) % corners.length]!];
    const turn = Math.sign((p[0] - before[0]) * (after[1] - p[1]) - (p[1] - before[1]) * (after[0] - p[0]));
    const back = toward(p, before, radius);
    const on = toward(p, after, radius);
    return [
      { x: back[0], y: back[1], bulge: turn * bulge },
      { x: on[0], y: on[1], bulge: 0 },
    ];
  });
  return { closed: true, points: points.filter((p, i) => !samePlace(p, points[(i + 1) % points.length]!)) };
}

function samePlace(a: { x: number; y: number }, b: { x: number; y: number }): boolean {
  return a.x === b.x && a.y === b.y;
}

/** The corners of a polygon after repeated and straight-on points are taken out, again and again. */
function cornersOf(polygon: readonly [number, number][]): [number, number][] {
  let left = [...polygon];
  for (;;) {
    const kept = left.filter((p, i) => {
      const [before, after] = [left.at(i - 1)!, left[(i + 1) % left.length]!];
      return (p[0] - before[0]) * (after[1] - p[1]) !== (p[1] - before[1]) * (after[0] - p[0]);
    });
    if (kept.length === left.length) return kept;
    left = kept;
  }
}

function toward(
  from: readonly [number, number],
  to: readonly [number, number],
  by: number,
): [number, number] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [from[0] + ((to[0] - from[0]) * by) / length, from[1] + ((to[1] - from[1]) * by) / length];
}

/**
 * Keeps those that do not cross themselves, seen on a flattening at 0.01 mm: where two arcs cross by less than that,
 * `crossesFinely` tells.
 */
function sound(paths: fc.Arbitrary<Path>): fc.Arbitrary<Path> {
  return paths.filter((path) => path.points.length > 1 && !foldsBack(path) && !crosses(flat(path, 0.01)));
}

/** A distance between two ends, mm; quarters as often as any number, so that exact coincidences are met. */
function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.oneof(
    fc.integer({ min: 4 * min, max: 4 * max }).map((n) => n / 4),
    fc.double({ min, max, noNaN: true }),
  );
}

/** An outline of lines and arcs, 20 to 120 mm across, of either winding, and a distance to offset it by. */
export type Case = { readonly path: Path; readonly by: number };

/** Random outlines with distances such that many part, vanish or close round a hole. */
export const offsetCase: fc.Arbitrary<Case> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ path: sound(star), by: between(-40, 15) }) },
  { weight: 3, arbitrary: fc.record({ path: sound(band), by: between(-12, 12) }) },
  { weight: 4, arbitrary: fc.record({ path: sound(beads), by: between(-18, -1) }) },
  { weight: 3, arbitrary: fc.record({ path: sound(horseshoe), by: between(1, 12) }) },
);

/** Random outlines by themselves. */
export const outline: fc.Arbitrary<Path> = offsetCase.map(({ path }) => path);

/** Whether two neighbours leave their corner within 2 degrees of one another: a flattening cannot tell if they cross. */
function foldsBack({ points }: Path): boolean {
  return points.some((from, i) => {
    const to = points[(i + 1) % points.length]!;
    const after = points[(i + 2) % points.length]!;
    const arriving = Math.atan2(to.y - from.y, to.x - from.x) + 2 * Math.atan(from.bulge);
    const leaving = Math.atan2(after.y - to.y, after.x - to.x) - 2 * Math.atan(to.bulge);
    return Math.cos(leaving - arriving) < Math.cos((178 * Math.PI) / 180);
  });
}

/** Whether a path has a corner or arc that is hollow from inside. */
export function isHollow(path: Path): boolean {
  const places = flat(path, 0.05);
  let [left, right] = [0, 0];
  places.forEach((p, i) => {
    const [before, after] = [places.at(i - 1)!, places[(i + 1) % places.length]!];
    const cross = (p[0] - before[0]) * (after[1] - p[1]) - (p[1] - before[1]) * (after[0] - p[0]);
    if (cross > 1e-6) left++;
    if (cross < -1e-6) right++;
  });
  return left > 0 && right > 0;
}

/** Whether an outline crosses itself as seen on a flattening at 0.0001 mm. */
export function crossesFinely(path: Path): boolean {
  return crosses(flat(path, 0.0001));
}
