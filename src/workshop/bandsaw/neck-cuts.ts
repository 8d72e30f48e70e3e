import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Bandsaw } from "../../order/shop.ts";
import { step } from "../../step/step.ts";
import { type FittedSaw, fittedSaws } from "./fitted-saws.ts";
import { bladeFollows, type SawnOutline, sawnOutline } from "./sawn-outline.ts";

/** The neck's two outlines, each with its blank's rectangle, the wood to leave outside, and the shop's bandsaws; mm. */
export type NeckCutsInput = {
  readonly plan: { readonly outline: Path; readonly blank: Extents };
  readonly side: { readonly outline: Path; readonly blank: Extents };
  readonly allowance: number;
  readonly saws: readonly Pick<Bandsaw, "id" | "throat" | "height" | "blades">[];
};

/** How the neck's blank is sawn from two ways, and on what; without a saw the lines stand at the allowance alone. */
export type NeckCuts = {
  readonly saw: ({ readonly kind: "ok" } & FittedSaw) | { readonly kind: "none" };
  readonly plan: SawnOutline;
  readonly side: SawnOutline;
};

/**
 * The neck's cuts on the widest blade that follows every place of both outlines, since a wide blade wanders least; if none
 * does, on the narrowest, with its tight places marked. A saw under whose guide the blank doesn't go is taken only where no
 * other is there; among like blades the first saw by id. A blade that the chart has no radius for is not looked at.
 */
export const neckCuts = step("neck.cuts", 1, (given: NeckCutsInput): NeckCuts => {
  const { plan, side, allowance, saws } = given;
  const high = Math.max(plan.blank.maxY - plan.blank.minY, side.blank.maxY - side.blank.minY);
  const fitted = fittedSaws(saws, high);
  if (fitted.length === 0) return { saw: { kind: "none" }, ...cutsWith(given, { kerf: 0, radius: 0 }) };
  const least = Math.min(...fitted.map(({ blade }) => blade.width));
  const follows = ({ blade: { kerf, radius } }: FittedSaw) =>
    [plan, side].every((view) => bladeFollows({ ...view, allowance, kerf, radius }));
  const saw = fitted.find(follows) ?? fitted.find(({ blade }) => blade.width === least)!;
  return { saw: { kind: "ok", ...saw }, ...cutsWith(given, saw.blade) };
});

function cutsWith(
  { plan, side, allowance }: NeckCutsInput,
  { kerf, radius }: { readonly kerf: number; readonly radius: number },
) {
  return {
    plan: sawnOutline({ ...plan, allowance, kerf, radius }),
    side: sawnOutline({ ...side, allowance, kerf, radius }),
  };
}
