import { fixtureNames } from "./fixture-names.ts";
import { allInsides, insideNames, type Routed } from "./inside-names.ts";
import type { Checked } from "./problem.ts";
import type { Spec } from "./spec.ts";

/** What says which fixtures and inside templates an order can name, as far as it could be resolved. */
export type KnownFrom = {
  readonly build: Spec["build"];
  readonly values: Checked<Routed["values"]>;
  readonly features: Checked<Pick<Spec, "inlays" | "bridgeFoot" | "body">>;
  readonly recesses: Checked<Pick<Routed, "recesses">>;
  readonly rests: Checked<Pick<Routed, "rests">>;
};

/** The names of all fixtures and inside templates of a design; every inside template while it can't be told which there are. */
export function knownFixtures({ build, values, features, recesses, rests }: KnownFrom): string[] {
  const guided = fixtureNames({ build, body: features.ok ? features.value.body : null });
  if (!values.ok || !features.ok || !recesses.ok || !rests.ok)
    return [...guided, ...allInsides.map(({ file }) => file)];
  const { inlays, bridgeFoot } = features.value;
  const routed: Routed = {
    ...{ values: values.value, inlays, bridgeFoot },
    ...{ recesses: recesses.value.recesses, rests: rests.value.rests },
  };
  return [...guided, ...insideNames(routed)];
}
