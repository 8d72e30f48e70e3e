import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Box, SheetLine, Weight } from "./sheet.ts";

/** A straight line on paper. */
export function stroke(weight: Weight, from: Point, to: Point): SheetLine {
  return { weight, path: polyline([from, to]) };
}

/** An open run of straight lines. */
export function polyline(points: readonly Point[]): Path {
  return { closed: false, points: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

/** An arrowhead's length and its width at the back, mm on paper. */
export const arrowSize = { length: 3, width: 1 } as const;

/** An arrowhead whose tip is at `tip` and that points along `direction` (radians). */
export function arrow(tip: Point, direction: number): SheetLine {
  const { length, width } = arrowSize;
  const [c, s] = [Math.cos(direction), Math.sin(direction)];
  const back = (side: number) => ({
    x: tip.x - length * c - (side * width * s) / 2,
    y: tip.y - length * s + (side * width * c) / 2,
    bulge: 0,
  });
  return { weight: "arrow", path: { closed: true, points: [{ ...tip, bulge: 0 }, back(1), back(-1)] } };
}

/** A crossing of two centre lines, each reaching `reach` to either side of `at`, mm on paper. */
export function cross(at: Point, reach: number): SheetLine[] {
  return [
    stroke("centre", { x: at.x - reach, y: at.y }, { x: at.x + reach, y: at.y }),
    stroke("centre", { x: at.x, y: at.y - reach }, { x: at.x, y: at.y + reach }),
  ];
}

/** The narrow box round an upright or level thin line that must run from one place to another, mm on paper. */
export function corridor(from: Point, to: Point): Box {
  const wide = 1.2;
  return {
    ...{ minX: Math.min(from.x, to.x) - wide, maxX: Math.max(from.x, to.x) + wide },
    ...{ minY: Math.min(from.y, to.y) - wide, maxY: Math.max(from.y, to.y) + wide },
  };
}
