import type { Point } from "./point.ts";

/** A circle, or why there is none: fewer than three points, or all of them on one line. */
export type CircleFit =
  | { readonly kind: "ok"; readonly centre: Point; readonly radius: number }
  | { readonly kind: "too-few" | "collinear" };

/**
 * The circle with the least sum of squared distances from the points to it, centre free; mm.
 *
 * Starts at the algebraic fit (Kåsa, 1976: least squares of x² + y² - 2ax - 2by - c) and refines it by Gauss-Newton on
 * the true distances until the step is under a billionth of the radius, at most fifty times. Three points give the circle
 * through them.
 */
export function fitCircle(points: readonly Point[]): CircleFit {
  if (points.length < 3) return { kind: "too-few" };
  const middle = {
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  };
  const local = points.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
  const size = Math.max(...local.map(({ x, y }) => Math.hypot(x, y)));
  const start = solve3(
    local.map(({ x, y }) => [2 * x, 2 * y, size]),
    local.map(({ x, y }) => x * x + y * y),
  );
  if (start === undefined) return { kind: "collinear" };
  let [a, b] = start;
  let radius = Math.sqrt(Math.max(start[2] * size + a * a + b * b, 0));
  for (let i = 0; i < 50; i++) {
    const far = local.map(({ x, y }) => Math.hypot(x - a, y - b));
    const step = solve3(
      local.map(({ x, y }, k) => [(a - x) / far[k]!, (b - y) / far[k]!, -1]),
      far.map((distance) => radius - distance),
    );
    if (step === undefined) return { kind: "collinear" };
    [a, b, radius] = [a + step[0], b + step[1], radius + step[2]];
    if (Math.hypot(...step) < 1e-9 * radius) break;
  }
  return { kind: "ok", centre: { x: a + middle.x, y: b + middle.y }, radius };
}

/** Least squares for three unknowns by the normal equations; nothing when they say the same thing twice. */
function solve3(rows: readonly number[][], right: readonly number[]): [number, number, number] | undefined {
  const m = [0, 1, 2].map((i) => [
    ...[0, 1, 2].map((k) => rows.reduce((sum, row) => sum + row[i]! * row[k]!, 0)),
    rows.reduce((sum, row, n) => sum + row[i]! * right[n]!, 0),
  ]);
  const scale = Math.max(...m.flatMap((row) => row.slice(0, 3).map(Math.abs)));
  for (let column = 0; column < 3; column++) {
    const pivot = [column, 1, 2]
      .filter((row) => row >= column)
      .sort((p, q) => size(m, q, column) - size(m, p, column))[0]!;
    if (!(size(m, pivot, column) > 1e-12 * scale)) return undefined;
    [m[column], m[pivot]] = [m[pivot]!, m[column]!];
    for (let row = 0; row < 3; row++) {
      if (row === column) continue;
      const factor = m[row]![column]! / m[column]![column]!;
      m[row] = m[row]!.map((value, i) => value - factor * m[column]![i]!);
    }
  }
  return [m[0]![3]! / m[0]![0]!, m[1]![3]! / m[1]![1]!, m[2]![3]! / m[2]![2]!];
}

function size(matrix: readonly number[][], row: number, column: number): number {
  return Math.abs(matrix[row]![column]!);
}
