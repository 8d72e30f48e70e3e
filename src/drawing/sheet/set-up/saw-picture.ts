import { circle } from "../../../geometry/circle.ts";
import type { Path } from "../../../geometry/path.ts";
import type { Point } from "../../../geometry/point.ts";
import type { Annotated } from "../annotate.ts";
import { placed } from "../moved.ts";
import type { SheetLine } from "../sheet.ts";
import { arrow, stroke } from "../strokes.ts";
import type { Way } from "./guided-picture.ts";
import { nameAt } from "./name-at.ts";
import { namedPicture } from "./named-picture.ts";

/**
 * What the picture of a cut at the bandsaw shows, the face up that lies up there, mm: the blank, the finished outline, the cut's own lines and those of other
 * cuts on the same drawing, relief cuts, tight places with their radius, pins in the waste, and where each line begins, in which direction. The grain runs along x.
 */
export type SawPicture = {
  readonly blank: Path;
  readonly part: Path;
  readonly lines: readonly Path[];
  readonly others: readonly Path[];
  readonly reliefs: readonly Path[];
  readonly tight: readonly { readonly at: Point; readonly radius: number }[];
  readonly pins: readonly { readonly at: Point; readonly diameter: number }[];
  readonly feed: readonly Way[];
};

/** The radius of the ring round a tight place, mm of the work. */
const ring = 4;

/** Half the length of the arrow along the grain, and how far it stands under the blank, mm on paper. */
const grain = { half: 14, under: 5 } as const;

/** The picture at a scale, with what everything is; or what found no place to be named. */
export function sawPicture(given: SawPicture, scale: number): Annotated {
  const { blank, part, lines, others, reliefs, tight, pins, feed } = given;
  const at = ({ x, y }: Point): Point => ({ x: x * scale, y: y * scale });
  const path = (one: Path, weight: SheetLine["weight"]): SheetLine => ({ weight, path: placed(one, scale) });
  const fibre = grainAt(given, scale);
  const drawn: SheetLine[] = [
    path(blank, "edge"),
    path(part, "outline"),
    ...lines.map((line) => path(line, "station")),
    ...others.map((line) => path(line, "hidden")),
    ...reliefs.map((line) => path(line, "cut")),
    ...tight.map((place) => path(circle(place.at, ring), "edge")),
    ...pins.map((pin) => path(circle(pin.at, pin.diameter / 2), "edge")),
    ...feed.flatMap(({ from, to }) => {
      const heading = Math.atan2(to.y - from.y, to.x - from.x);
      return [stroke("edge", at(from), at(to)), arrow(at(to), heading)];
    }),
    ...[stroke("centre", fibre.from, fibre.to), arrow(fibre.to, 0), arrow(fibre.from, Math.PI)],
  ];
  return namedPicture(drawn, namesOf(given, scale));
}

/** Every way round, in steps of 30 degrees, upright ways first, since a blank is long and low. */
const round = [60, 120, -60, -120, 90, -90, 30, 150, -30, -150, 0, 180];

function namesOf(given: SawPicture, scale: number) {
  const { part, lines, others, reliefs, tight, pins, feed } = given;
  const at = ({ x, y }: Point): Point => ({ x: x * scale, y: y * scale });
  const on = ({ points }: Path, share: number): Point => points[Math.floor((points.length - 1) * share)]!;
  const name = (text: string, tip: Point, radius = 0) => nameAt(text, at(tip), radius * scale, round);
  return [
    ...feed.map((way, i) => name(feed.length === 1 ? "IN HERE" : `IN HERE, LINE ${i + 1}`, way.from)),
    ...tight.map(({ at: place, radius }) =>
      name(radius > 0 ? `R ${radius.toFixed(2)}` : "CORNER", place, ring),
    ),
    ...lines.slice(0, 1).map((line) => name("SAW LINE OF THIS CUT", on(line, 0.5))),
    ...others.slice(0, 1).map((line) => name("ANOTHER CUT'S LINE", on(line, 0.5))),
    ...reliefs.slice(0, 1).map((line) => name("RELIEF CUTS FIRST", line.points[0]!)),
    name("FINISHED OUTLINE", on(part, 0.25)),
    ...pins.map((pin) => name(`INDEX PIN ${pin.diameter}`, pin.at, pin.diameter / 2)),
    nameAt("GRAIN", grainAt(given, scale).to, 0, [0, -30, 30]),
  ];
}

/** The arrow along the grain, under the middle of the blank, mm on paper. */
function grainAt({ blank }: SawPicture, scale: number): { readonly from: Point; readonly to: Point } {
  const xs = blank.points.map(({ x }) => x * scale);
  const y = Math.min(...blank.points.map((point) => point.y * scale)) - grain.under;
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  return { from: { x: middle - grain.half, y }, to: { x: middle + grain.half, y } };
}
