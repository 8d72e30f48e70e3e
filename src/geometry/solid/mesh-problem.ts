import { meshMeasures } from "./mesh-measures.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";

/** What keeps a surface from bounding a solid. */
export type MeshProblem = "not-finite" | "open-mesh" | "inside-out";

/**
 * What keeps a mesh from bounding a solid; undefined if nothing does.
 *
 * `not-finite`: a coordinate that isn't, or an index that leads nowhere. `open-mesh`: an edge that isn't run exactly once
 * each way, so an opening, a flipped or doubled triangle, a vertex given twice, or no triangle at all. `inside-out`: no
 * positive volume.
 */
export function meshProblem(mesh: TriangleMesh): MeshProblem | undefined {
  const { positions, triangles } = mesh;
  const count = positions.length / 3;
  if (!positions.every(Number.isFinite) || !triangles.every((i) => i < count)) return "not-finite";
  if (triangles.length === 0 || triangles.length % 3 !== 0) return "open-mesh";
  const edges = new Set<number>();
  for (let t = 0; t < triangles.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[t + k]!, triangles[t + ((k + 1) % 3)]!];
      if (a === b || edges.has(a * count + b)) return "open-mesh";
      edges.add(a * count + b);
    }
  }
  for (const edge of edges) {
    if (!edges.has((edge % count) * count + Math.floor(edge / count))) return "open-mesh";
  }
  return meshMeasures(mesh).volume > 0 ? undefined : "inside-out";
}
