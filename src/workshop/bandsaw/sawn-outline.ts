import type { Extents } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { withoutShort } from "../../geometry/simplify/without-short.ts";
import { tolerance } from "../../geometry/tolerance.ts";
import { keptOutline } from "./kept-outline.ts";
import { longSides } from "./long-sides.ts";
import { type Relief, reliefCut } from "./relief-cut.ts";
import { kerfWithin, type SawLine, sawLines } from "./saw-lines.ts";
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
      const outward = side === "high" ? 90 : -90;
      return {
        ...place,
        side,
        relief: reliefCut({ at: { x, y }, outward, lines: paths, kept, blank, kerf }),
      };
    }),
  );
  return { kind: "ok", lines, kept, tight };
}

/** Whether a blade follows every place of an outline's saw lines. */
export function bladeFollows(given: SawnOutlineInput): boolean {
  if (bendsTooTight(given)) return false;
  const { outline, blank, allowance, kerf, radius } = given;
  const sawn = sawLines({ outline, blank, allowance, kerf });
  return sawn.kind === "ok" && sawn.lines.every(({ path }) => tightPlaces(path, radius).length === 0);
}

/**
 * Whether an arc of the outline, moved outward to the saw line, is tighter than the blade already: most blades are turned
 * down by that, without a line having to be drawn. Moved toward its centre an arc loses so much of its radius.
 */
function bendsTooTight({ outline, blank, allowance, kerf, radius }: SawnOutlineInput): boolean {
  const sides = longSides(outline);
  if (sides.kind !== "ok") return false;
  const out = allowance + kerf / 2;
  return (["low", "high"] as const).some((side) =>
    segmentsOf(sides[side]).some((segment) => {
      if (segment.kind !== "arc") return false;
      const inward = segment.sweep > 0 === (side === "high");
      const moved = segment.radius + (inward ? -out : out);
      if (moved >= radius - tolerance.exact) return false;
      const { x, y } = pointOn(segment, 0.5);
      const { centre } = segment;
      const share = moved / segment.radius;
      const at = { x: centre.x + share * (x - centre.x), y: centre.y + share * (y - centre.y) };
      const { minX, maxX, minY, maxY } = kerfWithin(blank, side, kerf);
      return at.x > minX && at.x < maxX && at.y > minY && at.y < maxY;
    }),
  );
}
