import type { Instrument } from "../instrument.ts";

/** Dimensions that can't go together: the ones at odds, what was found, what would do, and what to try. */
export type Contradiction = {
  /** None where it is about its place alone. */
  readonly ids: readonly string[];
  /** The edge, hole or string that it is about, where it is about one: its part and its id, as "bridge.eye" or "strings.E5". */
  readonly place?: string;
  readonly found: string;
  readonly allowed: string;
  readonly hint: string;
};

/** Looks at some dimensions, by their values and what was worked out of them, for any that can't go together. */
export type Look = (of: (id: string) => number, made: Instrument) => Contradiction[];

/** The contradiction that is there unless something holds. */
export function unless(
  holds: boolean,
  ids: readonly string[],
  said: Omit<Contradiction, "ids">,
): Contradiction[] {
  return holds ? [] : [{ ids, ...said }];
}

/** A length as it is told in a contradiction. */
export function mm(value: number): string {
  return `${Math.round(value * 100) / 100} mm`;
}
