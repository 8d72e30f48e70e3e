import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jointCut } from "../../../src/instrument/wing/angles.ts";
import { jointSide, type WingAngles, wingFrame } from "../../../src/instrument/wing/frame.ts";
import { sides } from "../../../src/order/side.ts";

type Matrix = readonly (readonly [number, number, number])[];
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const product = (a: Matrix, b: Matrix) =>
  a.map((row) =>
    [0, 1, 2].map((j) => row[0]! * b[0]![j]! + row[1]! * b[1]![j]! + row[2]! * b[2]![j]!),
  ) as unknown as Matrix;
const aboutZ = (t: number): Matrix => [
  [Math.cos(t), -Math.sin(t), 0],
  [Math.sin(t), Math.cos(t), 0],
  [0, 0, 1],
];
const aboutY = (t: number): Matrix => [
  [Math.cos(t), 0, Math.sin(t)],
  [0, 1, 0],
  [-Math.sin(t), 0, Math.cos(t)],
];
const aboutX = (t: number): Matrix => [
  [1, 0, 0],
  [0, Math.cos(t), -Math.sin(t)],
  [0, Math.sin(t), Math.cos(t)],
];

/**
 * The two angles by matrices, and by what a rule and a protractor would find: the joint line is where the wing's front meets the core's side,
 * the bevel what the front leans from square to it.
 */
function byMatrices(s: 1 | -1, { splay, cant, rake }: WingAngles, taper: number) {
  const t = s * radians(taper);
  // The joint line is the x' axis turned by the taper, so turning about it is a turn about x' between two turns about z'.
  const aboutJoint = product(product(aboutZ(t), aboutX(-s * radians(cant))), aboutZ(-t));
  const turn = product(product(aboutY(-radians(rake)), aboutJoint), aboutZ(s * radians(splay)));
  const column = (j: number) => turn.map((row) => row[j]!) as [number, number, number];
  const [u, v, w] = [column(0), column(1), column(2)];
  const normal = [-s * Math.sin(t), s * Math.cos(t), 0] as const;
  const scalar = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
  // In the wing's own axes the core's side has this normal; the front's joint line is square to its first two parts.
  const inWing = [scalar(normal, u), scalar(normal, v), scalar(normal, w)] as const;
  let line = [inWing[1], -inWing[0]];
  if (scalar([line[0]!, line[1]!], [u[0], v[0]]) < 0) line = [-line[0]!, -line[1]!];
  return {
    bevel: (Math.asin(inWing[2]) * 180) / Math.PI,
    // From the joint line round to u, as seen from the front on the treble side.
    mitre: (s * -Math.atan2(line[1]!, line[0]!) * 180) / Math.PI,
  };
}

function cutOf(side: (typeof sides)[number], angles: WingAngles, taper: number, slope = 0) {
  const joint = jointSide(side, taper, slope);
  return jointCut(side, wingFrame(side, angles, joint, { x: 165, y: 23, z: -5 }), joint);
}

describe("a wing's joint edge", () => {
  it.each(sides)("has the bevel and the mitre of the case worked out by hand, %s", (side) => {
    const { bevel, mitre } = cutOf(side, { splay: 4, cant: 12, rake: 3 }, 1.5);
    expect(bevel).toBeCloseTo(12.078495, 6);
    expect(mitre).toBeCloseTo(2.502101, 6);
  });

  it("of a thousand random wings on tapered cores is what matrices give, within 1e-9", () => {
    let tapered = 0;
    // Evenly spread: doubles would crowd round zero.
    const angle = (most: number) =>
      fc.integer({ min: -most * 1e6, max: most * 1e6 }).map((millionths) => millionths / 1e6);
    fc.assert(
      fc.property(
        fc.constantFrom(...sides),
        angle(60),
        angle(60),
        angle(60),
        angle(5),
        (side, splay, cant, rake, taper) => {
          if (Math.abs(taper) > 0.5) tapered++;
          const cut = cutOf(side, { splay, cant, rake }, taper);
          const other = byMatrices(side === "treble" ? 1 : -1, { splay, cant, rake }, taper);
          expect(Math.abs(cut.bevel - other.bevel)).toBeLessThan(1e-9);
          expect(Math.abs(cut.mitre - other.mitre)).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 1000, seed: 6 },
    );
    expect(tapered).toBeGreaterThan(500);
  });

  it("on a parallel core has the cant for its bevel and the splay for its mitre, whatever the rake", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sides),
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: -20, max: 20, noNaN: true }),
        (side, splay, cant, rake) => {
          const { bevel, mitre } = cutOf(side, { splay, cant, rake }, 0);
          expect(bevel).toBeCloseTo(cant, 9);
          expect(mitre).toBeCloseTo(splay, 9);
        },
      ),
    );
  });
});
