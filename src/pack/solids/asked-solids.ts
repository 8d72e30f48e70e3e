import type { TriangleMesh } from "../../geometry/solid/triangle-mesh.ts";
import type { Store } from "../../step/store.ts";
import { type FitMeasured, standingBy } from "../../workshop/assembly/assembled.ts";
import type { Model } from "../../workshop/model.ts";
import type { SolidFile } from "../../workshop/solids/solid-file.ts";
import { type KeptFiles, keptFiles } from "../kept-files.ts";
import type { PackFile } from "../pack-file.ts";
import type { SolidNamed } from "../solid-pack-files.ts";
import type { Solids } from "./solid-tasks.ts";

/** A solid file that was asked for, and what it will be written as. */
export type AskedFile = { readonly name: string; readonly files: Promise<readonly PackFile[]> };

/** What a pack has asked of the solid kernel and waits for while it draws. */
export type AskedSolids = {
  /** The meshes of the parts that stand in the instrument, in their order. */
  readonly meshes: Promise<readonly TriangleMesh[]>;
  readonly measured: Promise<readonly FitMeasured[]>;
  readonly files: readonly AskedFile[];
  readonly assembly: () => Promise<readonly PackFile[]>;
};

/** What solids are asked for with: whoever does it, the store of their recipes, and files made before if any are kept. */
export type AskedWith = {
  readonly solids: Solids;
  readonly store: Store;
  readonly kept: KeptFiles | undefined;
};

/**
 * Asks for all that a pack needs of its solids: first for the parts that stand in the instrument and how they stand to each other, since checks and
 * sheets wait for that, then for every file.
 */
export function askedSolids(
  model: Model,
  { pieces, files }: { readonly pieces: readonly SolidFile[]; readonly files: readonly SolidFile[] },
  { solids, store, kept }: AskedWith,
): AskedSolids {
  const meshes = heldOn(
    Promise.all(pieces.map(({ name, key, solid }) => solids("mesh", { name, key, solid: solid(store) }))),
  );
  const meshed = new Set(pieces.map(({ key }) => key));
  return {
    meshes,
    measured: heldOn(pieces.length === 0 ? Promise.resolve([]) : measuredOf(model, pieces, solids, store)),
    files: files.map((file) => {
      const make = () => {
        const solid = meshed.has(file.key) ? null : file.solid(store);
        return solids("files", { file: named(file), solid });
      };
      return { name: file.name, files: heldOn(keptFiles(kept, ["solid", named(file)], make)) };
    }),
    assembly: () => {
      const all = pieces.map(named);
      return keptFiles(kept, ["assembly", all], () => solids("assembly", all));
    },
  };
}

function measuredOf(
  model: Model,
  pieces: readonly SolidFile[],
  solids: Solids,
  store: Store,
): Promise<readonly FitMeasured[]> {
  const parts = pieces.map(({ name, key }) => ({ name, key }));
  const names = parts.map(({ name }) => name);
  return solids("measure", { parts, by: standingBy(model, names, store), hand: model.spec.hand });
}

/** A promise whose rejection is told to whoever awaits it, however late that is. */
function heldOn<T>(promise: Promise<T>): Promise<T> {
  promise.catch(() => {});
  return promise;
}

function named({ solid: _, ...file }: SolidFile): SolidNamed {
  return file;
}
