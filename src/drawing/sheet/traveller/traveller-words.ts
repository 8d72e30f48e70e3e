import type { PaperSize } from "../neck/input.ts";

/**
 * What a traveller says, in its own letters; rows are cells in the order of their columns. `fingerprint` is the order's, which stands nowhere else in print.
 */
export type TravellerWords = {
  readonly order: string;
  readonly fingerprint: string;
  readonly papers: readonly PaperSize[];
  /** Whose it is: order, revision, design, hand, strings, shop. */
  readonly head: readonly (readonly [what: string, value: string])[];
  /** Set-ups that a check refuses, files held back, what was overruled and what asks to be attended to: each with its reason. */
  readonly refused: readonly string[];
  readonly held: readonly string[];
  readonly overruled: readonly string[];
  readonly attended: readonly string[];
  readonly notLookedAt: readonly string[];
  readonly parts: readonly (readonly string[])[];
  readonly cuts: readonly (readonly string[])[];
  readonly cutRemarks: readonly string[];
  readonly bought: readonly (readonly string[])[];
  readonly steps: readonly (readonly string[])[];
};
