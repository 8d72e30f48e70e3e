import type { Point } from "../../geometry/point.ts";
import { type BaseFrame, baseFrame, inBase } from "./base-frame.ts";
import { type CutRun, cutRuns } from "./cut-runs.ts";
import type { GuidedEdgeInput } from "./guided-edge.ts";
import type { GuidedWork } from "./guided-work.ts";
import { handDistances } from "./hand-distances.ts";
import { holdingSizes } from "./holding-sizes.ts";
import { ledOnBy, runLength } from "./run-in.ts";
import type { SetUp } from "./set-up.ts";

/** Where a base lies against the work: the run that is cut, a place in its bow, and the frame on the line that the base begins at. */
export type GuidedBase = { readonly run: CutRun; readonly inside: Point; readonly frame: BaseFrame };

/** How deep a base is that nobody holds, mm: room for a batten and a clamp behind it. */
const heldDown = 160;

/** The base of some work; work without a run of cut edges throws. */
export function guidedBase({ outline, uses, part, base: { from, to } }: GuidedWork): GuidedBase {
  const [run] = cutRuns(outline, uses);
  if (run === undefined) throw new RangeError(`nothing of the ${part} is cut`);
  const { points } = run.path;
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  const inside = { x: sum.x / points.length, y: sum.y / points.length };
  return { run, inside, frame: baseFrame(from, to, inside) };
}

/** How far handholds lie from the line that the base begins at, mm; null where nobody holds the fixture, since the tool is moved. */
export function handsAt(work: GuidedWork, { run, frame }: GuidedBase, setUp: SetUp): number | null {
  const { machine, cutter, guide } = setUp;
  if (machine.moves === "tool") return null;
  const length = runLength(guide.diameter);
  const led = ledOnBy(run.path, length, work.waste);
  // By a batten the run begins and ends at the base; else from the highest place that the cutter's circle may come to.
  const from = work.held.by === "batten" ? length : highestOf(led.points, frame);
  return from + cutter.diameter / 2 + handDistances.usual + holdingSizes.hand + 1;
}

/** What a run's guided edge is worked out from: its template is carried out far enough for handholds, or for what stands behind the work. */
export function edgeInput(work: GuidedWork, base: GuidedBase, run: CutRun, setUp: SetUp): GuidedEdgeInput {
  const { cutter, guide } = setUp;
  const grip = handsAt(work, base, setUp);
  const reach = grip === null ? heldDown : grip + holdingSizes.hand + holdingSizes.rim;
  return {
    ...{ run, cutter: cutter.diameter, guide: guide.diameter },
    ...{ length: runLength(guide.diameter), waste: work.waste },
    base: { way: base.frame.away, reach: reach - inBase(base.frame, run.path.points[0]!).h },
  };
}

/** How far some places reach away from the line that a base begins at, mm. */
export function highestOf(points: readonly Point[], frame: BaseFrame): number {
  return Math.max(...points.map((at) => inBase(frame, at).h));
}
