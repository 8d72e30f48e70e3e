import type { Spec } from "./spec.ts";

/** The fixtures of the wings, by the names of their files without ending. */
export const wingFixtures = { bass: "wing-bass-router", treble: "wing-treble-router" } as const;

/** The fixtures that a build has, by the names of their files. */
export function fixtureNames(build: Spec["build"]): readonly string[] {
  return build === "winged" ? Object.values(wingFixtures) : [];
}
