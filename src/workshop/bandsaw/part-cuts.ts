import type { Bandsaw } from "../../order/shop.ts";
import { step } from "../../step/step.ts";
import { type FittedSaw, fittedSaws } from "./fitted-saws.ts";
import type { LinesWithin, SawnShape } from "./part-lines.ts";
import { followsPart, type PartSawn, partSawn } from "./part-sawn.ts";

/** What of a part is sawn, its blank, how high the work is at most, the wood to leave outside, and the shop's bandsaws; mm. */
export type PartCutsInput = {
  readonly shape: SawnShape;
  readonly blank: LinesWithin["blank"];
  readonly height: number;
  readonly allowance: number;
  readonly saws: readonly Pick<Bandsaw, "id" | "throat" | "height" | "blades">[];
};

/** How a part is sawn, and on what; without a saw the lines stand at the allowance alone. */
export type PartCuts = {
  readonly saw: ({ readonly kind: "ok" } & FittedSaw) | { readonly kind: "none" };
  readonly sawn: PartSawn;
};

/** A part's cuts on the widest blade that follows all of its lines; if none does, on the narrowest, with its tight places marked. */
export const partCuts = step("part.cuts", 1, (given: PartCutsInput): PartCuts => {
  const { shape, blank, height, allowance, saws } = given;
  const fitted = fittedSaws(saws, height);
  const least = fitted.at(-1);
  if (least === undefined)
    return { saw: { kind: "none" }, sawn: partSawn(shape, { blank, allowance, kerf: 0 }, 0) };
  const narrowest = fitted.find(({ blade }) => blade.width === least.blade.width)!;
  const follows = ({ blade: { kerf, radius } }: FittedSaw) =>
    followsPart(shape, { blank, allowance, kerf }, radius);
  const saw = fitted.find(follows) ?? narrowest;
  const { kerf, radius } = saw.blade;
  return { saw: { kind: "ok", ...saw }, sawn: partSawn(shape, { blank, allowance, kerf }, radius) };
});
