import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import type { Path } from "../../../src/geometry/path.ts";
import type { Point } from "../../../src/geometry/point.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import type { Outline } from "../../../src/geometry/solid/solid.ts";
import { textStrokes } from "../../../src/geometry/text-strokes.ts";
import { raisedText } from "../../../src/workshop/gauges/raised-text.ts";
import { letteredBelow, pieceLines } from "../../../src/workshop/jigs/lettered.ts";
import { hits } from "../../ray.ts";
import { box, meshed } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** What lies within `radius` of each straight piece of a stroke, its ends half hexagons: another hand's letters. */
function rounded({ points }: Path, radius: number): Outline[] {
  return points.slice(1).map((to, k) => {
    const from = points[k]!;
    const way = Math.atan2(to.y - from.y, to.x - from.x);
    const end = (place: Point, turned: number) =>
      [-90, -30, 30, 90].map((corner) => {
        const angle = way + turned + (corner * Math.PI) / 180;
        const [x, y] = [radius * Math.cos(angle), radius * Math.sin(angle)];
        return { x: place.x + x, y: place.y + y, bulge: 0 };
      });
    return { outer: { closed: true, points: [...end(to, 0), ...end(from, Math.PI)] }, holes: [] };
  });
}

describe("letters whose strokes are bands", () => {
  it("cover their strokes, of every letter of ASCII, and little more than strokes with rounded ends", () => {
    const size = { height: 4, stroke: 0.8, raised: 0.6 };
    let looked = 0;
    for (let code = 33; code < 127; code++) {
      const letter = String.fromCharCode(code);
      const { strokes, width } = textStrokes(letter, size.height);
      if (strokes.length === 0) continue;
      const bands = meshed(kernel, raisedText({ lines: [letter], ...size }, 0, 0, 0));
      const outlines = strokes.flatMap((stroke) => rounded(stroke, size.stroke / 2));
      const round = meshed(kernel, { kind: "extrude", outlines, height: 1.5 * size.raised });
      const [more, less] = [bands, round].map((mesh) => meshMeasures(mesh).volume);
      expect(more! / less!, letter).toBeGreaterThan(0.98);
      expect(more! / less!, letter).toBeLessThan(1.35);
      for (const { points } of strokes) {
        for (const { x, y } of points) {
          const at = [x - width / 2 + 1e-4, y - size.height + 2e-4, -5] as const;
          expect(hits(bands, at, [0, 0, 1]).length, letter).toBeGreaterThan(0);
          looked++;
        }
      }
    }
    expect(looked).toBeGreaterThan(500);
  });
});

describe("letters sunk into the face that a jig is printed on", () => {
  it("are read from below: an L has its foot on the side that is right from there", () => {
    const jig = meshed(kernel, letteredBelow(box([-10, -10, 0], [10, 10, 5]), { lines: ["L"], x: 2, y: 3 }));
    const deepAt = (x: number, y: number) => hits(jig, [x, y, -5], [0, 0, 1])[0]! - 5;
    const foot = Array.from({ length: 61 }, (_, i) => -1 + i * 0.1).filter((x) => deepAt(x, -1) > 0.3);
    const stem = Array.from({ length: 61 }, (_, i) => -1 + i * 0.1).filter((x) => deepAt(x, 1.5) > 0.3);
    expect(stem.length).toBeGreaterThan(3);
    expect(foot.length).toBeGreaterThan(2 * stem.length);
    // Seen from below with y up, right is where x falls: the foot runs on from the stem to there.
    expect(Math.max(...stem)).toBeCloseTo(Math.max(...foot), 0);
    expect(Math.min(...foot)).toBeLessThan(Math.min(...stem) - 1);
    expect(deepAt(stem[1]!, 1.5)).toBeCloseTo(0.6, 3);
  });
});

describe("what a piece is lettered beside its name", () => {
  it("is which one it is, where there are several", () => {
    expect(pieceLines(["A", "B"], { number: 1, of: 1 })).toEqual(["A", "B"]);
    expect(pieceLines(["A", "B"], { number: 2, of: 3 })).toEqual(["A", "B 2/3"]);
  });
});
