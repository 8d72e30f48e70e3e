import type { Kernel } from "../geometry/kernel.ts";
import { mesh } from "../geometry/solid/mesh.ts";
import type { TriangleMesh } from "../geometry/solid/triangle-mesh.ts";
import type { Store } from "../step/store.ts";
import type { MeshedPart, NamedSolid } from "../workshop/assembly/assembled.ts";
import { assembledParts } from "../workshop/assembly/parts.ts";
import type { Model } from "../workshop/model.ts";
import type { SolidFile } from "../workshop/solids/solid-file.ts";

/** How far the meshes of a pack may stray from their solids, mm: a third of what a careful hand holds. */
const chord = 0.03;

/** The meshes of a pack's solids by their recipes' keys: `solid` is asked for what hasn't been meshed. One that has no mesh is the program's fault. */
export type Meshes = (key: string, solid: () => NamedSolid) => TriangleMesh;

/** Meshes solids by one kernel, each once however often it is asked for. */
export function meshesOf(kernel: Kernel): Meshes {
  const made = new Map<string, TriangleMesh>();
  return (key, solid) => {
    const known = made.get(key) ?? meshedBy(kernel, solid());
    made.set(key, known);
    return known;
  };
}

/** Meshes solid files, each once however often it is asked for. */
export function meshedOnce(kernel: Kernel, store: Store): (file: SolidFile) => TriangleMesh {
  const meshes = meshesOf(kernel);
  return ({ name, key, solid }) => meshes(key, () => ({ name, solid: solid(store) }));
}

function meshedBy(kernel: Kernel, { name, solid }: NamedSolid): TriangleMesh {
  const outcome = mesh(kernel, solid, chord);
  if (outcome.kind === "ok") return outcome.mesh;
  const why = outcome.kind === "empty" ? "nothing is left of it" : `${outcome.problem} at ${outcome.at}`;
  throw new Error(`${name} can't be made a mesh: ${why}`);
}

/** The solid files of a model's parts, as they make up the assembled instrument. */
export function assembledFiles(model: Model): readonly SolidFile[] {
  return assembledParts.flatMap((make) => make(model));
}

/** The meshes of a model's parts, right-handed: of a left-hand order the files' own, turned back. */
export function assembledMeshes(
  model: Model,
  meshOf: (file: SolidFile) => TriangleMesh,
): readonly MeshedPart[] {
  return assembledFiles(model).map((file) => {
    return { name: file.name, mesh: rightHanded(meshOf(file), model.spec.hand) };
  });
}

/** A part's mesh right-handed: of a left-hand order with y turned back. */
export function rightHanded(mesh: TriangleMesh, hand: "right" | "left"): TriangleMesh {
  return hand === "left" ? turnedBack(mesh) : mesh;
}

/** A mesh with y turned round, its triangles still counter-clockwise from outside. */
function turnedBack({ positions, triangles }: TriangleMesh): TriangleMesh {
  return {
    positions: Float32Array.from(positions, (value, i) => (i % 3 === 1 ? -value : value)),
    triangles: triangles.map((_, i) => triangles[i - (i % 3) + [0, 2, 1][i % 3]!]!),
  };
}
