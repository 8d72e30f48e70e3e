import fc from "fast-check";
import { mirrored } from "../../../src/geometry/mirror.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { bodyOutline } from "../../../src/instrument/body/outline.ts";
import { neckPlan } from "../../../src/instrument/neck/plan.ts";
import { type CutRun, cutRuns } from "../../../src/workshop/guided/cut-runs.ts";
import { longEdgeUses, middleSplit, splitAt } from "../../../src/workshop/guided/half-run.ts";

/** Random work that lies along x: its outline, the run that is cut, the same as it lies turned over, and the tools. */
export type Along = {
  readonly outline: Path;
  readonly run: CutRun;
  readonly again: CutRun | null;
  readonly edge: "low" | "high";
  readonly waste: readonly [number, number];
  readonly cutter: number;
  readonly guide: number;
};

const tools = fc.constantFrom<readonly [number, number]>(
  ...([
    [60, 60],
    [60, 40],
    [100, 100],
    [100, 80],
    [125, 125],
  ] as const),
  ...([
    [19.05, 19.05],
    [19.05, 12.68],
    [8, 16],
    [60, 70],
    [8, 20],
  ] as const),
);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Random necks: narrow and wide heads, boards that taper much or not at all, short and long transitions, cores that taper. */
export const neckLikes = fc
  .record({
    ...{ nut: number(22, 40), grows: number(0, 28), head: number(14, 30), shoulder: number(14, 30) },
    ...{ reach: number(20, 70), core: number(21, 40), taper: number(0, 2), tools },
    ...{ edge: fc.constantFrom("low" as const, "high" as const), marked: fc.boolean() },
  })
  .map((given): Along | undefined => {
    const board = { length: 270, nut: given.nut, end: given.nut + given.grows };
    const plan = neckPlan.work({
      ...{ taper: board, nutThickness: 5, transition: { start: 110, end: 110 + given.reach } },
      head: { length: 122, angle: 12, half: given.head, shoulder: given.shoulder },
      core: { width: 2 * given.core, at: 328, taper: given.taper, end: 445 },
      corners: { head: 5, tail: 3 },
    });
    if (plan.kind !== "ok") return undefined;
    const handTo = given.marked ? 20 : null;
    const outline = splitAt(plan.path, 20);
    const xs = outline.points.map(({ x }) => x);
    const between = [Math.min(...xs) + 4.6, Math.max(...xs) - 2.8] as const;
    const runOf = (path: Path) => cutRuns(path, longEdgeUses(path, given.edge, between, handTo));
    const [run, more] = runOf(outline);
    if (run === undefined || more !== undefined) return undefined;
    const [cutter, guide] = given.tools;
    const again = runOf(mirrored(outline, "y"))[0]!;
    return { outline, run, again, edge: given.edge, waste: [16, 16], cutter, guide };
  })
  .filter((made) => made !== undefined);

/** Random bodies' halves: bouts and waists of many widths, fair or with corners before and behind the waist. */
export const bodyLikes = fc
  .record({
    ...{ head: number(70, 110), upper: number(90, 150), waist: number(60, 130), lower: number(110, 190) },
    ...{
      corner: fc.constantFrom(3, 3.5, 4, 10),
      cornered: fc.boolean(),
      tools,
      edge: fc.constantFrom("low" as const, "high" as const),
    },
  })
  .map((given): Along | undefined => {
    const made = bodyOutline.work({
      ...{ start: 44, length: 300, head: { width: given.head, corner: given.corner } },
      ...{ upper: { at: 46, width: given.upper }, waist: { at: 124, width: given.waist } },
      lower: { at: 224, width: given.lower },
      corners: given.cornered
        ? { upper: { at: 90, width: given.upper }, lower: { at: 160, width: given.lower }, radius: 6 }
        : null,
    });
    if (made.kind !== "ok") return undefined;
    const outline = middleSplit(made.path);
    const uses = longEdgeUses(outline, given.edge, [0, 1000], null);
    const [run, more] = cutRuns(outline, uses);
    if (run === undefined || more !== undefined) return undefined;
    const [cutter, guide] = given.tools;
    return { outline, run, again: null, edge: given.edge, waste: [60, 60], cutter, guide };
  })
  .filter((made) => made !== undefined);
