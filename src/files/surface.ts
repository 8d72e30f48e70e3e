/** A surface read from a file: x, y, z (mm) of each vertex, three vertex indices for each triangle, as it stands there. */
export type Surface = { readonly vertices: readonly number[]; readonly corners: readonly number[] };

/**
 * What a surface measures: triangles; open edges, not run as often one way as the other; crowded edges, run more than once
 * each way; volume (mm³, negative inside out); extents (mm).
 */
export type SurfaceMeasures = {
  readonly triangles: number;
  readonly openEdges: number;
  readonly crowdedEdges: number;
  readonly volume: number;
  readonly extents: readonly number[];
};

/**
 * Measures a surface read from a file, in a way of its own: the volume as prisms between each triangle and the level of
 * the lowest vertex; extents as least x, y, z and most x, y, z. A triangle with a corner twice has open edges.
 */
export function measureSurface({ vertices, corners }: Surface): SurfaceMeasures {
  const extents = [1, 1, 1, -1, -1, -1].map((sign) => sign * Number.POSITIVE_INFINITY);
  for (const vertex of corners) {
    for (let axis = 0; axis < 3; axis++) {
      const value = vertices[3 * vertex + axis]!;
      extents[axis] = Math.min(extents[axis]!, value);
      extents[axis + 3] = Math.max(extents[axis + 3]!, value);
    }
  }
  // Each edge under one number, whichever way it is run: how often up, and so many times `down` how often down.
  const ways = new Map<number, number>();
  const down = 2 ** 20;
  const count = vertices.length / 3;
  const run = (from: number, to: number) => {
    const key = from < to ? from * count + to : to * count + from;
    ways.set(key, (ways.get(key) ?? 0) + (from <= to ? 1 : down));
  };
  let volume = 0;
  for (let t = 0; t < corners.length; t += 3) {
    const [a, b, c] = [corners[t]!, corners[t + 1]!, corners[t + 2]!];
    run(a, b);
    run(b, c);
    run(c, a);
    volume += prism(vertices, a, b, c, extents[0]!, extents[1]!, extents[2]!);
  }
  let [openEdges, crowdedEdges] = [0, 0];
  for (const both of ways.values()) {
    if (both % down !== Math.floor(both / down)) openEdges++;
    else if (both % down > 1) crowdedEdges++;
  }
  return { triangles: corners.length / 3, openEdges, crowdedEdges, volume, extents };
}

/** The volume between a triangle and the level z = lowZ, positive where the triangle faces up. */
function prism(
  at: readonly number[],
  a: number,
  b: number,
  c: number,
  x: number,
  y: number,
  lowZ: number,
): number {
  const [ax, ay] = [at[3 * a]! - x, at[3 * a + 1]! - y];
  const [bx, by] = [at[3 * b]! - x, at[3 * b + 1]! - y];
  const [cx, cy] = [at[3 * c]! - x, at[3 * c + 1]! - y];
  const shadow = ((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2;
  return (shadow * (at[3 * a + 2]! + at[3 * b + 2]! + at[3 * c + 2]! - 3 * lowZ)) / 3;
}
