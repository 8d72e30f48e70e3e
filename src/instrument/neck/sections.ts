import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type ProfileInput, profileOf } from "./profile.ts";
import { sectionPath } from "./section.ts";

/** The neck's profile and the stations at which its sections are wanted; x in mm. */
export type SectionsInput = {
  readonly profile: ProfileInput;
  readonly stations: readonly { readonly name: string; readonly x: number }[];
};

/**
 * A section at a station, seen from the tail: y to the treble side, z out of the front, 0 at the board's glue surface;
 * counter-clockwise. `half` is half its width at the top, `depth` the wood on the centreline, mm.
 */
export type NeckSection = {
  readonly name: string;
  readonly x: number;
  readonly half: number;
  readonly depth: number;
  readonly path: Path;
};

/** The neck's sections at its stations. */
export const neckSections = step(
  "neck.sections",
  1,
  ({ profile, stations }: SectionsInput): readonly NeckSection[] => {
    const at = profileOf(profile);
    return stations.map(({ name, x }) => {
      const { form } = at(x);
      return { name, x, half: form.half, depth: form.depth, path: sectionPath(form) };
    });
  },
);
