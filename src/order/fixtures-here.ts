import { type FixtureBuild, fixtureNames } from "./fixture-names.ts";
import { allInsides, insideNames, type Routed } from "./inside-names.ts";
import type { Checked } from "./problem.ts";

/** What has been resolved of a design, as far as its fixtures depend on it. */
export type ResolvedHere = {
  readonly values: Checked<Routed["values"]>;
  readonly features: Checked<Pick<Routed, "inlays" | "bridgeFoot"> & Pick<FixtureBuild, "body">>;
  readonly recesses: Checked<Pick<Routed, "recesses">>;
  readonly rests: Checked<Pick<Routed, "rests">>;
};

/** The files of a design's fixtures and inside templates; all that there may be while something else is wrong, so that a good name isn't called unknown. */
export function fixturesHere(
  build: FixtureBuild["build"],
  { values, features, recesses, rests }: ResolvedHere,
): readonly string[] {
  const fixtures = fixtureNames({ build, body: features.ok ? features.value.body : null });
  if (!values.ok || !features.ok || !recesses.ok || !rests.ok)
    return [...fixtures, ...allInsides.map(({ file }) => file)];
  const routed = { ...recesses.value, ...features.value, rests: rests.value.rests, values: values.value };
  return [...fixtures, ...insideNames(routed)];
}
