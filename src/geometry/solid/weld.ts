import type { TriangleMesh } from "./triangle-mesh.ts";

/**
 * A mesh with vertices of the same float32 place made one, and triangles that thereby lose their area's corners dropped;
 * vertices that no triangle uses are dropped too. What files and readers of float32 would make of it anyway.
 */
export function weld({ positions, triangles }: TriangleMesh): TriangleMesh {
  const seen = new Map<string, number>();
  const kept: number[] = [];
  const single = Float32Array.from(positions, (value) => value + 0);
  const indexOf = (vertex: number): number => {
    const [x, y, z] = [single[3 * vertex]!, single[3 * vertex + 1]!, single[3 * vertex + 2]!];
    const key = `${x},${y},${z}`;
    const known = seen.get(key);
    if (known !== undefined) return known;
    const index = kept.length / 3;
    seen.set(key, index);
    kept.push(x, y, z);
    return index;
  };
  const out: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [indexOf(triangles[t]!), indexOf(triangles[t + 1]!), indexOf(triangles[t + 2]!)];
    if (a !== b && b !== c && c !== a) out.push(a, b, c);
  }
  return { positions: Float32Array.from(kept), triangles: Uint32Array.from(out) };
}
