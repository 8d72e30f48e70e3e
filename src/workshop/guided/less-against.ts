import type { Fixture } from "./fixture.ts";

/** How much less has to be cut against the grain for the work to be turned over, mm. */
const worthTurning = 1;

/** Of two fixtures for the same edges, one with the work turned over, the first, unless so much more is cut against the grain in it. */
export function lessAgainst(first: Fixture, other: () => Fixture): Fixture {
  const { grain } = first;
  return grain !== null && grain.against > grain.with + worthTurning ? other() : first;
}
