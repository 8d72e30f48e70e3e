import type { InsideName } from "../../order/inside-names.ts";
import { insideApplies } from "../../order/inside-names.ts";
import type { Spec } from "../../order/spec.ts";
import type { Inside, Opening } from "../../workshop/inside/inside.ts";
import { insideNamed } from "../../workshop/inside/insides.ts";
import type { Check } from "../check.ts";
import type { FixtureRule, Judged } from "../guided/fixture-check.ts";

/** A rule for inside templates. */
export type InsideRule = FixtureRule<Inside>;

/** An opening with what its whole template has: all that a rule about one guided edge asks for. */
export type OneOpening = Opening & Pick<Inside, "chosen" | "setUp" | "kept" | "sheet" | "layout">;

/** A rule about one opening as a rule about all of a template's: the gravest of what it says, that nearest to its limit, the first of several alike. */
export function everyOpening({ name, of }: FixtureRule<OneOpening>): InsideRule {
  return {
    name,
    of: ({ chosen, setUp, kept, sheet, layout, openings }, spec) => {
      const all = openings.map((opening) => {
        const { id, recess, depth, passes, edge, feed, cut } = opening;
        const one = { id, recess, depth, passes, edge, feed, cut, chosen, setUp, kept, sheet, layout };
        return { id, said: of(one, spec) };
      });
      const worst = all.reduce((a, b) => (gravity(b.said) > gravity(a.said) ? b : a));
      return { ...worst.said, why: `${worst.id}: ${worst.said.why}` };
    },
  };
}

/** How grave a judgement is against others of the same rule: its status first, then how near it is to its limit or how far past it. */
function gravity({ status, found, limit }: Judged): number {
  const off = Math.abs(found - limit);
  const near = off / (1 + off);
  return status === "refuse" ? 2 + near : (status === "attend" ? 1 : 0) + (1 - near) / 2;
}

/** A rule as a check of one inside template, by its file: while it refuses, that file isn't written. */
export function insideCheck({ name, of }: InsideRule, inside: InsideName): Check {
  const { file } = inside;
  return {
    id: `${name}.${file}`,
    applies: (spec: Spec) => insideApplies(inside, spec),
    of: (model) => {
      const found = insideNamed(model.insides(), file);
      return { ...of(found, model.spec), subject: found.part, holds: [file] };
    },
  };
}
