import type { Point } from "../../geometry/point.ts";

/** Places nearer than this along count as one, mm: far under what a printer shows. */
const together = 1e-4;

/**
 * The upper edge of a closed polygon, from its least x to its greatest: what something that comes down on it along y meets first, so that no part of it is
 * caught under another. Where the edge jumps there are two points at one x. Fewer than two points have none.
 */
export function upperEdge(polygon: readonly Point[]): Point[] {
  const edges = polygon.map((to, i) => {
    const from = polygon.at(i - 1)!;
    return from.x <= to.x ? { from, to } : { from: to, to: from };
  });
  const places = [...new Set(polygon.map(({ x }) => x))].sort((a, b) => a - b);
  const apart = places.filter((x, i) => i === 0 || x - places[i - 1]! > together);
  const highest = (x: number, reaches: (edge: { from: Point; to: Point }) => boolean) =>
    Math.max(...edges.filter(reaches).map(({ from, to }) => heightAt(from, to, x)));
  return apart.flatMap((x) => {
    const before = highest(x, ({ from, to }) => from.x < x - together / 2 && to.x >= x - together);
    const after = highest(x, ({ from, to }) => from.x <= x + together && to.x > x + together / 2);
    const heights = [before, after].filter(Number.isFinite);
    const level = heights.length === 2 && Math.abs(before - after) < together;
    return (level ? [before] : heights).map((y) => ({ x, y }));
  });
}

function heightAt(from: Point, to: Point, x: number): number {
  const share = (x - from.x) / (to.x - from.x);
  return from.y + (to.y - from.y) * Math.min(1, Math.max(0, share));
}
