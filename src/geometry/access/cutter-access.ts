import { outlinesWhere } from "../arrangement/outline.ts";
import { overlay } from "../boolean/overlay.ts";
import { sharedOutline } from "../boolean/shared-outline.ts";
import { offsetRegion } from "../offset/offset-region.ts";
import type { Path } from "../path.ts";
import type { Piece, Region } from "../region.ts";
import { withoutShort } from "../simplify/without-short.ts";
import { tolerance } from "../tolerance.ts";
import type { Problem } from "../validate/problem.ts";
import { validateRegion } from "../validate/validate-region.ts";
import { type Leftover, leftoversFrom } from "./leftover.ts";

/**
 * What a round cutter can do. `reached` is the area it can sweep (inside) or the shape it can bring out (outside);
 * `touched` the parts of the outlines that it can touch, with the region on their left; `left` what it leaves.
 */
export type CutterAccess =
  | { readonly outcome: "clear"; readonly reached: Region; readonly touched: readonly Path[] }
  | {
      readonly outcome: "leaves";
      readonly reached: Region;
      readonly touched: readonly Path[];
      readonly left: readonly Leftover[];
    }
  | { readonly outcome: "shut" }
  | { readonly outcome: "invalid"; readonly problems: readonly Problem[] };

/**
 * What of a region's outlines a cutter of a radius (mm, more than 0) can touch, and what it leaves.
 *
 * `inside`: the cutter stays within the region; it reaches what is left of the region inset by the radius
 * and outset again. `outside`: the cutter stays out of the region, round it and in its holes; the shape that it
 * brings out is the region outset and inset again. `clear` when nothing deeper than `tolerance.exact` is left; `leaves`
 * when something is, deepest first; `shut` when an inside cutter fits in nowhere; `invalid` when the region is not good
 * or empty, or the radius not more than `tolerance.exact`. A place just as wide as the cutter counts as too narrow: its
 * centre has no area to be in there.
 */
export function cutterAccess(region: Region, radius: number, side: "inside" | "outside"): CutterAccess {
  const problems = validateRegion(region).filter(({ code }) => code !== "repeated-point");
  if (region.length === 0) problems.push({ code: "no-area", path: 0, index: 0 });
  if (!(Number.isFinite(radius) && radius > tolerance.exact))
    problems.push({ code: "not-finite", path: 0, index: 0 });
  if (problems.length > 0) return { outcome: "invalid", problems };
  const reached = thereAndBack(region, side === "inside" ? -radius : radius);
  if (reached.length === 0) return { outcome: "shut" };
  const over = overlay(region, reached);
  const { arrangement, inFirst, inSecond } = over;
  const loops = outlinesWhere(arrangement, (winding) =>
    side === "inside" ? inFirst(winding) && !inSecond(winding) : inSecond(winding) && !inFirst(winding),
  );
  const left = leftoversFrom(loops, over);
  const touched = sharedOutline(over);
  return left.length === 0
    ? { outcome: "clear", reached, touched }
    : { outcome: "leaves", reached, touched, left };
}

/**
 * How long the rests are that are left out on the way back, mm: where a drawn outline bends by a millionth of a radian at a join its
 * parallel rounds that, and so many edges next to nothing long lead the way back astray. Far below `tolerance.exact` in what
 * leaving one out moves the outline aside.
 */
const rest = 2e-5;

/**
 * How long such rests may be for a distance of 1 mm: joins of numbers that were rounded to a millionth bend by some millionths of a radian. It is
 * left out only where the way back is lost otherwise.
 */
const restOfRounding = 6e-6;

function withoutRests({ outer, holes }: Piece, short: number): Piece {
  return { outer: withoutShort(outer, short), holes: holes.map((hole) => withoutShort(hole, short)) };
}

/** A good region offset by a distance and back; empty where nothing was left. */
function thereAndBack(region: Region, distance: number): Region {
  const there = offsetRegion(region, distance);
  if (there.outcome !== "ok" && there.outcome !== "split") return [];
  for (const short of [rest, restOfRounding * Math.abs(distance)]) {
    const cleaned = there.region.map((piece) => withoutRests(piece, short));
    const back = offsetRegion(cleaned, -distance);
    if (back.outcome === "ok" || back.outcome === "split") return back.region;
  }
  return [];
}
