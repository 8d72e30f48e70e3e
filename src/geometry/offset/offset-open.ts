import { arrange } from "../arrangement/arrange.ts";
import { chainOf } from "../arrangement/chain.ts";
import type { Edge } from "../arrangement/edge.ts";
import { type Loop, outlinesWhere } from "../arrangement/outline.ts";
import { rejoined } from "../arrangement/rejoin.ts";
import { reversedEdge } from "../arrangement/subedge.ts";
import type { Path, PathPoint } from "../path.ts";
import { reversedPath } from "../reversed-path.ts";
import { tolerance } from "../tolerance.ts";
import { pointProblems } from "../validate/point-problems.ts";
import type { Problem } from "../validate/problem.ts";
import { completed, type OffsetOptions } from "./options.ts";
import { namesPerEdge, rawChain } from "./raw-chain.ts";

/** What became of the offset of an open path. */
export type OpenOffset =
  | { readonly outcome: "ok"; readonly path: Path }
  | { readonly outcome: "split"; readonly paths: readonly Path[] }
  | { readonly outcome: "collapsed" }
  | { readonly outcome: "invalid"; readonly problems: readonly Problem[] };

/**
 * Offset an open path to one side.
 *
 * Positive `distance` (mm) lies to the left of the path as it is walked, negative to the right; the result runs the
 * same way, square over the path's ends at its own, with no caps. Arcs stay arcs; corners that have to be gone round
 * are rounded, or mitred where asked. `ok` with one path, open unless the source closes a loop; `split` when parts of
 * it come too near another part of the source; `collapsed` when nothing is far enough from it; `invalid` when points
 * are bad or the path is closed (`zero-length`, `not-finite` …: `Problem`). A path that crosses itself is good. Slow
 * where thousands of short lines lie within the distance of one another (closed paths are done in halves there, open
 * ones are not). Every point of a rounded result is |distance| from the source within `tolerance.exact`, and none
 * nearer; a distance under that is none.
 */
export function offsetOpen(path: Path, distance: number, options: OffsetOptions = {}): OpenOffset {
  const problems = pointProblems({ ...path, closed: false }, 0).filter(
    ({ code }) => code !== "repeated-point",
  );
  if (path.closed) problems.push({ code: "closed", path: 0, index: 0 });
  if (!Number.isFinite(distance)) problems.push({ code: "not-finite", path: 0, index: 0 });
  if (problems.length > 0) return { outcome: "invalid", problems };
  if (Math.abs(distance) < tolerance.exact) return { outcome: "ok", path };
  const { x, y } = path.points[0]!;
  // There and back round nothing: the way there has its right side out, the way back the left.
  const thereAndBack = chainOf([{ closed: true, points: bothWays(path) }], x, y);
  const there = thereAndBack.edges.filter(({ source }) => source < path.points.length - 1).length;
  const raw = rawChain(thereAndBack, Math.abs(distance), completed(options));
  const loops = outlinesWhere(arrange(raw), (winding) => winding >= 1).map(rejoined);
  const wanted = ({ source }: Edge) => {
    const number = Math.floor(source / namesPerEdge);
    const atEnd = number === there - 1 || number === thereAndBack.edges.length - 1;
    return !(atEnd && source % namesPerEdge > 0) && number < there === distance < 0;
  };
  const parts = loops.flatMap((loop) => stretches(loop, wanted));
  const paths = parts.map((part) => pathAlong(part, distance > 0, x, y));
  const [only, more] = paths;
  if (only === undefined) return { outcome: "collapsed" };
  return more === undefined ? { outcome: "ok", path: only } : { outcome: "split", paths };
}

/** The points of a path there, and back to its start. */
function bothWays(path: Path): PathPoint[] {
  return [...path.points.slice(0, -1), ...reversedPath(path).points.slice(0, -1)];
}

/** The longest stretches of a loop of which each edge is wanted; the whole loop where all are. */
function stretches(loop: Loop, wanted: (edge: Edge) => boolean): { edges: Edge[]; closed: boolean }[] {
  const gap = loop.findIndex((edge) => !wanted(edge));
  if (gap < 0) return [{ edges: [...loop], closed: true }];
  const found: { edges: Edge[]; closed: boolean }[] = [];
  let open = false;
  for (let k = 1; k <= loop.length; k++) {
    const edge = loop[(gap + k) % loop.length]!;
    const good = wanted(edge);
    if (good && open) found.at(-1)!.edges.push(edge);
    else if (good) found.push({ edges: [edge], closed: false });
    open = good;
  }
  return found;
}

function pathAlong(
  { edges, closed }: { edges: readonly Edge[]; closed: boolean },
  back: boolean,
  x: number,
  y: number,
): Path {
  const ordered = back ? edges.toReversed().map(reversedEdge) : edges;
  const points = ordered.map(({ ax, ay, bulge }): PathPoint => ({ x: ax + x, y: ay + y, bulge }));
  const last = ordered.at(-1)!;
  if (!closed) points.push({ x: last.bx + x, y: last.by + y, bulge: 0 });
  return { closed, points };
}
