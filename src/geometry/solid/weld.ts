import type { TriangleMesh } from "./triangle-mesh.ts";

/**
 * A mesh in float32, without the edges that this leaves no length: their two vertices become one, and the triangles that
 * had such an edge are dropped, as are vertices that no triangle uses.
 *
 * Vertices at one place that no such edge joins stay two: there the surface touches itself at a point or along an edge.
 */
export function weld({ positions, triangles }: TriangleMesh): TriangleMesh {
  const single = Float32Array.from(positions, (value) => value + 0); // never -0
  const same = (a: number, b: number): boolean =>
    single[3 * a] === single[3 * b] &&
    single[3 * a + 1] === single[3 * b + 1] &&
    single[3 * a + 2] === single[3 * b + 2];
  const stands = Uint32Array.from({ length: positions.length / 3 }, (_, i) => i);
  const root = (vertex: number): number => {
    let at = vertex;
    while (stands[at] !== at) {
      stands[at] = stands[stands[at]!]!;
      at = stands[at]!;
    }
    return at;
  };
  for (let t = 0; t < triangles.length; t++) {
    const [a, b] = [triangles[t]!, triangles[t % 3 === 2 ? t - 2 : t + 1]!];
    if (same(a, b)) stands[Math.max(root(a), root(b))] = Math.min(root(a), root(b));
  }
  const index = new Map<number, number>();
  const kept: number[] = [];
  const indexOf = (vertex: number): number => {
    const known = index.get(vertex);
    if (known !== undefined) return known;
    index.set(vertex, index.size);
    kept.push(single[3 * vertex]!, single[3 * vertex + 1]!, single[3 * vertex + 2]!);
    return index.size - 1;
  };
  const out: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [root(triangles[t]!), root(triangles[t + 1]!), root(triangles[t + 2]!)];
    if (a !== b && b !== c && c !== a) out.push(indexOf(a), indexOf(b), indexOf(c));
  }
  return { positions: Float32Array.from(kept), triangles: Uint32Array.from(out) };
}
