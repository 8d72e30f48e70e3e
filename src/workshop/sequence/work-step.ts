/** Where a step of work is done. */
export type Place =
  | "bench"
  | "planer"
  | "drill press"
  | "bandsaw"
  | "shaper"
  | "router"
  | "laser or CNC"
  | "printer";

/** What a step waits for: the step that gives it (its id, or what is in stock or bought), and what that hands over. */
export type Need = { readonly from: string; readonly what: string };

/** What is at a machine: a fixture with a guided edge, an inside template or a drawing of saw lines, by its file's name, which of that drawing's cuts, and which face is up. */
export type SetUpAt =
  | { readonly kind: "fixture" | "inside"; readonly file: string; readonly up: string }
  | { readonly kind: "saw"; readonly file: string; readonly cut: string; readonly up: string };

/**
 * One step of work, as plain data.
 *
 * `datum` is the face that it is measured and held from, `square` what of the work is still flat and square when it begins, `thickness` how thick the work is
 * there, mm, which a cutter has to reach; null where nothing is cut through. `measure` is what is written down when it is done. `files` are names of the
 * pack's files without ending. `needs` names earlier steps only.
 */
export type WorkStep = {
  readonly id: string;
  readonly what: string;
  readonly part: string;
  readonly at: Place;
  readonly datum: string;
  readonly square: string;
  readonly thickness: number | null;
  readonly measure: string;
  readonly files: readonly string[];
  readonly needs: readonly Need[];
  readonly setUp: SetUpAt | null;
};

/** A step that is a set-up at a machine. */
export type SetUpStep = WorkStep & { readonly setUp: SetUpAt };

/** A file of a pack by its name without ending, and the folder that it stands in. */
export type Filed = { readonly name: string; readonly folder: string };

/** A number as a step says it: at most two decimals. */
export function inMm(value: number): string {
  return String(Math.round(value * 100) / 100);
}
