import type { Path, PathPoint } from "../../geometry/path.ts";

/** What is done with the edge that a segment of an outline belongs to: cut by machine, cut and finished by hand, or joined to a part. */
export type EdgeUse = "cut" | "hand" | "joined";

/** A longest run of segments that are cut: open from the joined edge before it to the one after it, closed where all of an outline is cut. */
export type CutRun = { readonly path: Path; readonly uses: readonly ("cut" | "hand")[] };

/**
 * The runs of an outline's segments that are cut, by machine or by hand, in its own order and direction; `uses` names what is done with
 * each segment. An outline that is cut all round is one closed run; one without a cut segment has none.
 */
export function cutRuns(outline: Path, uses: readonly EdgeUse[]): CutRun[] {
  const { points } = outline;
  const count = points.length;
  const isCut = (i: number) => uses[i % count] !== "joined";
  const own = (indices: readonly number[]) => indices.map((i) => uses[i % count] as "cut" | "hand");
  const start = uses.findIndex((use, i) => use !== "joined" && !isCut(i + count - 1));
  if (start < 0)
    return uses.includes("joined") || count === 0
      ? []
      : [{ path: outline, uses: own(points.map((_, i) => i)) }];
  const runs: number[][] = [];
  for (let i = start; i < start + count; i++) {
    if (!isCut(i)) continue;
    if (runs.length === 0 || !isCut(i - 1)) runs.push([]);
    runs.at(-1)!.push(i);
  }
  return runs.map((run) => {
    const { x, y } = points[(run.at(-1)! + 1) % count]!;
    const along = run.map((i): PathPoint => points[i % count]!);
    return { path: { closed: false, points: [...along, { x, y, bulge: 0 }] }, uses: own(run) };
  });
}
