import { expect } from "vitest";
import { type FairCurve, fairCurve } from "../../../src/geometry/fair/fair-curve.ts";
import type { FairPath } from "../../../src/geometry/fair/fair-path.ts";
import type { Station } from "../../../src/geometry/fair/station.ts";

/** The fair curve through stations; one that there isn't is an error. */
export function curveOf(stations: readonly Station[], closed: boolean): FairCurve {
  const outcome = fairCurve(stations, { closed });
  if (outcome.kind !== "ok") throw new Error(`${outcome.problem} at ${outcome.at}`);
  return outcome.curve;
}

/** A fair path that could be made. */
export type Made = Extract<FairPath, { kind: "ok" }>;

/** A fair path, which is expected to be made. */
export function made(outcome: FairPath): Made {
  expect(outcome.kind).toBe("ok");
  return outcome as Made;
}
