import { circle } from "../../geometry/circle.ts";
import type { Point } from "../../geometry/point.ts";
import type { Sunk } from "../bridge/sunk.ts";
import type { Pocket } from "../pocket.ts";

/** What is sunk into the core's front, and the dimension that its depth follows from. */
export type CorePocket = Pocket & { readonly what: string; readonly depthId: string; readonly depth: number };

/** A tailpiece's post, in the core's front: its middle (x' and y) and its diameter, mm. */
export type Post = { readonly id: string; readonly at: Point; readonly size: number };

/** All that is sunk into the core's front under bridge and tailpiece, in the core frame: screws' holes or the pickup's cradle, and the posts' holes. */
export function corePockets(
  sunk: readonly Sunk[],
  posts: readonly Post[],
  postDepth: number,
): readonly CorePocket[] {
  return [
    ...sunk.map(({ kind, id, path, depth, size }): CorePocket => {
      const screw = kind === "screw";
      return {
        ...{ id: screw ? `screw-${id}` : id, what: screw ? `the screw ${id}` : "the cradle" },
        ...{ from: "front", path, depth, bore: screw ? size : null },
        depthId: screw ? "saddle.screw.depth" : "cradle.depth",
      };
    }),
    ...posts.map(({ id, at, size }): CorePocket => {
      return {
        ...{ id, what: `the tailpiece's ${id}`, from: "front", path: circle(at, size / 2), depth: postDepth },
        ...{ bore: size, depthId: "tailpiece.post.depth" },
      };
    }),
  ];
}
