import type { Kernel } from "../../../src/geometry/kernel.ts";
import { rectangle } from "../../../src/geometry/rectangle.ts";
import { clash } from "../../../src/geometry/solid/clash.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { type Model, modelOf } from "../../../src/workshop/model.ts";
import { jigFiles } from "../../../src/workshop/solids/jigs.ts";
import type { SolidFile } from "../../../src/workshop/solids/solid-file.ts";
import { meshed as meshedBy } from "../../meshed.ts";
import { everyCount, frettedSpec, specOf } from "../../samples.ts";

/** A model with its jigs by name; a jig's mesh is made once. */
export type Made = {
  readonly model: Model;
  readonly files: readonly SolidFile[];
  readonly meshOf: (name: string) => TriangleMesh;
};

/** What a spec's jigs are, made by a kernel that is asked for when the first is. */
export function madeOf(kernel: () => Kernel, spec: Spec): Made {
  const store = memoryStore();
  const model = modelOf(spec, store);
  const files = jigFiles(model);
  const known = new Map<string, TriangleMesh>();
  const meshOf = (name: string) => {
    const there = known.get(name);
    if (there !== undefined) return there;
    const file = files.find((one) => one.name === name);
    if (file === undefined) throw new Error(`no ${name} among ${files.map((one) => one.name).join(", ")}`);
    const made = meshed(kernel(), file.solid(store));
    known.set(name, made);
    return made;
  };
  return { model, files, meshOf };
}

/** A solid's mesh as a pack has it; a solid that has none is an error. */
export const meshed = (kernel: Kernel, solid: Solid): TriangleMesh => meshedBy(kernel, solid, 0.03);

/** The specs whose jigs are looked at: by day one of each design, by night every count. Thrift has frets. */
export const looked = everyCount
  .filter(({ count }) => process.env.NIGHTLY !== undefined || count === 5)
  .map(({ design, count }) => ({ design, count, spec: () => specAt(design, count) }));

/** The spec of a design at a count, of thrift with frets. */
export function specAt(design: string, count: number): Spec {
  return design === "thrift" ? frettedSpec(count) : specOf(design, count);
}

/** The volume, mm³, that two solids have in common. */
export function inBoth(kernel: Kernel, a: Solid, b: Solid): number {
  const found = clash(kernel, a, b);
  if (found.kind !== "ok") throw new Error(JSON.stringify(found));
  return found.interference;
}

/** A mesh as a solid. */
export const asSolid = (mesh: TriangleMesh): Solid => ({ kind: "mesh", mesh });

/** A box between two corners: a probe. */
export function box(from: readonly [number, number, number], to: readonly [number, number, number]): Solid {
  return {
    ...{ kind: "extrude", base: from[2], height: to[2] - from[2] },
    outlines: [{ outer: rectangle(from[0], from[1], to[0], to[1]), holes: [] }],
  };
}

/** How many pieces a mesh is of: triangles that share a vertex belong together. */
export function piecesIn({ positions, triangles }: TriangleMesh): number {
  const up = Array.from({ length: positions.length / 3 }, (_, i) => i);
  const root = (i: number): number => {
    let at = i;
    while (up[at] !== at) {
      up[at] = up[up[at]!]!;
      at = up[at]!;
    }
    return at;
  };
  for (let t = 0; t < triangles.length; t += 3) {
    const first = root(triangles[t]!);
    up[root(triangles[t + 1]!)] = first;
    up[root(triangles[t + 2]!)] = root(first);
  }
  return new Set([...triangles].map(root)).size;
}
