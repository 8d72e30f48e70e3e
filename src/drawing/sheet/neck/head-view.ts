import { circle } from "../../../geometry/circle.ts";
import { extentsOf } from "../../../geometry/measure.ts";
import type { Point } from "../../../geometry/point.ts";
import { headFacePath } from "../../flat/head-face.ts";
import { type Annotated, type Annotation, annotated } from "../annotate.ts";
import { atCircle, leader } from "../leader.ts";
import { baseFromMiddle, lettering, textLength } from "../lettering.ts";
import { stacked, through } from "../linear.ts";
import { cornerAt } from "../measured-on.ts";
import { placed } from "../moved.ts";
import { running } from "../running.ts";
import type { Marks } from "../sheet.ts";
import { cross, stroke } from "../strokes.ts";
import type { NeckSheetInput } from "./input.ts";

const { height } = lettering;

/** The head's face square to itself, the nut's head edge at the origin, at a scale on paper, with its dimensions. */
export function headView(input: NeckSheetInput, scale: number): Annotated {
  const { face } = input;
  const path = headFacePath(face);
  const { minX } = extentsOf([path])!;
  const places = face.tuners.map(({ along, y }) => ({ x: -along * scale, y: y * scale }));
  const lines = [
    { weight: "outline", path: placed(path, scale) } as const,
    stroke("centre", { x: minX * scale - 4, y: 0 }, { x: 4, y: 0 }),
    ...places.map((at) => ({ weight: "outline", path: circle(at, (face.hole.face / 2) * scale) }) as const),
    ...places.flatMap((at) => cross(at, (face.hole.face / 2) * scale + 1.5)),
  ];
  return annotated({ lines, texts: [] }, [
    ...lengthsAlong(input, scale),
    ...lengthsAcross(input, scale),
    ...roundings(input, scale),
    ...stringNames(input, scale),
  ]);
}

/** The strings' names at their holes. Holes behind the nut's slots stand in no columns: each is told its own distance across. */
function stringNames({ face }: NeckSheetInput, scale: number): Annotation[] {
  const radius = (face.hole.face / 2) * scale;
  if (face.bare) {
    return face.tuners.map(({ name, along, y }) => {
      const words = `${name} Y ${Math.abs(y).toFixed(2)}`;
      const up = y < 0 ? [-60, -75, -45, -30, -105, -120, -150] : [60, 75, 45, 30, 105, 120, 150];
      const centre = { x: -along * scale, y: y * scale };
      return atCircle(words, centre, radius, [...up, 0, 15, -15, ...up.map((turn) => -turn)]);
    });
  }
  return face.tuners.map(({ name, along, y }) => ({
    name: `string ${name}`,
    ways: function* (): Iterable<Marks> {
      const beside = radius + 2.5 + textLength({ text: name, height }) / 2;
      for (const aside of [beside, -beside]) {
        yield nameAt(name, { x: -along * scale + aside, y: y * scale });
      }
      for (let out = 3; out < 40; out += 1) {
        for (const aside of [0, 3.5, -3.5, 5, -5]) {
          yield nameAt(name, { x: -along * scale + aside, y: Math.sign(y) * (face.half * scale + out) });
        }
      }
    },
  }));
}

function nameAt(name: string, middle: Point): Marks {
  const y = middle.y + baseFromMiddle(height);
  return {
    lines: [],
    texts: [{ text: name, x: middle.x, y, height, turn: 0, align: "center" }],
  };
}

function lengthsAlong({ face, tolerances }: NeckSheetInput, scale: number): Annotation[] {
  const { length, half, shoulder, nutHalf } = face;
  const rows = [...new Set(face.tuners.map(({ along }) => along))].sort((a, b) => a - b);
  const [low, high] = [-1, 1].map((side) => side * Math.max(...face.tuners.map(({ y }) => Math.abs(y))));
  const [first, last] = [rows[0]!, rows.at(-1)!];
  const below = [
    { x: -shoulder, y: -half, tolerance: tolerances.headShoulder },
    ...rows.map((row, i) => ({
      x: -row,
      y: low!,
      ...(i === 0 ? { tolerance: tolerances.headMargin } : {}),
    })),
    { x: -length, y: -half, tolerance: tolerances.usual },
  ];
  const at = (along: number, y: number) => ({ x: -along, y });
  const above = [
    ...(rows.length < 2
      ? []
      : [
          {
            ...{ name: "rows", from: at(first, high!), to: at(rows[1]!, high!) },
            ...{ prefix: rows.length > 2 ? `${rows.length - 1} X ` : "", tolerance: tolerances.headRow },
          },
        ]),
    { name: "last row", from: at(last, high!), to: at(length, half), tolerance: tolerances.headMargin },
  ];
  return [
    running("lengths along the head", { x: 0, y: -nutHalf }, below, scale, -half * scale),
    ...above.map((of) => stacked({ ...of, along: "x" }, scale, half * scale, 1)),
  ];
}

function lengthsAcross({ face, tolerances }: NeckSheetInput, scale: number): Annotation[] {
  const { length, half, corner } = face;
  const [bass, treble] = [outermost(face.tuners, -1), outermost(face.tuners, 1)];
  const apart = face.bare ? tolerances.usual : tolerances.headColumn;
  const side = { x: -length + corner, y: half };
  const places = [
    { name: "columns", from: bass, to: treble, tolerance: apart },
    { name: "width of the head", from: { ...side, y: -half }, to: side, tolerance: tolerances.usual },
  ];
  const edge = { name: "column to the side", along: "y", tolerance: tolerances.headEdge } as const;
  const beside = [-1, 1, -1.5, 1.5, -2, 2, 2.5, -2.5].map((k) => k * ((face.hole.face / 2) * scale + 3));
  return [
    ...places.map((place) => stacked({ along: "y", ...place }, scale, -length * scale, -1)),
    through({ ...edge, from: treble, to: { x: treble.x, y: half } }, scale, beside, () => [false, true]),
  ];
}

/** The hole farthest to one side, and of several the farthest from the nut. */
function outermost(tuners: NeckSheetInput["face"]["tuners"], side: 1 | -1): Point {
  const far = Math.max(...tuners.map(({ y }) => y * side));
  const along = Math.max(...tuners.filter(({ y }) => y * side === far).map((tuner) => tuner.along));
  return { x: -along, y: far * side };
}

function roundings({ face, tolerances }: NeckSheetInput, scale: number): Annotation[] {
  const { tuners } = face;
  const hole = face.hole.face;
  const first = tuners.reduce((a, b) => (b.y > 0 && b.along < a.along ? b : a));
  const words = `${tuners.length} X Ø${hole.toFixed(2)} ±${tolerances.hole.toFixed(2)}`;
  const centre = { x: -first.along * scale, y: first.y * scale };
  const found = [atCircle(words, centre, (hole / 2) * scale, [45, 60, 30, -45, -30, 75])];
  const corner = cornerAt(headFacePath(face), "least");
  if (corner === undefined) return found;
  const at = { x: corner.middle.x * scale, y: corner.middle.y * scale };
  const up = corner.middle.y > 0 ? 1 : -1;
  const text = `R${corner.radius.toFixed(2)} ±${tolerances.headCorner.toFixed(2)}`;
  return [...found, leader({ text, at: () => at, directions: [60, 45, 75, 120, 135].map((d) => d * up) })];
}
