import { meshMeasures } from "../geometry/solid/mesh-measures.ts";
import type { TriangleMesh } from "../geometry/solid/triangle-mesh.ts";
import { type Difference, type Expected, readBack } from "./read-back.ts";
import { stlRead } from "./stl-read.ts";
import type { Surface } from "./surface.ts";
import { threemfRead } from "./threemf-read.ts";

/** What reading a solid's file back found: triangles, volume in mm³, and everything that differs from the mesh. */
export type SolidReadBack = {
  readonly status: "same" | "differs";
  readonly triangles: number;
  readonly volume: number;
  readonly differences: readonly string[];
};

/** What a file of a mesh must measure. */
export function expectedOfMesh(mesh: TriangleMesh): Expected {
  return { ...meshMeasures(mesh), triangles: mesh.triangles.length / 3 };
}

/** Reads a binary STL back and holds it against what its mesh measures. */
export function readBackStl(bytes: Uint8Array, expected: Expected): SolidReadBack {
  const read = stlRead(bytes);
  if (read.kind === "bad") return unread(read.problem);
  const normals = read.wrongNormals === 0 ? [] : [`${read.wrongNormals} normals that point elsewhere`];
  return compared(read.surface, expected, normals);
}

/** Reads a 3MF of one piece back and holds it against what its mesh measures, and its name. */
export function readBackThreemf(bytes: Uint8Array, expected: Expected, name: string): SolidReadBack {
  const read = threemfRead(bytes);
  if (read.kind === "bad") return unread(read.problem);
  const [piece] = read.pieces;
  if (piece === undefined || read.pieces.length !== 1) return unread(`${read.pieces.length} pieces, not one`);
  return compared(
    piece.surface,
    expected,
    piece.name === name ? [] : [`the name ${piece.name}, not ${name}`],
  );
}

function unread(why: string): SolidReadBack {
  return { status: "differs", triangles: 0, volume: 0, differences: [why] };
}

function compared(surface: Surface, expected: Expected, also: readonly string[]): SolidReadBack {
  const { triangles, volume } = expected;
  const differences = [...also, ...readBack(surface, expected).map(told)];
  const status = differences.length === 0 ? "same" : "differs";
  return { status, triangles, volume: Math.round(volume * 1000) / 1000, differences };
}

function told({ what, found, wanted }: Difference): string {
  return `${what}: ${found}, not ${wanted}`;
}
