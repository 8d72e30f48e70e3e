import type { Path, PathPoint } from "../geometry/path.ts";
import { roundCorners } from "../geometry/round-corners.ts";
import type { FramePoint, SpecEdge, SpecFace } from "../order/spec.ts";

/** An outline made of a ring of edges, or the edge that can't be made, with the largest corner that it has room for. */
export type Ring =
  | { readonly kind: "ok"; readonly path: Path }
  | { readonly kind: "no-curve" | "beside-arc"; readonly edge: string }
  | { readonly kind: "no-room"; readonly edge: string; readonly most: number };

/**
 * The closed outline of a face: its ring of edges, with corners rounded.
 *
 * `curves` holds what an edge may follow, by name, in the frame's own axes; `no-curve` names an edge that follows none
 * of them. Edges run counter-clockwise when the face lists them so.
 */
export function ringOf(face: SpecFace, curves: { readonly [name: string]: readonly PathPoint[] }): Ring {
  const points: PathPoint[] = [];
  const corners: number[] = [];
  const owners: string[] = [];
  for (const edge of face.edges) {
    const piece = pieceOf(edge, curves);
    if (piece === undefined) return { kind: "no-curve", edge: edge.id };
    points.push(...piece);
    corners.push(...piece.map((_, i) => (i === piece.length - 1 ? edge.corner : 0)));
    owners.push(...piece.map(() => edge.id));
  }
  const result = roundCorners({ closed: true, points }, corners);
  if (result.kind === "ok") return result;
  const edge = owners[result.index]!;
  return result.kind === "no-room"
    ? { kind: "no-room", edge, most: result.most }
    : { kind: result.kind, edge };
}

/** An edge's points after the one that it starts from. */
function pieceOf(edge: SpecEdge, curves: { readonly [name: string]: readonly PathPoint[] }) {
  if (edge.follows !== null) return Object.hasOwn(curves, edge.follows) ? curves[edge.follows] : undefined;
  return [...edge.through, ...(edge.to === null ? [] : [edge.to])].map(
    ([x, y]: FramePoint): PathPoint => ({ x, y, bulge: 0 }),
  );
}
