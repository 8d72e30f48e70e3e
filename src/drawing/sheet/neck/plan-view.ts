import { circle } from "../../../geometry/circle.ts";
import { extentsOf } from "../../../geometry/measure.ts";
import type { Path } from "../../../geometry/path.ts";
import type { Point } from "../../../geometry/point.ts";
import { type Annotated, type Annotation, annotated } from "../annotate.ts";
import { seenAslant } from "../ellipse.ts";
import { leader } from "../leader.ts";
import { stacked, through } from "../linear.ts";
import { across, cornerAt, stillThere } from "../measured-on.ts";
import { placed } from "../moved.ts";
import { type RunningPlace, running } from "../running.ts";
import type { SheetLine, Weight } from "../sheet.ts";
import { stationMark } from "../station-mark.ts";
import { cross, stroke } from "../strokes.ts";
import { pointedAt } from "../view-name.ts";
import { letterOf, type NeckSheetInput } from "./input.ts";

/** Where a dimension's line may stand beside what it measures, mm on paper. */
const shifts = [0, 4, -4, 6, -6, 8, -8, 10, -10];

/** The neck from the front, the nut's edge at the origin, at a scale on paper, with its dimensions. */
export function planView(input: NeckSheetInput, scale: number): Annotated {
  return annotated({ lines: planLines(input, scale), texts: [] }, [
    lengths(input, scale),
    ...stations(input, scale),
    ...widths(input, scale),
    ...names(input, scale),
    overall(input, scale),
    ...tailCorner(input, scale),
  ]);
}

function planLines(input: NeckSheetInput, scale: number): SheetLine[] {
  const { plan, core, face, rods, pins, headAngle, nutThickness } = input;
  const fall = Math.cos((headAngle * Math.PI) / 180);
  const { minX, maxX } = extentsOf([plan, ...pins.map(pinPath)])!;
  const line = (weight: Weight, path: Path): SheetLine => ({ weight, path: placed(path, scale) });
  const at = (weight: Weight, x: number) => {
    const [low, high] = across(plan, x);
    return stroke(weight, scaled(low, scale), scaled(high, scale));
  };
  const edges = core.drop !== 0 || core.slope !== 0 ? [-nutThickness, core.start] : [-nutThickness];
  const holes = face.tuners.map(({ along, y }) => ({ x: -nutThickness - along * fall, y }));
  return [
    line("outline", plan),
    ...edges.map((x) => at("edge", x)),
    ...[0, input.boardLength, input.stringLength].map((x) => at("reference", x)),
    ...rods.map(({ path }) => line("edge", path)),
    stroke("centre", { x: minX * scale - 5, y: 0 }, { x: maxX * scale + 5, y: 0 }),
    ...holes.map((hole) => line("edge", seenAslant(hole, face.hole.face / 2, fall))),
    ...holes.flatMap((hole) => cross(scaled(hole, scale), (face.hole.face / 2) * scale + 1.5)),
    ...pins.map((pin) => line("edge", pinPath(pin))),
    ...pins.flatMap((pin) => cross(scaled(pin, scale), (pin.diameter / 2) * scale + 1.5)),
  ];
}

function pinPath({ x, y, diameter }: NeckSheetInput["pins"][number]): Path {
  return circle({ x, y }, diameter / 2);
}

function scaled({ x, y }: Point, scale: number): Point {
  return { x: x * scale, y: y * scale };
}

/** The widths that the neck is shaped to, where it is held to them. */
function widths(input: NeckSheetInput, scale: number): Annotation[] {
  const { plan, transition, stringLength, face, nutThickness, headAngle, tolerances } = input;
  const { usual, coreWidth } = tolerances;
  const last = Math.max(...face.tuners.map(({ along }) => along)) + face.hole.face / 2;
  const tip = -nutThickness - ((face.length + last) / 2) * Math.cos((headAngle * Math.PI) / 180);
  const places = [
    { name: "width at the nut", x: 0, tolerance: usual },
    { name: "width of the head", x: tip, tolerance: usual },
    { name: "width where the transition starts", x: transition.start, tolerance: usual },
    { name: "width where the transition ends", x: transition.end, tolerance: usual },
    { name: "width of the core", x: stringLength, tolerance: coreWidth },
  ];
  return places.map(({ name, x, tolerance }) => {
    const [from, to] = across(plan, x);
    return through({ name, along: "y", from, to, tolerance }, scale, shifts, stillThere(plan, x, scale));
  });
}

/** Where sections are cut: their upper ends. Under the plan the letter stands with the station's length, on whose line it lies. */
function stations({ plan, sections }: NeckSheetInput, scale: number): Annotation[] {
  return sections.map(({ x }, i) => {
    const [, high] = across(plan, x);
    return stationMark({ letter: letterOf(i), x: x * scale, edge: high.y * scale, outward: 1 });
  });
}

function names(input: NeckSheetInput, scale: number): Annotation[] {
  const { plan, boardLength, stringLength, core } = input;
  const places = [
    { text: "NUT", x: 0 },
    { text: "CORE", x: core.start },
    { text: "BOARD END", x: boardLength },
    { text: "BRIDGE", x: stringLength },
  ];
  return places.map(({ text, x }) => pointedAt(text, x * scale, across(plan, x)[1].y * scale));
}

/** Lengths from the nut's edge, on one line under the plan. */
function lengths(input: NeckSheetInput, scale: number): Annotation {
  const { plan, boardLength, stringLength, transition, core, nutThickness, rods, pins, tolerances } = input;
  const { minX, maxX, minY } = extentsOf([plan])!;
  const at = (x: number, tolerance?: number): RunningPlace => ({ x, y: across(plan, x)[0].y, tolerance });
  const places: RunningPlace[] = [
    { x: minX, y: minY, tolerance: tolerances.usual },
    at(-nutThickness, tolerances.nutThickness),
    at(transition.start, tolerances.transitionStart),
    at(transition.end, tolerances.transitionEnd),
    at(core.start, tolerances.coreStart),
    at(boardLength, tolerances.boardLength),
    at(stringLength, tolerances.stringLength),
    { x: maxX, y: minY, tolerance: tolerances.coreEnd },
    ...stationPlaces(input),
    ...pins.map((pin) => ({
      ...{ x: pin.x, y: extentsOf([pinPath(pin)])!.minY },
      ...(pin.place === null ? {} : { tolerance: pin.place }),
    })),
    ...rods.slice(0, 1).flatMap(({ path }) => {
      const { minX: start, maxX: end } = extentsOf([path])!;
      return [at(start), at(end)];
    }),
  ];
  const origin = across(plan, 0)[0];
  return running("lengths from the nut", origin, places, scale, lowEdge(input) * scale);
}

/** The stations' places; those that the design names for their thickness have a tolerance of their own. */
function stationPlaces({ plan, sections, tolerances }: NeckSheetInput): RunningPlace[] {
  const own: { readonly [name: string]: number } = {
    nut: tolerances.stationNut,
    heel: tolerances.stationHeel,
  };
  return sections.map(({ name, x }, i) => ({
    ...{ x, y: across(plan, x)[0].y, suffix: ` ${letterOf(i)}` },
    tolerance: own[name],
  }));
}

/** Over everything else, since its thin lines would run through what stands under the plan's ends. */
function overall({ plan, tolerances }: NeckSheetInput, scale: number): Annotation {
  const { minX, maxX, maxY } = extentsOf([plan])!;
  const [from, to] = [
    { x: minX, y: maxY },
    { x: maxX, y: maxY },
  ];
  const of = { name: "overall length", along: "x", from, to, tolerance: tolerances.usual } as const;
  return stacked(of, scale, maxY * scale, 1);
}

function lowEdge({ plan, pins }: Pick<NeckSheetInput, "plan" | "pins">): number {
  return extentsOf([plan, ...pins.map(pinPath)])!.minY;
}

function tailCorner({ plan, tolerances }: NeckSheetInput, scale: number): Annotation[] {
  const tail = cornerAt(plan, "greatest");
  if (tail === undefined) return [];
  const text = `R${tail.radius.toFixed(2)} ±${tolerances.corner.toFixed(2)}`;
  const directions = [120, 105, 135, 75, 60, 45];
  return [leader({ text, at: () => scaled(tail.middle, scale), directions })];
}
