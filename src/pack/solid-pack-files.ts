import {
  expectedOfMesh,
  readBackStl,
  readBackStlPieces,
  readBackThreemf,
  readBackThreemfPieces,
} from "../files/read-back-solid.ts";
import { stlWrite } from "../files/stl-write.ts";
import { threemfWrite } from "../files/threemf-write.ts";
import type { TriangleMesh } from "../geometry/solid/triangle-mesh.ts";
import { fingerprintOf, hashOf } from "../step/key.ts";
import type { SolidFile } from "../workshop/solids/solid-file.ts";
import { type PackFile, ReadBackError } from "./pack-file.ts";

/** A solid file without its recipe: plain data. */
export type SolidNamed = Omit<SolidFile, "solid">;

/** A solid as STL and as 3MF, each read back; a file that differs is the program's fault. */
export function solidPackFiles(file: SolidNamed, mesh: TriangleMesh): PackFile[] {
  const { name, folder, what, key } = file;
  const expected = expectedOfMesh(mesh);
  const stl = stlWrite(mesh);
  const threemf = threemfBytes(name, [{ name, mesh }]);
  const own = { what, fingerprint: fingerprintOf(key) };
  return held([
    { path: `${folder}/${name}.stl`, content: stl, ...own, readBack: readBackStl(stl, expected) },
    {
      ...{ path: `${folder}/${name}.3mf`, content: threemf, ...own },
      readBack: readBackThreemf(threemf, expected, name),
    },
  ]);
}

/** The parts of an instrument where they stand: an STL of as many closed pieces, and a 3MF with an object for each. */
export function assemblyPackFiles(
  parts: readonly { readonly file: SolidNamed; readonly mesh: TriangleMesh }[],
): PackFile[] {
  const pieces = parts.map(({ file: { name }, mesh }) => ({ name, mesh, expected: expectedOfMesh(mesh) }));
  const stl = stlWrite(inOne(parts.map(({ mesh }) => mesh)));
  const threemf = threemfBytes("assembly", pieces);
  const own = {
    what: "the assembled instrument: every part as a solid where it stands, for looking at and for checking",
    fingerprint: fingerprintOf(hashOf(parts.map(({ file: { key } }) => key).join("\n"))),
  };
  return held([
    { path: "outlines/assembly.stl", content: stl, ...own, readBack: readBackStlPieces(stl, pieces) },
    {
      ...{ path: "outlines/assembly.3mf", content: threemf, ...own },
      readBack: readBackThreemfPieces(threemf, pieces),
    },
  ]);
}

function threemfBytes(what: string, pieces: Parameters<typeof threemfWrite>[0]): Uint8Array {
  const threemf = threemfWrite(pieces);
  if (threemf.kind !== "ok") throw new Error(`${what} can't be written as 3MF: ${threemf.problem}`);
  return threemf.bytes;
}

function held(files: readonly PackFile[]): PackFile[] {
  for (const { path, readBack } of files)
    if (readBack?.status !== "same") throw new ReadBackError(path, readBack?.differences ?? []);
  return [...files];
}

/** Meshes one after the other, each by its own vertices. */
function inOne(meshes: readonly TriangleMesh[]): TriangleMesh {
  const sum = (of: (mesh: TriangleMesh) => number) => meshes.reduce((all, mesh) => all + of(mesh), 0);
  const positions = new Float32Array(sum((mesh) => mesh.positions.length));
  const triangles = new Uint32Array(sum((mesh) => mesh.triangles.length));
  let [vertex, corner] = [0, 0];
  for (const mesh of meshes) {
    positions.set(mesh.positions, 3 * vertex);
    triangles.set(
      mesh.triangles.map((i) => i + vertex),
      corner,
    );
    vertex += mesh.positions.length / 3;
    corner += mesh.triangles.length;
  }
  return { positions, triangles };
}
