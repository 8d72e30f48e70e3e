import fc from "fast-check";
import type { Path } from "../../../src/geometry/path.ts";

/** A simple closed path round a middle, counter-clockwise, of lines and arcs, some bulging in, some out; mm. */
export const rings: fc.Arbitrary<Path> = fc
  .record({
    middle: fc.record({ x: fc.integer({ min: -300, max: 300 }), y: fc.integer({ min: -300, max: 300 }) }),
    legs: fc.array(
      fc.record({
        out: fc.double({ min: 30, max: 100, noNaN: true }),
        bulge: fc.oneof(fc.constant(0), fc.double({ min: -0.15, max: 0.6, noNaN: true }), fc.constant(0.7)),
      }),
      { minLength: 8, maxLength: 14 },
    ),
  })
  .map(({ middle, legs }) => ({
    closed: true,
    points: legs.map(({ out, bulge }, i) => {
      const angle = (2 * Math.PI * i) / legs.length;
      return { x: middle.x + out * Math.cos(angle), y: middle.y + out * Math.sin(angle), bulge };
    }),
  }));

/** A path flattened: `pieces` chords to each arc (and line, if wanted), all vertices on the path. */
export function flattened(path: Path, pieces: number, lines = false): { x: number; y: number }[] {
  const out: { x: number; y: number }[] = [];
  for (const [i, a] of path.points.entries()) {
    const b = path.points[(i + 1) % path.points.length]!;
    out.push({ x: a.x, y: a.y });
    if (a.bulge === 0 && !lines) continue;
    const half = 2 * Math.atan(a.bulge);
    const [vx, vy] = [b.x - a.x, b.y - a.y];
    for (let k = 1; k < pieces; k++) {
      const t = k / pieces;
      const reach = Math.abs(half) < 1e-9 ? t : Math.sin(half * t) / Math.sin(half);
      const turn = -half * (1 - t);
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      out.push({ x: a.x + reach * (c * vx - s * vy), y: a.y + reach * (s * vx + c * vy) });
    }
  }
  return out;
}
