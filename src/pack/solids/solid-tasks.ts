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
import { meshedFor, rightHanded } from "../meshed-once.ts";
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

/**
 * How each kind of task is done by one kernel, which keeps what it has meshed; with `keep` also the files that it has made of it, for whoever makes packs of
 * one order again and again.
 */
export function solidTasks(
  kernel: Kernel,
  keep?: "files",
): {
  readonly [K in keyof SolidTasks]: (asks: SolidTasks[K]["asks"]) => SolidTasks[K]["gives"];
} {
  const written = new Map<string, readonly PackFile[]>();
  const once = (from: unknown, make: () => readonly PackFile[]): readonly PackFile[] => {
    if (keep === undefined) return make();
    const key = JSON.stringify(from);
    const known = written.get(key) ?? make();
    written.set(key, known);
    return known;
  };
  const made = new Map<string, TriangleMesh>();
  const meshOf = ({ name, key }: { readonly name: string; readonly key: string }): TriangleMesh => {
    const known = made.get(key);
    if (known === undefined) throw new Error(`${name} was never meshed`);
    return known;
  };
  const meshed = (key: string, named: NamedSolid): TriangleMesh => {
    const known = made.get(key) ?? meshedFor(kernel, named);
    made.set(key, known);
    return known;
  };
  return {
    mesh: ({ key, ...named }) => meshed(key, named),
    measure: ({ parts, by, hand }) => {
      const own = parts.map((part) => ({ name: part.name, mesh: rightHanded(meshOf(part), hand) }));
      return measured(stoodBy(own, by, kernel), kernel);
    },
    files: ({ file, solid }) =>
      once(file, () =>
        solidPackFiles(file, solid === null ? meshOf(file) : meshed(file.key, { name: file.name, solid })),
      ),
    assembly: (files) =>
      once(files, () => assemblyPackFiles(files.map((file) => ({ file, mesh: meshOf(file) })))),
  };
}
