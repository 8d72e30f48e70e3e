import { intersectSegments } from "../../geometry/intersect/intersect-segments.ts";
import { distanceTo } from "../../geometry/path-measures/segment-places.ts";
import { type Line, segmentBetween } from "../../geometry/segment.ts";
import { step } from "../../step/step.ts";
import { lowerTo, raiseTo, type Wall } from "../wall.ts";
import { headTuners, type Tuner, type Tuners, type TunersInput } from "./tuners.ts";

/** Least gap between a string and another's post, or another's hole on a bare head, mm (G: a default to confirm). */
export const postGap = 1;

/** The tuners as they were asked for, how wide a post is, or a bare head's hole, and the gap wanted beside it, mm. */
export type StringPathsInput = {
  readonly asked: TunersInput;
  readonly obstacle: number;
  readonly gap: number;
};

/** Pairs of strings (counted from the highest, from 1) that cross on the head, and each string's way past the others' posts. */
export type StringPaths = {
  readonly crossing: readonly (readonly [number, number])[];
  readonly past: readonly Wall[];
  /** What uncrosses them; empty where none cross. */
  readonly mend: string;
};

/**
 * The strings' paths on the head in plan, straight from the nut to where each leaves its post: which cross, and how near each
 * runs past the posts of others, or past their holes on a bare head. What it tells to move is tried.
 */
export const stringPaths = step("head.string-paths", 1, (given: StringPathsInput): StringPaths => {
  const { asked, obstacle, gap } = given;
  const at = (column: number) => headTuners.work({ ...asked, column });
  const made = headTuners.work(asked);
  const crossing = crossings(made.tuners);
  const uncrossed = widened(asked.column, (column) => crossings(at(column).tuners).length === 0);
  const least = (tuners: Tuners) => Math.min(...pasts(tuners, obstacle).map(({ left }) => left));
  const passed = () => widened(asked.column, (column) => least(at(column)) >= gap);
  const past = pasts(made, obstacle).map(({ left, pair: [i, k] }): Wall => {
    const what = asked.kind === "tail" ? "hole" : "post";
    const between = `string ${i} and the ${what} of string ${k}`;
    const less = lowerTo(`tuner.${what}`, obstacle - 2 * (gap - left));
    const mend =
      left >= gap
        ? "leave it"
        : asked.kind === "tail"
          ? less
          : `${raiseTo("head.column", passed())} or ${less}`;
    return {
      left,
      between,
      ids: asked.kind === "tail" ? ["tuner.hole", "nut.gap"] : ["head.column", "tuner.post"],
      mend,
    };
  });
  return { crossing, past, mend: crossing.length === 0 ? "" : raiseTo("head.column", uncrossed) };
});

const pathOf = ({ nut, end }: Tuner) => segmentBetween(nut, end, 0) as Line;

function crossings(tuners: readonly Tuner[]): [number, number][] {
  return tuners.flatMap((a, i) =>
    tuners.flatMap((b, k): [number, number][] =>
      k > i && intersectSegments(pathOf(a), pathOf(b)).outcome !== "none" ? [[i + 1, k + 1]] : [],
    ),
  );
}

function pasts({ tuners }: Tuners, obstacle: number) {
  return tuners.flatMap((string, i) =>
    tuners.flatMap(({ post }, k) => {
      if (k === i) return [];
      return [{ left: distanceTo([pathOf(string)], post) - obstacle / 2, pair: [i + 1, k + 1] as const }];
    }),
  );
}

/** The least column, in steps of 0.5 mm from where it is, at which something holds; at most 60 mm more. */
function widened(column: number, holds: (column: number) => boolean): number {
  const steps = Array.from({ length: 121 }, (_, i) => column + i / 2);
  return steps.find(holds) ?? column + 60;
}
