import type { Kernel, Shape } from "../kernel.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";
import { type Box3, boxesApart, boxOfMesh } from "./triangles-in.ts";

/**
 * Two of some meshes, by their places in the list, and how far apart they are asked for, mm. `touch`: they should, and the volume in both is
 * asked for first; else that is asked for only where there is no gap.
 */
export type Pair = {
  readonly first: number;
  readonly second: number;
  readonly reach: number;
  readonly touch: boolean;
};

/**
 * The volume in both meshes of a pair (mm³), and their least gap (mm): 0 where they meet, and at least so much where it is `reach` or more. Of
 * two that should touch the gap is asked for by `gap`, since faces that lie on each other tell it at less cost.
 */
export type PairClash = { readonly interference: number; readonly gap: () => number };

/**
 * How pairs of meshes stand to each other, each mesh brought to the kernel once; `look` is given the clash of each, and may ask for its gap until it
 * returns. Pairs whose boxes are farther apart than they are asked for never get there. Throws at a mesh that the kernel won't have.
 */
export function clashes<T>(
  kernel: Kernel,
  meshes: readonly TriangleMesh[],
  pairs: readonly Pair[],
  look: (clash: PairClash, pair: number) => T,
): readonly T[] {
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
    const clashOf = ({ first, second, reach, touch }: Pair): PairClash => {
      const away = boxesApart(boxes[first]!, boxes[second]!);
      if (away >= reach) return { interference: 0, gap: () => away };
      const [a, b] = [shapeOf(first), shapeOf(second)];
      const both = () => Math.max(0, bench.volume(bench.intersect([a, b])));
      const gap = () => bench.gap(a, b, reach);
      // One that lies in the other has a gap to its surface too.
      if (touch || within(boxes[first]!, boxes[second]!) || within(boxes[second]!, boxes[first]!)) {
        const interference = both();
        return { interference, gap: interference > 0 ? () => 0 : gap };
      }
      const found = gap();
      return { interference: found > 0 ? 0 : both(), gap: () => found };
    };
    return pairs.map((pair, i) => look(clashOf(pair), i));
  });
}

function within(inner: Box3, outer: Box3): boolean {
  return (["x", "y", "z"] as const).every((k) => {
    return inner.least[k] >= outer.least[k] && inner.most[k] <= outer.most[k];
  });
}
