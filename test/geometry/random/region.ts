import fc from "fast-check";
import type { Path } from "../../../src/geometry/path.ts";
import type { Region } from "../../../src/geometry/region.ts";
import { reversedPath } from "../../../src/geometry/reversed-path.ts";
import { areaOf } from "./area.ts";
import { flat } from "./flat.ts";
import { outline } from "./outline.ts";

/** A path made so large across and put about a place. */
function placed(path: Path, size: number, x: number, y: number): Path {
  const places = flat(path, 0.1);
  const [xs, ys] = [places.map(([at]) => at), places.map(([, at]) => at)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = size / Math.max(right - left, high - low);
  const points = path.points.map((p) => ({
    x: scale * (p.x - (left + right) / 2) + x,
    y: scale * (p.y - (low + high) / 2) + y,
    bulge: p.bulge,
  }));
  return { closed: path.closed, points };
}

function turned(path: Path, sign: 1 | -1): Path {
  return Math.sign(areaOf([path])) === sign ? path : reversedPath(path);
}

/** Regions with up to six holes and up to two pieces: random outlines, small, in the cells of a frame of cells. */
export const region: fc.Arbitrary<Region> = fc
  .record({
    shapes: fc.array(outline, { minLength: 1, maxLength: 6 }),
    cells: fc.shuffledSubarray([0, 1, 2, 3, 4, 5], { minLength: 6, maxLength: 6 }),
    size: fc.integer({ min: 10, max: 32 }),
    beside: fc.boolean(),
  })
  .map(({ shapes, cells, size, beside }) => {
    const holes = shapes.map((shape, k) => {
      const cell = cells[k]!;
      return turned(placed(shape, size, 34 * (cell % 3), 34 * Math.floor(cell / 3)), -1);
    });
    const frame = [
      [-26, -26, 0],
      [110, -26, 0.2],
      [110, 64, 0],
      [-26, 64, 0],
    ] as const;
    const outer = { closed: true, points: frame.map(([x, y, bulge]) => ({ x, y, bulge })) };
    const whole: Region = [{ outer, holes }];
    return beside ? [...whole, { outer: turned(placed(shapes[0]!, size, -70, 10), 1), holes: [] }] : whole;
  });
