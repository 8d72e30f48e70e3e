import type { Path } from "../path.ts";
import type { Point } from "../point.ts";
import { chained } from "./chained.ts";
import { type Depths, depthsOf, isBreak, isSeen, type Laid, laid, midstOf, seenAt } from "./depths.ts";
import type { Edged, MeshEdge } from "./mesh-edges.ts";
import type { View } from "./view.ts";

/**
 * What is seen of some meshes in a view, mm: where a surface turns away, and corners within it, open paths of straight lines; and of each mesh a place in the
 * midst of what is seen of it, null where nothing is, and of a place the mesh that is seen there by its place in the list, null where none is, when somebody asks.
 */
export type SeenLines = {
  readonly outline: readonly Path[];
  readonly corners: readonly Path[];
  readonly midst: () => readonly (Point | null)[];
  readonly at: (place: Point) => number | null;
};

/** Two places of a view, mm. */
export type Stretch = readonly [x1: number, y1: number, x2: number, y2: number];

/**
 * The lines of meshes that are seen in a parallel view, in the view's right and up. Whether a place is seen is asked of a grid of depths `field` mm wide,
 * so an edge may run on, or end, by so much where something passes in front of it.
 */
export function seenLines(all: readonly Edged[], view: View, field: number): SeenLines {
  const placed = all.map(({ mesh }) => laid(mesh, view));
  const depths = depthsOf(placed, field);
  const [outline, corners]: [Stretch[], Stretch[]] = [[], []];
  for (const [i, { normals, edges }] of all.entries()) {
    const facing = turnedTo(normals, view);
    for (const edge of edges) {
      const [left, right] = [facing[edge.left]!, facing[edge.right]!];
      const turns = left > 0 !== right > 0;
      if (!turns && !(edge.sharp && left > 0)) continue;
      (turns ? outline : corners).push(...seenOf(depths, placed[i]!, edge));
    }
  }
  const short = field;
  return {
    ...{ outline: chained(outline, short), corners: chained(corners, short) },
    midst: () => midstOf(depths, all.length),
    at: (place) => seenAt(depths, place),
  };
}

/** What faces whoever looks by less than this, as a cosine, is seen edge-on: narrow triangles of float32 are no truer. */
const edgeOn = 1e-3;

/** How far each triangle faces whoever looks; what is seen edge-on counts as turned away. */
function turnedTo(normals: Float64Array, { toward }: View): Float64Array {
  const facing = new Float64Array(normals.length / 3);
  for (let t = 0; t < facing.length; t++) {
    const turned =
      normals[3 * t]! * toward.x + normals[3 * t + 1]! * toward.y + normals[3 * t + 2]! * toward.z;
    facing[t] = turned > edgeOn ? turned : 0;
  }
  return facing;
}

/** The stretches of an edge that are seen. */
function seenOf(depths: Depths, { at }: Laid, { from, to }: MeshEdge): Stretch[] {
  const [ax, ay, az] = [at[3 * from]!, at[3 * from + 1]!, at[3 * from + 2]!];
  const [bx, by, bz] = [at[3 * to]!, at[3 * to + 1]!, at[3 * to + 2]!];
  const long = Math.hypot(bx - ax, by - ay);
  const count = Math.max(1, Math.ceil(long / depths.field));
  const slack = depths.field / 2;
  const square = long > 0 ? ([(ay - by) / long, (bx - ax) / long] as const) : ([1, 0] as const);
  const out: Stretch[] = [];
  let start = -1;
  for (let i = 0; i <= count; i++) {
    const s = (i + 0.5) / count;
    const place = [ax + (bx - ax) * s, ay + (by - ay) * s] as const;
    const seen =
      i < count && isSeen(depths, ...place, az + (bz - az) * s, slack) && isBreak(depths, place, square);
    if (seen && start < 0) start = i;
    if (seen || start < 0) continue;
    const [p, q] = [start / count, i / count];
    start = -1;
    // A single field between hidden ones is what the grid makes of a crossing.
    if (count > 2 && q - p < 1.5 / count) continue;
    out.push([ax + (bx - ax) * p, ay + (by - ay) * p, ax + (bx - ax) * q, ay + (by - ay) * q]);
  }
  return out;
}
