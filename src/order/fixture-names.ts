import { sides } from "./side.ts";
import type { Spec, SpecBody } from "./spec.ts";

/** The fixtures of the wings, by the names of their files without ending. */
export const wingFixtures = { bass: "wing-bass-router", treble: "wing-treble-router" } as const;

/** The fixture of the neck's plan, by its file. */
export const neckFixture = "neck-shaper";

/** The fixture of the fingerboard's straight sides, by its file. */
export const boardFixture = "fingerboard-router";

/** The fixtures of a body in one piece, one a half, by their files. */
export const bodyFixtures = { bass: "body-bass-router", treble: "body-treble-router" } as const;

/** What decides which fixtures there are: how it is built, and the body in one piece where that is known. */
export type FixtureBuild = Pick<Spec, "build"> & { readonly body: Pick<SpecBody, "cut"> | null };

/** A fixture that a guide follows: its file's name without ending, whose it is, the builds that it applies to, and what it shows. */
export type FixtureName = {
  readonly file: string;
  readonly part: string;
  readonly applies: (spec: FixtureBuild) => boolean;
  readonly what: string;
};

/** Every fixture that there may be, in the order in which packs and checks list them. */
export const allFixtures: readonly FixtureName[] = [
  ...sides.map((side) => ({
    ...{ file: wingFixtures[side], part: `wing-${side}` },
    applies: ({ build }: FixtureBuild) => build === "winged",
    what: `router fixture of the ${side} wing: template, guided edge, what holds the work, direction of the cut`,
  })),
  {
    ...{ file: neckFixture, part: "neck", applies: () => true },
    what: "shaper fixture of the neck's plan, used twice: template, guided edge, what holds the work, direction of the cut",
  },
  ...sides.map((side) => ({
    ...{ file: bodyFixtures[side], part: "body" },
    applies: ({ build, body }: FixtureBuild) =>
      build === "one-piece" && (body === null || body.cut.includes(side)),
    what: `router fixture of the body's ${side} half: template, guided edge, what holds the work from inside, direction of the cut`,
  })),
  {
    ...{ file: boardFixture, part: "fingerboard", applies: () => true },
    what: "router fixture of the fingerboard's straight sides, used twice: template, guided edge, what holds the work, direction of the cut",
  },
];

/** The fixtures that there are, by the names of their files. */
export function fixtureNames(spec: FixtureBuild): readonly string[] {
  return allFixtures.filter(({ applies }) => applies(spec)).map(({ file }) => file);
}
