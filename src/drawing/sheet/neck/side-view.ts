import { extentsOf } from "../../../geometry/measure.ts";
import type { Point } from "../../../geometry/point.ts";
import { aligned } from "../aligned.ts";
import { angular } from "../angular.ts";
import { type Annotated, type Annotation, annotated } from "../annotate.ts";
import { stacked, through } from "../linear.ts";
import { across, metFrom, stillThere } from "../measured-on.ts";
import { placed } from "../moved.ts";
import type { SheetLine, Weight } from "../sheet.ts";
import { stationMark } from "../station-mark.ts";
import { polyline, stroke } from "../strokes.ts";
import { letterOf, type NeckSheetInput, topAt } from "./input.ts";

/** Beside the station's own line, toward the thinner end first, mm on paper. */
const shifts = [-4, -6, 4, 6, -8, 8, -10, 10, -12, 12];

/** Radii of the core's slope, mm on paper, and of the head's angle, as shares of the head's length. */
const radii = { core: [40, 34, 46, 28, 52, 60, 70], head: [0.5, 0.6, 0.4, 0.7, 0.3, 0.8, 1.2] };

/** The neck from the side, head at the left and front up, the nut's edge at the origin, at a scale on paper, with its dimensions. */
export function sideView(input: NeckSheetInput, scale: number): Annotated {
  return annotated({ lines: sideLines(input, scale), texts: [] }, [
    ...stationEnds(input, scale),
    heelLength(input, scale),
    ...angles(input, scale),
    ...thicknesses(input, scale),
    ...heights(input, scale),
  ]);
}

function sideLines(input: NeckSheetInput, scale: number): SheetLine[] {
  const { side, core, nutThickness } = input;
  const { minX, maxX } = extentsOf([side])!;
  const level = (from: number, to: number) =>
    stroke("reference", { x: from * scale, y: 0 }, { x: to * scale, y: 0 });
  return [
    { weight: "outline", path: placed(side, scale) },
    level(minX, -nutThickness - 1 / scale),
    level(core.start + 1 / scale, maxX),
    ...hiddenHoles(input, scale),
    ...hiddenChannels(input, scale),
  ];
}

/** A place of the head's face, so far from the nut along it. */
function onFace({ nutThickness, headAngle }: NeckSheetInput, along: number): Point {
  const tilt = (headAngle * Math.PI) / 180;
  return { x: -nutThickness - along * Math.cos(tilt), y: -along * Math.sin(tilt) };
}

/** Square into the head from its face, radians. */
function intoHead({ headAngle }: NeckSheetInput): number {
  return -Math.PI / 2 + (headAngle * Math.PI) / 180;
}

/** The holes in the head, which its sides hide: each row's two borders and its axis. Those of pegs widen toward the back. */
function hiddenHoles(input: NeckSheetInput, scale: number): SheetLine[] {
  const rows = [...new Set(input.face.tuners.map(({ along }) => along))];
  const { face, back } = input.face.hole;
  const into = intoHead(input);
  const line = (weight: Weight, along: number, alongBack: number, over: number): SheetLine => {
    const from = onFace(input, along);
    const to = metFrom(input.side, onFace(input, alongBack), into);
    const past = { x: (Math.cos(into) * over) / scale, y: (Math.sin(into) * over) / scale };
    return stroke(
      weight,
      scaled({ x: from.x - past.x, y: from.y - past.y }, scale),
      scaled({ x: to.x + past.x, y: to.y + past.y }, scale),
    );
  };
  return rows.flatMap((along) => [
    line("hidden", along - face / 2, along - back / 2, 0),
    line("hidden", along + face / 2, along + back / 2, 0),
    line("centre", along, along, 2),
  ]);
}

/** Channels and pins' holes, which the neck's side hides; holes past its ends are in no wood that is shown. */
function hiddenChannels(input: NeckSheetInput, scale: number): SheetLine[] {
  const { side, rods, pins } = input;
  const { minX, maxX } = extentsOf([side])!;
  const pocket = (start: number, end: number, floor: number): SheetLine => {
    const corners = [
      { x: start, y: topAt(input, start) },
      { x: start, y: floor },
      { x: end, y: floor },
      { x: end, y: topAt(input, end) },
    ];
    return { weight: "hidden", path: polyline(corners.map((corner) => scaled(corner, scale))) };
  };
  const channels = rods.map(({ path, depth }) => {
    const extents = extentsOf([path])!;
    return pocket(extents.minX, extents.maxX, -depth);
  });
  const holes = pins
    .filter(({ x, diameter }) => x - diameter / 2 > minX && x + diameter / 2 < maxX)
    .map(({ x, diameter, depth }) => {
      const floor = depth === "through" ? across(side, x)[0].y : -depth;
      return pocket(x - diameter / 2, x + diameter / 2, floor);
    });
  return [...channels, ...holes];
}

function scaled({ x, y }: Point, scale: number): Point {
  return { x: x * scale, y: y * scale };
}

function stationEnds({ side, sections }: NeckSheetInput, scale: number): Annotation[] {
  return sections.flatMap(({ x }, i) => {
    const [low, high] = across(side, x);
    const letter = letterOf(i);
    return [
      stationMark({ letter, x: x * scale, edge: high.y * scale, outward: 1 }),
      stationMark({ letter, x: x * scale, edge: low.y * scale, outward: -1 }),
    ];
  });
}

/** The wood at the stations, the head's thickness and the core's depth, each square to what it is measured from. */
function thicknesses(input: NeckSheetInput, scale: number): Annotation[] {
  const { side, sections, stringLength, core, tolerances, face } = input;
  const wood = sections.map(({ name, x }) => {
    const [from, to] = across(side, x);
    const of = { name: `wood at ${name}`, along: "y", from, to, tolerance: tolerances.usual } as const;
    return through(of, scale, shifts, stillThere(side, x, scale));
  });
  const lastHole = Math.max(...face.tuners.map(({ along }) => along)) + face.hole.back / 2;
  const headFace = onFace(input, (face.length + lastHole) / 2);
  const x = (stringLength + extentsOf([side])!.maxX) / 2;
  const front = { x, y: topAt(input, x) };
  const down = -Math.PI / 2 - (core.slope * Math.PI) / 180;
  return [
    ...wood,
    aligned(
      {
        ...{ name: "thickness of the head", from: metFrom(side, headFace, intoHead(input)), to: headFace },
        tolerance: tolerances.headThickness,
      },
      scale,
    ),
    aligned(
      {
        ...{ name: "depth of the core", from: metFrom(side, front, down), to: front },
        tolerance: tolerances.coreDepth,
      },
      scale,
    ),
  ];
}

function angles(input: NeckSheetInput, scale: number): Annotation[] {
  const { core, side, nutThickness, face, tolerances } = input;
  const end = extentsOf([side])!.maxX;
  const found: Annotation[] = [];
  const nut = { x: -nutThickness, y: 0 };
  const tip = onFace(input, face.length);
  if (tip.y < 0) {
    const of = { name: "angle of the head", corner: nut, first: { x: tip.x, y: 0 }, second: tip };
    const shares = radii.head.map((share) => share * face.length * scale);
    const more = { lead: "neither", radii: shares, tolerance: tolerances.headAngle } as const;
    found.push(angular({ ...of, ...more }, scale));
  }
  const start = { x: core.start, y: -core.drop };
  const level = { x: end, y: -core.drop };
  const slope = { x: end, y: topAt(input, end) };
  if (core.slope !== 0) {
    const turn = core.slope > 0 ? { first: slope, second: level } : { first: level, second: slope };
    const side = core.slope > 0 ? "second" : "first";
    const lead = core.drop === 0 ? "neither" : side;
    const of = { name: "slope of the core", corner: start, ...turn, lead } as const;
    found.push(angular({ ...of, radii: radii.core, tolerance: tolerances.coreSlope }, scale));
  }
  if (core.drop > 0) {
    const of = { name: "drop of the core", along: "y", from: { x: core.start, y: 0 }, to: start } as const;
    const drop = { ...of, tolerance: tolerances.coreDrop };
    found.push(through(drop, scale, [4, 6, 8, 10, 12], () => [false, false]));
  }
  return found;
}

function heelLength({ side, heelEnd, tolerances }: NeckSheetInput, scale: number): Annotation {
  const of = { name: "end of the heel", along: "x", tolerance: tolerances.heelEnd } as const;
  const [from, to] = [across(side, 0)[0], across(side, heelEnd)[0]];
  return stacked({ ...of, from, to }, scale, to.y * scale, -1);
}

/** How far the wood lies under the gluing surface at the tail and at its lowest. */
function heights({ side, tolerances }: NeckSheetInput, scale: number): Annotation[] {
  const { maxX, minY } = extentsOf([side])!;
  const [, front] = across(side, maxX);
  const of = { along: "y", from: { x: maxX, y: 0 }, tolerance: tolerances.usual } as const;
  const found = [stacked({ ...of, name: "lowest wood", to: { x: maxX, y: minY } }, scale, maxX * scale, 1)];
  if (Math.abs(front.y) < 0.01) return found;
  return [stacked({ ...of, name: "front at the tail", to: front }, scale, maxX * scale, 1), ...found];
}
