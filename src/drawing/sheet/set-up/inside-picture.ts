import { circle } from "../../../geometry/circle.ts";
import { extentsOf } from "../../../geometry/measure.ts";
import type { Path } from "../../../geometry/path.ts";
import type { Point } from "../../../geometry/point.ts";
import type { Annotated } from "../annotate.ts";
import { placed } from "../moved.ts";
import type { SheetLine } from "../sheet.ts";
import { arrow, stroke } from "../strokes.ts";
import type { Named, Way } from "./guided-picture.ts";
import { nameAt } from "./name-at.ts";
import { namedPicture } from "./named-picture.ts";

/** An opening of a template: its name, its guided edge, the finished recess, where the bit goes in, and the cutter's way round it. */
export type ShownOpening = {
  readonly name: string;
  readonly edge: Path;
  readonly recess: Path;
  readonly plunge: Point;
  readonly tool: readonly Way[];
};

/** What the picture of an inside template on its work shows, from above as it lies before whoever cuts; mm. The grain runs along x. */
export type InsidePicture = {
  readonly plate: Path;
  readonly under: Path;
  readonly openings: readonly ShownOpening[];
  readonly cutter: number;
  readonly guide: number;
  readonly clamps: readonly (Named & { readonly arm: Path })[];
  readonly handholds: readonly Named[];
  readonly holes: readonly { readonly at: Point; readonly diameter: number; readonly name: string }[];
};

/** Half the length of the arrow along the grain and how far it stands under the plate, mm on paper. */
const grain = { half: 14, under: 5 } as const;

/** The picture at a scale, with what everything is; or what found no place to be named. */
export function insidePicture(given: InsidePicture, scale: number): Annotated {
  const { plate, under, openings, cutter, guide, clamps, handholds, holes } = given;
  const at = ({ x, y }: Point): Point => ({ x: x * scale, y: y * scale });
  const path = (one: Path, weight: SheetLine["weight"]): SheetLine => ({ weight, path: placed(one, scale) });
  const fibre = grainAt(plate, scale);
  const lines: SheetLine[] = [
    path(plate, "edge"),
    path(under, "hidden"),
    ...openings.flatMap(({ edge, recess, plunge, tool }) => [
      path(edge, "station"),
      path(recess, "outline"),
      path(circle(plunge, cutter / 2), "cut"),
      ...(guide === cutter ? [] : [path(circle(plunge, guide / 2), "edge")]),
      ...tool.flatMap((way) => {
        const [from, to] = [at(way.from), at(way.to)];
        return [stroke("edge", from, to), arrow(to, Math.atan2(to.y - from.y, to.x - from.x))];
      }),
    ]),
    ...clamps.flatMap((clamp) => [path(clamp.path, "edge"), path(clamp.arm, "edge")]),
    ...handholds.map((one) => path(one.path, "edge")),
    ...holes.map((hole) => path(circle(hole.at, hole.diameter / 2), "edge")),
    ...[stroke("centre", fibre.from, fibre.to), arrow(fibre.to, 0), arrow(fibre.from, Math.PI)],
  ];
  return namedPicture(lines, namesOf(given, scale));
}

/** Every way round, in steps of 30 degrees, upright ways first, since a plate is long and low. */
const round = [90, -90, 60, 120, -60, -120, 30, 150, -30, -150, 0, 180];

function namesOf({ plate, under, openings, clamps, handholds, holes }: InsidePicture, scale: number) {
  const at = ({ x, y }: Point): Point => ({ x: x * scale, y: y * scale });
  const middle = (one: Path): Point => {
    const { minX, maxX, minY, maxY } = extentsOf([one])!;
    return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  };
  const name = (text: string, tip: Point, radius = 0) => nameAt(text, at(tip), radius * scale, round);
  return [
    ...openings.map((opening) => name(opening.name, opening.edge.points[0]!)),
    ...openings.slice(0, 1).map(({ plunge }) => name("BIT GOES IN HERE", plunge)),
    ...openings.slice(0, 1).map(({ tool }) => name("CUTTER'S WAY, SEEN FROM THE WORK", tool[0]!.from)),
    name("WORK UNDER THE PLATE", under.points[Math.floor(under.points.length / 3)]!),
    ...clamps.map((clamp) => name(clamp.name, middle(clamp.path))),
    ...handholds.map((one) => name(one.name, middle(one.path))),
    ...holes.map((hole) => name(hole.name, hole.at, hole.diameter / 2)),
    nameAt("GRAIN", grainAt(plate, scale).to, 0, [0, -30, 30]),
  ];
}

/** The arrow along the grain, under the middle of the plate, mm on paper. */
function grainAt(plate: Path, scale: number): { readonly from: Point; readonly to: Point } {
  const { minX, maxX, minY } = extentsOf([plate])!;
  const [x, y] = [((minX + maxX) / 2) * scale, minY * scale - grain.under];
  return { from: { x: x - grain.half, y }, to: { x: x + grain.half, y } };
}
