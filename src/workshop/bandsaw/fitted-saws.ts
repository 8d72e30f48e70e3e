import type { Bandsaw } from "../../order/shop.ts";
import { leastSawRadius } from "./least-radius.ts";

/** A bandsaw with one of its blades on it; `radius` is the least that the blade follows, mm. */
export type FittedSaw = {
  readonly id: string;
  readonly throat: number;
  readonly height: number;
  readonly blade: { readonly width: number; readonly kerf: number; readonly radius: number };
};

/**
 * Every saw with every blade whose radius is known, the widest blade first, since a wide blade wanders least; among like blades the
 * first saw by id. A saw under whose guide work so `high` (mm) doesn't go is there only if no other is.
 */
export function fittedSaws(
  saws: readonly Pick<Bandsaw, "id" | "throat" | "height" | "blades">[],
  high: number,
): FittedSaw[] {
  const all = saws.flatMap(({ id, throat, height, blades }) =>
    blades.flatMap(({ width, kerf }): FittedSaw[] => {
      const least = leastSawRadius(width);
      return least.kind === "ok"
        ? [{ id, throat, height, blade: { width, kerf, radius: least.radius } }]
        : [];
    }),
  );
  const able = all.filter(({ height }) => height >= high);
  return (able.length > 0 ? able : all).sort(
    (a, b) => b.blade.width - a.blade.width || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
  );
}
