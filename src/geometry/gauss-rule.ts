/** A place on 0..1 and its weight; the weights of a rule add up to 1. */
export type GaussNode = readonly [at: number, weight: number];

/** Gauss's rule of n points on 0..1, exact for polynomials up to degree 2n - 1: found by Newton's method on Legendre's polynomial. */
export function gaussRule(n: number): readonly GaussNode[] {
  return Array.from({ length: n }, (_, i): GaussNode => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let round = 0; round < 8; round++) {
      let [before, value] = [1, x];
      for (let k = 2; k <= n; k++)
        [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
      slope = (n * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    return [(1 + x) / 2, 1 / ((1 - x * x) * slope * slope)];
  });
}
