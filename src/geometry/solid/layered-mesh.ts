import type { TriangleMesh } from "./triangle-mesh.ts";
import type { Vec3 } from "./vec3.ts";

/** Triangles, as triples of indices into a layer, that fill the first and the last layer. */
export type Caps = {
  readonly first: readonly (readonly number[])[];
  readonly last: readonly (readonly number[])[];
};

/**
 * The closed mesh of layers, each of as many vertices as the others or of a single one (a tip, first or last): walls
 * between following layers, caps on the ends.
 *
 * The layers run counter-clockwise seen from the last; `mirrored` turns every triangle round, for the other case. Cap
 * triangles are given as the layers run. The walls' pieces are halved along one diagonal and the other by turns, so that
 * the two ways of flattening a twisted wall even out.
 */
export function layeredMesh(
  layers: readonly (readonly Vec3[])[],
  caps: Caps,
  mirrored: boolean,
): TriangleMesh {
  const starts: number[] = [];
  let total = 0;
  for (const layer of layers) {
    starts.push(total);
    total += layer.length;
  }
  const positions = new Float64Array(3 * total);
  for (const [i, { x, y, z }] of layers.flat().entries()) positions.set([x, y, z], 3 * i);
  const triangles: number[] = [];
  const add = (a: number, b: number, c: number) => triangles.push(a, mirrored ? c : b, mirrored ? b : c);
  for (let k = 1; k < layers.length; k++) {
    const [low, high] = [layers[k - 1]!.length, layers[k]!.length];
    const [from, to] = [starts[k - 1]!, starts[k]!];
    const count = Math.max(low, high);
    for (let i = 0; i < count; i++) {
      const next = (i + 1) % count;
      if (low === 1) add(from, to + next, to + i);
      else if (high === 1) add(from + i, from + next, to);
      else if (k % 2 === 0) {
        add(from + i, from + next, to + next);
        add(from + i, to + next, to + i);
      } else {
        add(from + i, from + next, to + i);
        add(from + next, to + next, to + i);
      }
    }
  }
  const lastStart = starts.at(-1)!;
  for (const [a, b, c] of caps.first) add(starts[0]! + a!, starts[0]! + c!, starts[0]! + b!);
  for (const [a, b, c] of caps.last) add(lastStart + a!, lastStart + b!, lastStart + c!);
  return { positions, triangles: Uint32Array.from(triangles) };
}
