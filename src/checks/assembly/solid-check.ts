import type { FitMeasured } from "../../workshop/assembly/assembled.ts";
import type { Finding } from "../check.ts";

/**
 * A check that looks at the assembled instrument's solids, which only `make` and `approve` put together: an id that never changes, and what it
 * finds in the fits as they were measured.
 */
export type SolidCheck = {
  readonly id: string;
  readonly of: (fits: readonly FitMeasured[]) => Omit<Finding, "id">;
};

/** What two parts of a fit are called in a sentence. */
export function namesOf({ fit: { first, second } }: FitMeasured): string {
  return `${spoken(first)} and ${spoken(second)}`;
}

function spoken(name: string): string {
  const [, side] = /^wing-(bass|treble)$/.exec(name) ?? [];
  if (side !== undefined) return `the ${side} wing`;
  return name.startsWith("string.") ? `string ${name.slice("string.".length)}` : `the ${name}`;
}

/** What is not written while a fit's check refuses: the whole, and the two parts' own files. */
export function heldBy({ fit: { first, second } }: FitMeasured): string[] {
  return ["assembly", ...[first, second].filter((name) => !/^(string\.|pickup)/.test(name))];
}

/** The one of some measured fits for which a number is greatest; nothing of none. */
export function worst(
  fits: readonly FitMeasured[],
  of: (fit: FitMeasured) => number,
): FitMeasured | undefined {
  return fits.reduce<FitMeasured | undefined>(
    (most, fit) => (most === undefined || of(fit) > of(most) ? fit : most),
    undefined,
  );
}
