import { sides } from "./side.ts";
import type { Spec } from "./spec.ts";

/** The fixtures of the wings, by the names of their files without ending. */
export const wingFixtures = { bass: "wing-bass-router", treble: "wing-treble-router" } as const;

/** A fixture that a guide follows: its file's name without ending, whose it is, the builds that it applies to, and what it shows. */
export type FixtureName = {
  readonly file: string;
  readonly part: string;
  readonly applies: (build: Spec["build"]) => boolean;
  readonly what: string;
};

/** Every fixture that there may be, in the order in which packs and checks list them. */
export const allFixtures: readonly FixtureName[] = [
  ...sides.map((side) => ({
    ...{ file: wingFixtures[side], part: `wing-${side}` },
    applies: (build: Spec["build"]) => build === "winged",
    what: `router fixture of the ${side} wing: template, guided edge, what holds the work, direction of the cut`,
  })),
];

/** The fixtures that a build has, by the names of their files. */
export function fixtureNames(build: Spec["build"]): readonly string[] {
  return allFixtures.filter(({ applies }) => applies(build)).map(({ file }) => file);
}
