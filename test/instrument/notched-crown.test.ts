import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { signedArea } from "../../src/geometry/measure.ts";
import { notchedCrown, onCircle } from "../../src/instrument/notched-crown.ts";

const crown = { centre: { x: 0, y: -40 }, radius: 45 };

/** The closed outline under a crown down to a base. */
function under(points: ReturnType<typeof notchedCrown>) {
  return { closed: true, points: [{ x: -20, y: -20, bulge: 0 }, { x: 20, y: -20, bulge: 0 }, ...points] };
}

/** What a notch takes away, by fine slices: its disc and all that stands over it, under the crown. */
function taken(x: number, y: number, radius: number): number {
  const n = 4000;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const at = x - radius + (2 * radius * (i + 0.5)) / n;
    const bottom = y - Math.sqrt(radius ** 2 - (at - x) ** 2);
    sum += Math.max(0, onCircle(crown, at).y - bottom) * ((2 * radius) / n);
  }
  return sum;
}

const share = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 1000);

describe("a notched crown", () => {
  it("is the plain arc without notches", () => {
    const plain = notchedCrown(crown, 20, -20, []);
    expect(plain).toHaveLength(2);
    const segment = 45 ** 2 * Math.asin(20 / 45) - 20 * Math.sqrt(45 ** 2 - 400);
    const box = 40 * (onCircle(crown, 20).y + 20);
    expect(signedArea(under(plain))).toBeCloseTo(box + segment, 8);
  });

  it("loses what the notches take: sunk, half sunk and shallow ones, on the flat and on the slope", () => {
    const forms = { walls: 0, mixed: 0, shallow: 0 };
    const notch = fc.record({
      x: share(-15000, 15000),
      depth: fc.oneof(share(-300, 300), share(-900, 1500)),
      radius: share(100, 1200),
    });
    const whole = signedArea(under(notchedCrown(crown, 20, -20, [])));
    fc.assert(
      fc.property(notch, ({ x, depth, radius }) => {
        const y = onCircle(crown, x).y - depth * radius;
        const points = notchedCrown(crown, 20, -20, [{ centre: { x, y }, radius }]);
        const walls = [x - radius, x + radius].filter((at) => onCircle(crown, at).y > y).length;
        forms[walls === 2 ? "walls" : walls === 1 ? "mixed" : "shallow"]++;
        for (const { bulge } of points) expect(Math.abs(bulge)).toBeLessThanOrEqual(1 + 1e-12);
        expect(whole - signedArea(under(points))).toBeCloseTo(taken(x, y, radius), 3);
      }),
      { seed: 6, numRuns: 400 },
    );
    for (const count of Object.values(forms)) expect(count).toBeGreaterThan(40);
  });

  it("is left whole by a notch that stands over it", () => {
    const over = { centre: { x: 0, y: 8 }, radius: 0.5 };
    expect(notchedCrown(crown, 20, -20, [over])).toEqual(notchedCrown(crown, 20, -20, []));
  });
});
