import { circle } from "../../../geometry/circle.ts";
import { extentsOf } from "../../../geometry/measure.ts";
import type { Path } from "../../../geometry/path.ts";
import type { Point } from "../../../geometry/point.ts";
import { polygon } from "../../../geometry/polygon.ts";
import type { Annotated } from "../annotate.ts";
import { placed } from "../moved.ts";
import type { SheetLine } from "../sheet.ts";
import { arrow, stroke } from "../strokes.ts";
import { nameAt } from "./name-at.ts";
import { namedPicture } from "./named-picture.ts";

/** A line from a place to another, mm, with its head at the second. */
export type Way = { readonly from: Point; readonly to: Point };

/** Something round or square on a fixture, with what is written at it. */
export type Named = { readonly path: Path; readonly name: string };

/**
 * What the picture of a guided set-up shows, from above as it lies before whoever cuts; mm. `start` and `end` are the middles of the cutter at the run-in's
 * beginning and the run-out's end, `tool` the cutter's way as seen from the work, `push` the way in which what moves is pushed.
 */
export type GuidedPicture = {
  readonly template: Path;
  readonly edge: Path;
  readonly part: Path;
  /** What of its outline is cut. */
  readonly run: Path;
  readonly batten: Path | null;
  /** What is scribed on the base, such as the blank's edges. */
  readonly marks: readonly Path[];
  readonly clamps: readonly (Named & { readonly arm: Path })[];
  readonly handholds: readonly Named[];
  readonly holes: readonly { readonly at: Point; readonly diameter: number; readonly name: string }[];
  readonly cutter: { readonly diameter: number; readonly name: string };
  readonly guide: { readonly diameter: number; readonly name: string };
  readonly start: Point;
  readonly end: Point;
  readonly startWords: string;
  readonly endWords: string;
  readonly rotation: "ccw" | "cw";
  readonly tool: readonly Way[];
  readonly push: { readonly way: Way; readonly words: string };
  /** Which way the fibres run, degrees from x, counter-clockwise. */
  readonly grain: number;
};

/** The picture at a scale, with what everything is; or what found no place to be named. */
export function guidedPicture(given: GuidedPicture, scale: number): Annotated {
  const at = ({ x, y }: Point): Point => ({ x: x * scale, y: y * scale });
  const path = (one: Path, weight: SheetLine["weight"]): SheetLine => ({ weight, path: placed(one, scale) });
  const { template, edge, part, batten, clamps, handholds, holes, cutter, guide, start, end } = given;
  const radius = (cutter.diameter / 2) * scale;
  const ring = (middle: Point, diameter: number, weight: SheetLine["weight"]) =>
    path(circle(middle, diameter / 2), weight);
  const lines: SheetLine[] = [
    path(template, "edge"),
    path(part, "outline"),
    path(edge, "station"),
    ...(batten === null ? [] : [path(batten, "edge")]),
    ...given.marks.map((mark) => path(mark, "hidden")),
    ...clamps.flatMap((clamp) => [path(clamp.path, "edge"), path(clamp.arm, "edge")]),
    ...handholds.map((one) => path(one.path, "edge")),
    ...holes.map((hole) => ring(hole.at, hole.diameter, "edge")),
    ring(start, cutter.diameter, "cut"),
    ...(guide.diameter === cutter.diameter ? [] : [ring(start, guide.diameter, "edge")]),
    ring(end, cutter.diameter, "hidden"),
    ...turning(at(start), radius + 2.5, given.rotation),
    ...given.tool.flatMap((way) => arrowLines(at(way.from), at(way.to))),
    ...broadArrow(at(given.push.way.from), at(given.push.way.to)),
    ...grainLines(given, scale),
  ];
  return namedPicture(lines, namesOf(given, scale));
}

/** Every way round, in steps of 30 degrees, level ways first. */
const round = [0, 180, 30, 150, -30, -150, 60, 120, -60, -120, 90, -90];

function namesOf(given: GuidedPicture, scale: number) {
  const at = ({ x, y }: Point): Point => ({ x: x * scale, y: y * scale });
  const { clamps, handholds, holes, cutter, guide, start, end, batten, edge } = given;
  const pointed = (text: string, tip: Point) => nameAt(text, at(tip), 0, round);
  const around = (text: string, middle: Point, diameter: number) =>
    nameAt(text, at(middle), (diameter / 2) * scale, round);
  const middle = (one: Path): Point => {
    const { minX, maxX, minY, maxY } = extentsOf([one])!;
    return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  };
  const share = ({ points }: Path, part: number): Point => points[Math.floor(points.length * part)]!;
  const arrow = given.tool[Math.floor(given.tool.length / 2)];
  return [
    pointed(`GUIDED EDGE, ${guide.name} ON IT`, share(edge, 0.4)),
    pointed("WORK, ITS FINISHED EDGE", share(given.run, 0.7)),
    around(`${given.startWords}: ${cutter.name}`, start, cutter.diameter),
    around(given.endWords, end, cutter.diameter),
    pointed(given.push.words, given.push.way.from),
    ...(arrow === undefined ? [] : [pointed("CUTTER'S WAY, SEEN FROM THE WORK", arrow.from)]),
    ...(batten === null ? [] : [pointed("BATTEN: JOINT ON IT", middle(batten))]),
    ...clamps.map((clamp) => pointed(clamp.name, middle(clamp.path))),
    ...handholds.map((one) => pointed(one.name, middle(one.path))),
    ...holes.map((hole) => around(hole.name, hole.at, hole.diameter)),
    nameAt("GRAIN", grainEnds(given, scale)[1], 0, round),
  ];
}

function arrowLines(from: Point, to: Point): SheetLine[] {
  return [stroke("edge", from, to), arrow(to, Math.atan2(to.y - from.y, to.x - from.x))];
}

/** Which way the spindle turns: most of a circle round the cutter, with a head. */
function turning({ x, y }: Point, radius: number, rotation: "ccw" | "cw"): SheetLine[] {
  const way = rotation === "ccw" ? 1 : -1;
  const on = (degrees: number): Point => {
    const angle = (degrees * Math.PI) / 180;
    return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
  };
  const [from, to] = [90, 90 + way * 150];
  const bulge = Math.tan((way * 150 * Math.PI) / 180 / 4);
  const points = [
    { ...on(from), bulge },
    { ...on(to), bulge: 0 },
  ];
  const heading = ((to + way * 90) * Math.PI) / 180;
  return [{ weight: "edge", path: { closed: false, points } }, arrow(on(to), heading)];
}

/** How wide a broad arrow's shaft and head are, and how long its head, mm on paper. */
const broad = { shaft: 3, head: 7, long: 6 } as const;

/** An arrow as an outline, for what a person does. */
function broadArrow(from: Point, to: Point): SheetLine[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const on = (along: number, aside: number): Point => ({
    x: from.x + ux * along - uy * aside,
    y: from.y + uy * along + ux * aside,
  });
  const { shaft, head, long } = broad;
  const neck = length - long;
  const corners = [
    ...[on(0, -shaft / 2), on(neck, -shaft / 2), on(neck, -head / 2), on(length, 0)],
    ...[on(neck, head / 2), on(neck, shaft / 2), on(0, shaft / 2)],
  ];
  return [{ weight: "outline", path: polygon(corners) }];
}

/** Half the length of the arrow along the grain, mm on paper. */
const grainReach = 14;

/** Both ends of the arrow along the fibres, in the middle of the work, mm on paper. */
function grainEnds({ part, grain }: GuidedPicture, scale: number): readonly [Point, Point] {
  const { minX, maxX, minY, maxY } = extentsOf([part])!;
  const middle = { x: ((minX + maxX) / 2) * scale, y: ((minY + maxY) / 2) * scale };
  const angle = (grain * Math.PI) / 180;
  const [c, s] = [Math.cos(angle) * grainReach, Math.sin(angle) * grainReach];
  return [
    { x: middle.x - c, y: middle.y - s },
    { x: middle.x + c, y: middle.y + s },
  ];
}

/** An arrow with two heads: the grain has no beginning. */
function grainLines(given: GuidedPicture, scale: number): SheetLine[] {
  const [from, to] = grainEnds(given, scale);
  const angle = (given.grain * Math.PI) / 180;
  return [stroke("centre", from, to), arrow(to, angle), arrow(from, angle + Math.PI)];
}
