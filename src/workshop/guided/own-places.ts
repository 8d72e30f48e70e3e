import { circle } from "../../geometry/circle.ts";
import type { Shop } from "../../order/shop.ts";
import type { OwnPlaces } from "../../order/spec.ts";
import { type BaseFrame, boxOnBase, onBase } from "./base-frame.ts";
import type { Holding } from "./holding.ts";
import { holdingSizes } from "./holding-sizes.ts";
import { clampPad, type PlacedClamp } from "./place-clamps.ts";

/**
 * What holds the work with a person's own places in place of the program's: clamps square to the line that the base begins at, handholds with a bolt
 * each. Nothing is moved to where it would do: the checks say what is wrong with it. A clamp that the shop doesn't own is left out.
 */
export function withOwnPlaces(
  held: Holding,
  frame: BaseFrame,
  { clamps, handholds }: OwnPlaces,
  owned: Shop["clamps"],
): Holding {
  const own = (clamps ?? []).flatMap(({ clamp, at: [s, h] }): PlacedClamp[] => {
    const one = owned.find(({ id }) => id === clamp);
    if (one === undefined) return [];
    const half = Math.min(...one.base) / 2;
    const over = h - one.reach;
    return [
      {
        ...{ id: clamp, base: boxOnBase(frame, s - half, h, s + half, h + Math.max(...one.base)) },
        arm: boxOnBase(frame, s - clampPad.half, over - clampPad.half, s + clampPad.half, h),
        pad: onBase(frame, s, over),
      },
    ];
  });
  const grips = (handholds ?? []).map(([s, h]) => {
    const at = onBase(frame, s, h);
    return { at, path: circle(at, holdingSizes.hand) };
  });
  const others = held.holes.filter(({ what }) => handholds === undefined || what !== "handhold");
  const bolts = grips.map(({ at }) => ({ at, diameter: holdingSizes.bolt, what: "handhold" }));
  return {
    ...{ ...held, clamps: clamps === undefined ? held.clamps : own },
    ...{ handholds: handholds === undefined ? held.handholds : grips, holes: [...others, ...bolts] },
  };
}
