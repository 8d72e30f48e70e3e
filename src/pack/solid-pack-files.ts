import { expectedOfMesh, readBackStl, readBackThreemf } from "../files/read-back-solid.ts";
import { stlWrite } from "../files/stl-write.ts";
import { threemfWrite } from "../files/threemf-write.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { mesh } from "../geometry/solid/mesh.ts";
import { fingerprintOf } from "../step/key.ts";
import type { Store } from "../step/store.ts";
import type { SolidFile } from "../workshop/solids/solid-file.ts";
import { type PackFile, ReadBackError } from "./pack-file.ts";

/** How far the meshes of a pack may stray from their solids, mm: a third of what a careful hand holds. */
const chord = 0.03;

/** A solid as STL and as 3MF, each read back; a solid that has no mesh, or a file that differs, is the program's fault. */
export function solidPackFiles(file: SolidFile, kernel: Kernel, store: Store): PackFile[] {
  const { name, folder, what, key, solid } = file;
  const made = mesh(kernel, solid(store), chord);
  if (made.kind !== "ok") {
    const why = made.kind === "empty" ? "nothing is left of it" : `${made.problem} at ${made.at}`;
    throw new Error(`${name} can't be made a mesh: ${why}`);
  }
  const fingerprint = fingerprintOf(key);
  const expected = expectedOfMesh(made.mesh);
  const stl = stlWrite(made.mesh);
  const threemf = threemfWrite([{ name, mesh: made.mesh }]);
  if (threemf.kind !== "ok") throw new Error(`${name} can't be written as 3MF: ${threemf.problem}`);
  const files: PackFile[] = [
    {
      ...{ path: `${folder}/${name}.stl`, content: stl, what, fingerprint },
      readBack: readBackStl(stl, expected),
    },
    {
      ...{ path: `${folder}/${name}.3mf`, content: threemf.bytes, what, fingerprint },
      readBack: readBackThreemf(threemf.bytes, expected, name),
    },
  ];
  for (const { path, readBack } of files)
    if (readBack?.status !== "same") throw new ReadBackError(path, readBack?.differences ?? []);
  return files;
}
