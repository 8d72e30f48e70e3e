import type { TriangleMesh } from "../solid/triangle-mesh.ts";

/** An edge of a closed mesh: its two vertices, the two triangles beside it, and whether the surface has a corner there. */
export type MeshEdge = {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  readonly sharp: boolean;
};

/** A mesh with its triangles' normals and those of its edges that can ever be drawn. */
export type Edged = {
  readonly mesh: TriangleMesh;
  readonly normals: Float64Array;
  readonly edges: readonly MeshEdge[];
};

/** Faces that turn from each other by more than this meet in a corner: facets of a rounding turn by less. */
const corner = Math.cos((33 * Math.PI) / 180);

/** Faces that turn by less than this, as a cosine, lie in one plane: the edge between them is never drawn. */
const flat = 1 - 1e-9;

/** The edges of a closed mesh, but for those within a plane. */
export function meshEdges(mesh: TriangleMesh): Edged {
  const { triangles } = mesh;
  const normals = normalsOf(mesh);
  const count = mesh.positions.length / 3;
  const open = new Map<number, number>();
  const edges: MeshEdge[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const [from, to] = [triangles[t + k]!, triangles[t + ((k + 1) % 3)]!];
      const other = open.get(to * count + from);
      if (other === undefined) {
        open.set(from * count + to, t / 3);
        continue;
      }
      open.delete(to * count + from);
      const turn = cosine(normals, other, t / 3);
      if (turn < flat) edges.push({ from, to, left: t / 3, right: other, sharp: turn < corner });
    }
  }
  return { mesh, normals, edges };
}

function cosine(normals: Float64Array, a: number, b: number): number {
  return (
    normals[3 * a]! * normals[3 * b]! +
    normals[3 * a + 1]! * normals[3 * b + 1]! +
    normals[3 * a + 2]! * normals[3 * b + 2]!
  );
}

function normalsOf({ positions: p, triangles }: TriangleMesh): Float64Array {
  const normals = new Float64Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
    const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    const length = Math.sqrt(x * x + y * y + z * z) || 1;
    normals.set([x / length, y / length, z / length], t);
  }
  return normals;
}
