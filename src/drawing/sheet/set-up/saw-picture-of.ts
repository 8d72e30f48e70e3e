import type { Extents } from "../../../geometry/measure.ts";
import { mirrored } from "../../../geometry/mirror.ts";
import type { Path } from "../../../geometry/path.ts";
import { directionOn } from "../../../geometry/path-measures/segment-places.ts";
import type { Point } from "../../../geometry/point.ts";
import { rectangleOf } from "../../../geometry/rectangle.ts";
import { segmentLength, segmentsOf } from "../../../geometry/segment.ts";
import type { Relief } from "../../../workshop/bandsaw/relief-cut.ts";
import { blankInPlan, blankInSide } from "../../../workshop/blank-place.ts";
import type { Model } from "../../../workshop/model.ts";
import type { PartSawing } from "../../../workshop/part-sawing.ts";
import type { SawSetUp } from "../../../workshop/sequence/saw-set-ups.ts";
import type { Way } from "./guided-picture.ts";
import type { SawPicture } from "./saw-picture.ts";

/** How long the arrow is that leads in to a line, mm. */
const arrowLength = 30;

/** The picture of one cut at the bandsaw with the face up that is up there; nothing where no line leads round the outline. */
export function sawPictureOf(model: Model, setUp: SawSetUp): SawPicture | undefined {
  const sawing = model.partSawing().find(({ file }) => file === setUp.file);
  const right = sawing === undefined ? neckPicture(model, setUp) : partPicture(sawing, setUp);
  if (right === undefined) return undefined;
  return isTurned(model, setUp, sawing) ? turned(right) : right;
}

/** Whether what is drawn right-handed from the front, head at the left, is turned over along its length: for a left hand, a bass wing, a face down. */
function isTurned({ spec }: Model, { cut, up }: SawSetUp, sawing: PartSawing | undefined): boolean {
  const left = spec.hand === "left";
  if (sawing === undefined) return cut === "plan" && left;
  return ((sawing.part === "wing-bass") !== left) !== (up === "back");
}

function neckPicture({ instrument, sawing }: Model, { cut }: SawSetUp): SawPicture | undefined {
  const view = cut === "plan" ? "plan" : "side";
  const sawn = sawing.cuts[view];
  if (sawn.kind !== "ok") return undefined;
  const blank = view === "plan" ? blankInPlan(sawing.place) : blankInSide(sawing.place);
  const lines = sawn.lines.map(({ path }) => path);
  return {
    ...{ blank: rectangleOf(blank), part: instrument.neckProfile[view], lines, others: [], pins: [] },
    reliefs: cutsOf(sawn.tight.map(({ relief }) => relief)),
    tight: sawn.tight.map(({ x, y, radius }) => ({ at: { x, y }, radius })),
    feed: lines.map((line) => leadIn(line, "either")),
  };
}

function partPicture({ shape, blank, cuts }: PartSawing, { cut, leads }: SawSetUp): SawPicture | undefined {
  const { sawn } = cuts;
  if (sawn.kind !== "ok") return undefined;
  const own = sawn.lines.filter((line) => line.cut === cut).map(({ path }) => path);
  const reliefs = cutsOf([sawn.entry, ...sawn.tight.map(({ relief }) => relief)]);
  const entry = sawn.entry?.kind === "cut" ? sawn.entry.path : undefined;
  const isOwn = ({ x, y }: Point) => own.some((line) => line.points.some((p) => near(p, { x, y }, blank)));
  const tight = sawn.tight.filter(isOwn);
  return {
    ...{ blank: rectangleOf(blank), part: shape.outline, lines: own },
    others: sawn.lines.filter((line) => line.cut !== cut).map(({ path }) => path),
    reliefs: cut === "joint" ? [] : reliefs,
    tight: tight.map(({ x, y, radius }) => ({ at: { x, y }, radius })),
    pins: sawn.pins.kind === "none" ? [] : sawn.pins.pins.map(({ at, diameter }) => ({ at, diameter })),
    feed: own.map((line) => leadIn(entry !== undefined && cut === "outline" ? entry : line, leads)),
  };
}

/** Whether a tight place's own vertex is that of a line, within a thousandth of the blank. */
function near(p: Point, q: Point, { minX, maxX }: Extents): boolean {
  return Math.hypot(p.x - q.x, p.y - q.y) < (maxX - minX) / 1000;
}

function cutsOf(ways: readonly (Relief | null)[]): Path[] {
  return ways.flatMap((way) => (way?.kind === "cut" ? [way.path] : []));
}

/** An arrow to the beginning of a line in its direction: at the end that goes first, or where the line is written from. */
function leadIn({ points }: Path, leads: SawSetUp["leads"]): Way {
  const [first, last] = [points[0]!, points.at(-1)!];
  const back = leads === "either" ? false : leads === "head" ? last.x < first.x : last.x > first.x;
  const real = segmentsOf({ closed: false, points }).filter((segment) => segmentLength(segment) > 0);
  const way = back ? directionOn(real.at(-1)!, 1) : directionOn(real[0]!, 0);
  const [to, sign] = back ? [last, -1] : [first, 1];
  return {
    from: { x: to.x - sign * way.x * arrowLength, y: to.y - sign * way.y * arrowLength },
    to: { x: to.x, y: to.y },
  };
}

/** The same with the work turned over along its length. */
function turned({ blank, part, lines, others, reliefs, tight, pins, feed }: SawPicture): SawPicture {
  const over = (one: Path) => mirrored(one, "y");
  const at = ({ x, y }: Point): Point => ({ x, y: 0 - y });
  return {
    ...{ blank: over(blank), part: over(part), lines: lines.map(over), others: others.map(over) },
    reliefs: reliefs.map(over),
    tight: tight.map((place) => ({ ...place, at: at(place.at) })),
    pins: pins.map((pin) => ({ ...pin, at: at(pin.at) })),
    feed: feed.map(({ from, to }) => ({ from: at(from), to: at(to) })),
  };
}
