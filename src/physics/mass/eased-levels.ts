import { gaussRule } from "../../geometry/gauss-rule.ts";
import { stretches } from "../../geometry/stretches.ts";
import type { EdgeProfile } from "../../order/spec.ts";

/** A plate whose edges are eased at front and back by a profile of one size; mm. */
export type EasedPlate = {
  readonly thickness: number;
  readonly arris: number;
  readonly profile: { readonly front: EdgeProfile; readonly back: EdgeProfile };
};

/** A level cut of a plate, w over its front, how much of its thickness it stands for, and how far its cut edges are moved inward there; mm. */
export type EasedLevel = { readonly w: number; readonly weight: number; readonly inward: number };

/**
 * The level cuts of a plate with eased edges, front to back. Between the eased edges a cut's area is at most quadratic in its height, and
 * the rule exact; through a rounding it goes by the angle, since near the face that runs out flat.
 */
export function easedLevels({ thickness, arris, profile }: EasedPlate): EasedLevel[] {
  const front = eased(profile.front, arris);
  const back = eased(profile.back, arris);
  const depth = (list: readonly EasedLevel[]) => (list.length === 0 ? 0 : arris);
  const plain = stretches(-thickness + depth(back), -depth(front), [], 2).map(({ x, weight }) => {
    return { w: x, weight, inward: 0 };
  });
  return [
    ...front.map((level) => ({ ...level, w: -level.w })),
    ...plain,
    ...back.map((level) => ({ ...level, w: -thickness + level.w })),
  ];
}

/** The level cuts through an eased edge, `w` counted from its face: along a rounding by its angle, since near the face it runs out flat. */
function eased(profile: EdgeProfile, size: number): EasedLevel[] {
  if (profile === "none" || size === 0) return [];
  return gaussRule(3).map(([at, weight]): EasedLevel => {
    if (profile === "bevel") return { w: size * at, weight: size * weight, inward: size * (1 - at) };
    const angle = (Math.PI / 2) * at;
    return {
      ...{ w: size * (1 - Math.cos(angle)), weight: size * Math.sin(angle) * (Math.PI / 2) * weight },
      inward: size * (1 - Math.sin(angle)),
    };
  });
}
