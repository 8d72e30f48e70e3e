import type { Path } from "../../geometry/path.ts";
import { directionOn, pointOn } from "../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import { tolerance } from "../../geometry/tolerance.ts";

/** A place of a saw line that turns tighter than the blade: where, its radius (mm, 0 at a corner) and the hand it turns to. */
export type TightPlace = {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly turn: "left" | "right";
};

type Bend = TightPlace & { readonly start: number; readonly end: number };

/**
 * The places where an open path turns tighter than `least` (mm), to either hand: arcs of less radius, and corners, where the
 * direction changes by more than `tolerance.kink`. Bends to the same hand that are no farther apart along the path than
 * `least` are one place, told by the tightest of them.
 */
export function tightPlaces(path: Path, least: number): TightPlace[] {
  const places: Bend[] = [];
  for (const bend of bendsOf(path).filter(({ radius }) => radius < least - tolerance.exact)) {
    const last = places.at(-1);
    if (last === undefined || last.turn !== bend.turn || bend.start - last.end > least) places.push(bend);
    else places[places.length - 1] = { ...(bend.radius < last.radius ? bend : last), end: bend.end };
  }
  return places.map(({ x, y, radius, turn }) => ({ x, y, radius, turn }));
}

/** Every bend of a path: its arcs, told by their middles, and its corners. */
function bendsOf(path: Path): Bend[] {
  const bends: Bend[] = [];
  const hand = (turned: number) => (turned > 0 ? "left" : "right");
  let before: Point | undefined;
  let along = 0;
  for (const segment of segmentsOf(path)) {
    const length = segmentLength(segment);
    if (length === 0) continue;
    const here = directionOn(segment, 0);
    const turned =
      before === undefined
        ? 0
        : Math.atan2(before.x * here.y - before.y * here.x, before.x * here.x + before.y * here.y);
    if (Math.abs(turned) > (tolerance.kink * Math.PI) / 180)
      bends.push({ ...pointOf(segment.from), radius: 0, turn: hand(turned), start: along, end: along });
    if (segment.kind === "arc") {
      const middle = pointOf(pointOn(segment, 0.5));
      const { radius, sweep } = segment;
      bends.push({ ...middle, radius, turn: hand(sweep), start: along, end: along + length });
    }
    along += length;
    before = directionOn(segment, 1);
  }
  return bends;
}

function pointOf({ x, y }: Point): Point {
  return { x, y };
}
