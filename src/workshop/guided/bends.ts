import { leastRadius } from "../../geometry/path-measures/least-radius.ts";
import type { CutRun } from "./cut-runs.ts";

/** The least radius of hollow and of outward bends, mm, 0 at a corner; null where there is none. */
export type Bends = { readonly hollow: number | null; readonly outward: number | null };

/**
 * How tightly a run with the wood on its left bends, edges that are finished by hand left out: what turns to the right is hollow. A corner
 * between an edge that is cut and one finished by hand counts to the hand.
 */
export function bendsOf({ path, uses }: CutRun): Bends {
  const byMachine = uses.every((use) => use === "cut") ? [path] : machineCut(path, uses);
  const least = (hand: "left" | "right") => {
    const radii = byMachine.flatMap((one) => {
      const found = leastRadius(one, hand);
      return found.kind === "ok" ? [found.radius] : [];
    });
    return radii.length === 0 ? null : Math.min(...radii);
  };
  return { hollow: least("right"), outward: least("left") };
}

/** The stretches of a run between edges that are finished by hand. */
function machineCut({ points }: CutRun["path"], uses: CutRun["uses"]): CutRun["path"][] {
  const stretches: number[][] = [];
  for (const [i, use] of uses.entries()) {
    if (use === "hand") continue;
    if (i === 0 || uses[i - 1] === "hand") stretches.push([]);
    stretches.at(-1)!.push(i);
  }
  return stretches.map((run) => ({
    closed: false,
    points: [...run, run.at(-1)! + 1].map((i) => points[i % points.length]!),
  }));
}
