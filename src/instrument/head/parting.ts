import { lowerTo, raiseTo } from "../wall.ts";
import type { Tuner, Tuners } from "./tuners.ts";

/** The tuners as they stand in the head's face, whatever their strings do; mm. */
export type Standing = Pick<Tuners, "kind" | "length" | "half"> & {
  readonly tuners: readonly Pick<Tuner, "row" | "along" | "y">[];
};

/** Two tuners that must stand so far apart, and the size that could be less instead, mm. */
type Pair = {
  readonly kind: Tuners["kind"];
  readonly a: Standing["tuners"][number];
  readonly b: Standing["tuners"][number];
  readonly row: number;
  readonly apart: number;
  readonly size: { readonly id: string; readonly value: number };
};

/** What parts two tuners: rows farther apart, or in one row columns farther apart; strings' ends in one row can only be smaller. */
export function parting({ kind, a, b, row, apart, size }: Pair): { ids: readonly string[]; mend: string } {
  const less = lowerTo(size.id, size.value);
  const across = Math.abs(a.y - b.y);
  if (a.row !== b.row) {
    const along = Math.sqrt(Math.max(0, apart * apart - across * across)) / Math.abs(a.row - b.row);
    return { ids: ["head.row", size.id], mend: `${raiseTo("head.row", Math.max(along, row))} or ${less}` };
  }
  if (kind === "tail") return { ids: [size.id, "nut.gap"], mend: less };
  return {
    ids: ["head.column", size.id],
    mend: `${raiseTo("head.column", Math.max(apart, across) / 2)} or ${less}`,
  };
}
