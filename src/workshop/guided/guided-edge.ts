import { offsetOpen } from "../../geometry/offset/offset-open.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { validateOutline } from "../../geometry/validate/validate-outline.ts";
import { step } from "../../step/step.ts";
import type { CutRun } from "./cut-runs.ts";
import { guideOffset } from "./guide-offset.ts";
import { type HardPlace, hardPlaces } from "./hard-places.ts";
import { ledOnBy } from "./run-in.ts";

/**
 * What a guided edge is worked out from: a run of cut edges with the wood on its left, the diameters of cutter and guide, how far to
 * lead it on at both ends beyond the wood that goes on there, and the base that its template is carried out to: in which direction (of unit length, into the wood's side)
 * and how far from the run's own first point; mm.
 */
export type GuidedEdgeInput = {
  readonly run: CutRun;
  readonly cutter: number;
  readonly guide: number;
  readonly length: number;
  readonly waste?: readonly [first: number, last: number];
  readonly base: { readonly way: Point; readonly reach: number };
};

/**
 * A guided edge. `led` is the run led on at both ends, `edge` the guided edge, open, both in the run's direction with wood and template on
 * the left; `template` the closed outline round edge and base, counter-clockwise. `places` are those that this cutter and guide don't bring
 * out. `not-open` for a run that is closed: it has no ends to lead on. `meets-itself` where run-in, run-out and base
 * come across one another; `no-edge` where the offset leaves none in one piece; `untold` where the places that are hard to bring out
 * could not be told.
 */
export type GuidedEdge =
  | {
      readonly kind: "ok";
      readonly led: Path;
      readonly edge: Path;
      readonly template: Path;
      readonly offset: number;
      readonly places: readonly HardPlace[];
    }
  | { readonly kind: "not-open" | "meets-itself" | "no-edge" | "untold" };

/** The guided edge of an outside cut: the finished edge moved by half of what the cutter is larger than the guide. */
export const guidedEdge = step(
  "guided.edge",
  1,
  ({ run, cutter, guide, length, waste, base }: GuidedEdgeInput): GuidedEdge => {
    if (run.path.closed) return { kind: "not-open" };
    const led = ledOnBy(run.path, length, waste);
    const offset = guideOffset(cutter, guide);
    const work = carriedOut(led, run.path.points[0]!, base);
    if (!isSound(work)) return { kind: "meets-itself" };
    const moved = offsetOpen(led, -offset);
    if (moved.outcome !== "ok") return { kind: "no-edge" };
    const template = carriedOut(moved.path, run.path.points[0]!, base);
    if (!isSound(template)) return { kind: "meets-itself" };
    const hard = hardPlaces({ outer: work, holes: [] }, run, cutter, offset);
    if (hard.kind !== "ok") return hard;
    return { kind: "ok", led, edge: moved.path, template, offset, places: hard.places };
  },
);

function isSound(outline: Path): boolean {
  return validateOutline(outline).every(({ code }) => code === "repeated-point");
}

/** An edge closed round a base: from both of its ends in one direction, to a line square to it, a distance from a place. */
function carriedOut({ points }: Path, from: Point, { way, reach }: GuidedEdgeInput["base"]): Path {
  const onLine = ({ x, y }: Point): PathPoint => {
    const far = reach - ((x - from.x) * way.x + (y - from.y) * way.y);
    return { x: x + way.x * far, y: y + way.y * far, bulge: 0 };
  };
  return { closed: true, points: [...points, onLine(points.at(-1)!), onLine(points[0]!)] };
}
