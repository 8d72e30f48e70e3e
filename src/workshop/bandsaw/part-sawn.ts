import { offsetPath } from "../../geometry/offset/offset-path.ts";
import type { Path } from "../../geometry/path.ts";
import { nearestPlace } from "../../geometry/path-measures/nearest-place.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { withoutShort } from "../../geometry/simplify/without-short.ts";
import { tolerance } from "../../geometry/tolerance.ts";
import { type LinesWithin, type PartLine, partLines, type SawnShape } from "./part-lines.ts";
import { type Relief, reliefCut } from "./relief-cut.ts";
import { type TightPlace, tightPlaces } from "./tight-places.ts";
import { type WastePins, wastePins } from "./waste-pins.ts";

/** A place that the blade can't follow: which way leads out of the wood there, degrees from x, and the way in to it. */
export type PartTight = TightPlace & { readonly outward: number; readonly relief: Relief };

/**
 * A part as it is sawn: its lines in their order, `entry` the cut that leads in to a line that goes all round, the places tighter than
 * the blade, and the index pins' places in the waste; or that no line leads round.
 */
export type PartSawn =
  | {
      readonly kind: "ok";
      readonly lines: readonly PartLine[];
      readonly entry: Relief | null;
      readonly tight: readonly PartTight[];
      readonly pins: WastePins;
    }
  | { readonly kind: "no-line" };

/** Shorter edges are what is left where an offset meets the rounding of an outline's own vertices, mm. */
const short = 10 * tolerance.exact;

/** A part's saw lines with what goes with them, for a blade that follows no less than `radius`, mm. */
export function partSawn(shape: SawnShape, within: LinesWithin, radius: number): PartSawn {
  const { blank, allowance, kerf } = within;
  const made = partLines(shape, within);
  const grown = offsetPath(shape.outline, allowance);
  if (made.kind !== "ok" || grown.outcome !== "ok") return { kind: "no-line" };
  const kept = grown.path;
  const lines = made.lines.map(({ cut, path }) => ({ cut, path: withoutShort(path, short) }));
  const paths = lines.map(({ path }) => path);
  const relief = (at: { x: number; y: number }, outward: number) =>
    reliefCut({ at, outward, lines: paths, kept, blank, kerf, prefer: "short" });
  const tight = paths.flatMap((path) =>
    tightPlaces(path, radius).map((place): PartTight => {
      const { x, y } = place;
      const outward = outwardAt(shape.outline, { x, y });
      return { ...place, outward, relief: relief({ x, y }, outward) };
    }),
  );
  const round = paths.find(isRound)?.points[0];
  const entry = round === undefined ? null : relief({ x: round.x, y: round.y }, 0);
  const cuts = [entry, ...tight.map((place) => place.relief)].flatMap((way) =>
    way?.kind === "cut" ? [way.path] : [],
  );
  return {
    kind: "ok",
    lines,
    entry,
    tight,
    pins: wastePins({ blank, kept, cuts: [...paths, ...cuts], kerf }),
  };
}

/** Whether a blade follows all of a part's saw lines. */
export function followsPart(shape: SawnShape, within: LinesWithin, radius: number): boolean {
  if (bulgesTooTight(shape, within, radius)) return false;
  const made = partLines(shape, within);
  return made.kind === "ok" && made.lines.every(({ path }) => tightPlaces(path, radius).length === 0);
}

/**
 * Whether an outward arc of an outline, moved to its saw line, is tighter than the blade already: most blades are turned down by that, without a
 * line having to be drawn. A board's ends are sawn straight across, so its rounded corners aren't followed.
 */
function bulgesTooTight(
  { kind, outline }: SawnShape,
  { allowance, kerf, blank }: LinesWithin,
  radius: number,
): boolean {
  if (kind === "board") return false;
  const out = allowance + kerf / 2;
  return segmentsOf(outline).some((segment) => {
    if (segment.kind !== "arc" || segment.sweep < 0) return false;
    const moved = segment.radius + out;
    const { centre } = segment;
    const middle = pointOn(segment, 0.5);
    const x = centre.x + ((middle.x - centre.x) * moved) / segment.radius;
    return moved < radius - tolerance.exact && x > blank.minX && x < blank.maxX;
  });
}

/** Whether a line ends where it begins, so that nothing leads in to it. */
function isRound({ points }: Path): boolean {
  const [first, last] = [points[0]!, points.at(-1)!];
  return Math.hypot(first.x - last.x, first.y - last.y) < tolerance.contact;
}

/** The way out of the wood at a place of a saw line: from the nearest place of the finished outline to it, degrees from x. */
function outwardAt(outline: Path, at: { readonly x: number; readonly y: number }): number {
  const near = nearestPlace(outline, at);
  if (near.kind !== "ok") return 0;
  return (Math.atan2(at.y - near.point.y, at.x - near.point.x) * 180) / Math.PI;
}
