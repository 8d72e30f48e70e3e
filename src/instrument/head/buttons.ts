import { step } from "../../step/step.ts";
import type { Wall } from "../wall.ts";
import { parting, type Standing } from "./parting.ts";

/** The tuners, the width of a button along the head, and the gap wanted between two, mm. */
export type ButtonGapsInput = {
  readonly tuners: Standing;
  readonly row: number;
  readonly button: number;
  readonly clear: number;
};

/**
 * The gaps between buttons, mm. Machine heads' stand out of the head's sides, so those of one column lie in a row; pegs' stand
 * behind the head on the pegs' axes, round, so every two count. On a bare head the ends of the strings count like pegs.
 */
export const buttonGaps = step("head.button-gaps", 1, (given: ButtonGapsInput): readonly Wall[] => {
  const { tuners, row, button, clear } = given;
  const { kind, tuners: all } = tuners;
  const what = kind === "tail" ? "the ends" : "the buttons";
  return all.flatMap((a, i) =>
    all.slice(i + 1).flatMap((b, k): Wall[] => {
      if (kind === "machine-heads" && a.y !== b.y) return [];
      const left = Math.hypot(a.along - b.along, a.y - b.y) - button;
      const size = { id: "tuner.button", value: button - clear + left };
      const between = `${what} of strings ${i + 1} and ${i + k + 2}`;
      return [{ left, between, ...parting({ kind, a, b, row, apart: button + clear, size }) }];
    }),
  );
});
