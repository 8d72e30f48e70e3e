import type { Point } from "../point.ts";

/**
 * The rates of change at the points of the interpolating cubic spline that is twice continuously differentiable.
 *
 * `steps[i]` is the parameter's length from point i to the next (round to the first if closed), all positive. An end
 * takes the rate given, or is free: no second derivative there. Closed needs three points, open two. The conditions are
 * the usual tridiagonal ones (de Boor, *A Practical Guide to Splines*, ch. IV); closed, the corner entries are put back
 * by the formula of Sherman and Morrison.
 */
export function slopesThrough(
  points: readonly Point[],
  steps: readonly number[],
  closed: boolean,
  start?: Point,
  end?: Point,
): Point[] {
  const n = points.length;
  const below: number[] = [];
  const middle: number[] = [];
  const above: number[] = [];
  const right: Point[] = [];
  for (let i = 0; i < n; i++) {
    const before = closed ? (i + n - 1) % n : i - 1;
    if (!closed && (i === 0 || i === n - 1)) {
      const held = i === 0 ? start : end;
      const k = i === 0 ? 0 : n - 2;
      const [a, b] = [points[k]!, points[k + 1]!];
      const scale = 3 / steps[k]!;
      below.push(i === 0 || held ? 0 : 1);
      middle.push(held ? 1 : 2);
      above.push(i !== 0 || held ? 0 : 1);
      right.push(held ?? { x: scale * (b.x - a.x), y: scale * (b.y - a.y) });
      continue;
    }
    const [h, g] = [steps[before]!, steps[i]!];
    const [p, q, r] = [points[before]!, points[i]!, points[(i + 1) % n]!];
    below.push(g);
    middle.push(2 * (h + g));
    above.push(h);
    const [u, v] = [(3 * g) / h, (3 * h) / g];
    right.push({ x: u * (q.x - p.x) + v * (r.x - q.x), y: u * (q.y - p.y) + v * (r.y - q.y) });
  }
  return closed ? solveCyclic(below, middle, above, right) : solve(below, middle, above, right);
}

function solve(below: number[], middle: number[], above: number[], right: Point[]): Point[] {
  const n = middle.length;
  const factor: number[] = [];
  const result: { x: number; y: number }[] = [];
  for (let i = 0; i < n; i++) {
    const pivot = middle[i]! - (i > 0 ? below[i]! * factor[i - 1]! : 0);
    const last = i > 0 ? result[i - 1]! : { x: 0, y: 0 };
    factor.push(above[i]! / pivot);
    result.push({
      x: (right[i]!.x - below[i]! * last.x) / pivot,
      y: (right[i]!.y - below[i]! * last.y) / pivot,
    });
  }
  for (let i = n - 2; i >= 0; i--) {
    result[i]!.x -= factor[i]! * result[i + 1]!.x;
    result[i]!.y -= factor[i]! * result[i + 1]!.y;
  }
  return result;
}

function solveCyclic(below: number[], middle: number[], above: number[], right: Point[]): Point[] {
  const n = middle.length;
  const corner = above[n - 1]!;
  const other = below[0]!;
  const gamma = -middle[0]!;
  const changed = [...middle];
  changed[0] = middle[0]! - gamma;
  changed[n - 1] = middle[n - 1]! - (corner * other) / gamma;
  const plain = solve(below, changed, above, right);
  const turn = right.map((_, i) => ({ x: i === 0 ? gamma : i === n - 1 ? corner : 0, y: 0 }));
  const extra = solve(below, changed, above, turn).map((p) => p.x);
  const divisor = 1 + extra[0]! + (other * extra[n - 1]!) / gamma;
  const fx = (plain[0]!.x + (other * plain[n - 1]!.x) / gamma) / divisor;
  const fy = (plain[0]!.y + (other * plain[n - 1]!.y) / gamma) / divisor;
  return plain.map((p, i) => ({ x: p.x - fx * extra[i]!, y: p.y - fy * extra[i]! }));
}
