import type { Kernel, Shape } from "../kernel.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";
import { boxesApart, boxOfMesh } from "./triangles-in.ts";

/** Two of some meshes, by their places in the list, and how far apart they are asked for, mm. */
export type Pair = { readonly first: number; readonly second: number; readonly reach: number };

/** The volume in both meshes of a pair (mm³), and their least gap (mm): 0 where they meet, and at least so much where it is `reach` or more. */
export type PairClash = { readonly interference: number; readonly gap: number };

/**
 * How pairs of meshes stand to each other, each mesh brought to the kernel once. Pairs whose boxes are farther apart than they are asked
 * for never get there. Throws at a mesh that the kernel won't have.
 */
export function clashes(
  kernel: Kernel,
  meshes: readonly TriangleMesh[],
  pairs: readonly Pair[],
): readonly PairClash[] {
  const boxes = meshes.map(boxOfMesh);
  return kernel.work((bench) => {
    const shapes = new Map<number, Shape>();
    const shapeOf = (i: number): Shape => {
      const known = shapes.get(i);
      if (known !== undefined) return known;
      const made = bench.ofMesh(meshes[i]!);
      if (made.kind !== "ok") throw new Error(`a mesh that the kernel refuses: ${made.reason}`);
      shapes.set(i, made.shape);
      return made.shape;
    };
    return pairs.map(({ first, second, reach }): PairClash => {
      const away = boxesApart(boxes[first]!, boxes[second]!);
      if (away >= reach) return { interference: 0, gap: away };
      const [a, b] = [shapeOf(first), shapeOf(second)];
      const interference = away > 0 ? 0 : Math.max(0, bench.volume(bench.intersect([a, b])));
      return { interference, gap: interference > 0 ? 0 : bench.gap(a, b, reach) };
    });
  });
}
