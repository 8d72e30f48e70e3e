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

/** A piece of a file that holds several: its name and what its mesh measures. */
export type ExpectedPiece = { readonly name: string; readonly expected: Expected };

/** Reads a binary STL of several closed pieces, one after the other, back and holds each against what its mesh measures. */
export function readBackStlPieces(bytes: Uint8Array, pieces: readonly ExpectedPiece[]): SolidReadBack {
  const read = stlRead(bytes);
  if (read.kind === "bad") return unread(read.problem);
  const { vertices, corners } = read.surface;
  let at = 0;
  const surfaces = pieces.map(({ expected }) => {
    const from = at;
    at += 3 * expected.triangles;
    return { vertices, corners: corners.slice(from, at) };
  });
  const normals = read.wrongNormals === 0 ? [] : [`${read.wrongNormals} normals that point elsewhere`];
  const more = corners.length === at ? [] : [`${corners.length / 3} triangles, not ${at / 3}`];
  return allCompared(surfaces, pieces, [...normals, ...more]);
}

/** Reads a 3MF of several pieces back and holds each against its name and what its mesh measures. */
export function readBackThreemfPieces(bytes: Uint8Array, pieces: readonly ExpectedPiece[]): SolidReadBack {
  const read = threemfRead(bytes);
  if (read.kind === "bad") return unread(read.problem);
  if (read.pieces.length !== pieces.length)
    return unread(`${read.pieces.length} pieces, not ${pieces.length}`);
  const misnamed = pieces.flatMap(({ name }, i) =>
    read.pieces[i]!.name === name ? [] : [`the name ${read.pieces[i]!.name}, not ${name}`],
  );
  return allCompared(
    read.pieces.map(({ surface }) => surface),
    pieces,
    misnamed,
  );
}

function allCompared(
  surfaces: readonly Surface[],
  pieces: readonly ExpectedPiece[],
  also: readonly string[],
): SolidReadBack {
  const each = pieces.map(({ name, expected }, i) => ({ name, ...compared(surfaces[i]!, expected, []) }));
  const differences = [
    ...also,
    ...each.flatMap((one) => one.differences.map((difference) => `${one.name}: ${difference}`)),
  ];
  const sum = (of: (one: SolidReadBack) => number) => each.reduce((all, one) => all + of(one), 0);
  return {
    ...{ status: differences.length === 0 ? "same" : "differs", differences },
    ...{ triangles: sum(({ triangles }) => triangles), volume: sum(({ volume }) => volume) },
  };
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
