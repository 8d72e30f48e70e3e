import type { Kernel } from "../../geometry/kernel.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import type { TriangleMesh } from "../../geometry/solid/triangle-mesh.ts";
import {
  type FitMeasured,
  measured,
  type NamedSolid,
  type StandingBy,
  stoodBy,
} from "../../workshop/assembly/assembled.ts";
import { meshesOf, rightHanded } from "../meshed-once.ts";
import type { PackFile } from "../pack-file.ts";
import { assemblyPackFiles, type SolidNamed, solidPackFiles } from "../solid-pack-files.ts";

/**
 * What a pack asks of the solid kernel; plain data, so that it can be done in another thread. What has been meshed is named by its recipe's key from
 * then on.
 */
export type SolidTasks = {
  /** The mesh of a recipe. */
  readonly mesh: {
    readonly asks: NamedSolid & { readonly key: string };
    readonly gives: TriangleMesh;
  };
  /** How meshed parts, files of an order of that hand, and what stands beside them stand to each other. */
  readonly measure: {
    readonly asks: {
      readonly parts: readonly { readonly name: string; readonly key: string }[];
      readonly by: StandingBy;
      readonly hand: "right" | "left";
    };
    readonly gives: readonly FitMeasured[];
  };
  /** The files of a solid, read back; its recipe may be left out where it has been meshed. */
  readonly files: {
    readonly asks: { readonly file: SolidNamed; readonly solid: Solid | null };
    readonly gives: readonly PackFile[];
  };
  /** The files of all meshed parts where they stand, read back. */
  readonly assembly: { readonly asks: readonly SolidNamed[]; readonly gives: readonly PackFile[] };
};

/** Does such tasks, wherever that is; a task that can't be done rejects. */
export type Solids = <K extends keyof SolidTasks>(
  kind: K,
  asks: SolidTasks[K]["asks"],
) => Promise<SolidTasks[K]["gives"]>;

/** How each kind of task is done by one kernel, which keeps what it has meshed. */
export function solidTasks(kernel: Kernel): {
  readonly [K in keyof SolidTasks]: (asks: SolidTasks[K]["asks"]) => SolidTasks[K]["gives"];
} {
  const meshes = meshesOf(kernel);
  const meshOf = ({ name, key }: { readonly name: string; readonly key: string }): TriangleMesh =>
    meshes(key, () => {
      throw new Error(`${name} was never meshed`);
    });
  return {
    mesh: ({ key, ...named }) => meshes(key, () => named),
    measure: ({ parts, by, hand }) => {
      const own = parts.map((part) => ({ name: part.name, mesh: rightHanded(meshOf(part), hand) }));
      return measured(stoodBy(own, by, kernel), kernel);
    },
    files: ({ file, solid }) =>
      solidPackFiles(
        file,
        solid === null ? meshOf(file) : meshes(file.key, () => ({ name: file.name, solid })),
      ),
    assembly: (files) => assemblyPackFiles(files.map((file) => ({ file, mesh: meshOf(file) }))),
  };
}
