import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { withoutShort } from "../../geometry/simplify/without-short.ts";
import { tolerance } from "../../geometry/tolerance.ts";
import { keptOutline } from "./kept-outline.ts";
import { type Relief, reliefCut } from "./relief-cut.ts";
import { type SawLine, sawLines } from "./saw-lines.ts";
import { type TightPlace, tightPlaces } from "./tight-places.ts";

/** A finished outline, its blank's rectangle, the wood to leave and the blade: its kerf and the least radius it follows; mm. */
export type SawnOutlineInput = {
  readonly outline: Path;
  readonly blank: Extents;
  readonly allowance: number;
  readonly kerf: number;
  readonly radius: number;
};

/** A place that the blade can't follow, and the way in to it. */
export type MarkedPlace = TightPlace & { readonly side: SawLine["side"]; readonly relief: Relief };

/** One outline as it is sawn: its lines, what is kept, and the places tighter than the blade; or that no line leads round. */
export type SawnOutline =
  | {
      readonly kind: "ok";
      readonly lines: readonly SawLine[];
      readonly kept: Path;
      readonly tight: readonly MarkedPlace[];
    }
  | { readonly kind: "no-line" };

/**
 * Edges shorter than this, mm, are what is left where an offset meets the rounding of the outline's own vertices: no reader
 * and no hand can follow them.
 */
const short = 10 * tolerance.exact;

/** The saw lines of an outline with the places that are tighter than the blade's least radius, each with its relief cut. */
export function sawnOutline({ outline, blank, allowance, kerf, radius }: SawnOutlineInput): SawnOutline {
  const sawn = sawLines({ outline, blank, allowance, kerf });
  if (sawn.kind !== "ok") return sawn;
  const lines = sawn.lines.map(({ side, path }) => ({ side, path: withoutShort(path, short) }));
  const left = keptOutline(blank, lines, kerf);
  if (left.kind !== "ok") return { kind: "no-line" };
  const kept = withoutShort(left.path, short);
  const paths = lines.map(({ path }) => path);
  const tight = lines.flatMap(({ side, path }) =>
    tightPlaces(path, radius).map((place): MarkedPlace => {
      const { x, y } = place;
      return { ...place, side, relief: reliefCut({ at: { x, y }, side, lines: paths, kept, blank, kerf }) };
    }),
  );
  return { kind: "ok", lines, kept, tight };
}

/** Whether a blade follows every place of an outline's saw lines. */
export function bladeFollows({ outline, blank, allowance, kerf, radius }: SawnOutlineInput): boolean {
  const sawn = sawLines({ outline, blank, allowance, kerf });
  return sawn.kind === "ok" && sawn.lines.every(({ path }) => tightPlaces(path, radius).length === 0);
}
