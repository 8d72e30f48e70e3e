import type { Spec } from "../../order/spec.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { fixtureNamed } from "../../workshop/guided/fixtures.ts";
import type { GuidedEdge } from "../../workshop/guided/guided-edge.ts";
import type { SetUp } from "../../workshop/guided/set-up.ts";
import type { Check, Finding } from "../check.ts";

/** What one rule says of a fixture: all of a finding but whose it is. */
export type Judged = Omit<Finding, "id" | "subject" | "holds">;

/** A rule for fixtures, or for whatever has what it asks for: the check's name without the file, and what it says. */
export type FixtureRule<F = Fixture> = {
  readonly name: string;
  readonly of: (fixture: F, spec: Spec) => Judged;
};

/** A guided edge that has something, or why there is none. */
export type EdgeWith<T> =
  | ({ readonly kind: "ok" } & T)
  | { readonly kind: Exclude<GuidedEdge["kind"], "ok"> }
  | null;

/** A rule as a check of one fixture, by its file: while it refuses, that file isn't written. */
export function fixtureCheck(
  { name, of }: FixtureRule,
  file: string,
  applies: (spec: Spec) => boolean,
): Check {
  return {
    id: `${name}.${file}`,
    applies,
    of: (model) => {
      const fixture = fixtureNamed(model.fixtures(), file);
      return { ...of(fixture, model.spec), subject: fixture.part, holds: [file] };
    },
  };
}

/** The usual tail of a judgement: what is at stake and in which unit. */
export type Usual = Pick<Finding, "stake" | "unit" | "source" | "limit">;

/** A rule that can't be tried without a set-up or an edge: the check that refuses says so. */
export function untried(usual: Usual, see: string): Judged {
  return { ...usual, status: "attend", found: usual.limit, why: `nothing to try: see ${see}` };
}

/** A rule about a set-up; without one it points at what is missing. */
export function ofSetUp<F extends Pick<Fixture, "setUp"> = Pick<Fixture, "setUp">>(
  name: string,
  usual: Usual,
  judge: (setUp: SetUp, fixture: F) => Pick<Judged, "status" | "found" | "why"> & Partial<Usual>,
): FixtureRule<F> {
  return {
    name,
    of: (fixture) =>
      fixture.setUp === null
        ? untried(usual, "machine.missing, cutter.missing, guide.missing")
        : { ...usual, ...judge(fixture.setUp, fixture) },
  };
}
