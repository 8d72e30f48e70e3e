import { circle } from "../../geometry/circle.ts";
import { type Extents, extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { reversedPath } from "../../geometry/reversed-path.ts";
import { step } from "../../step/step.ts";
import type { Arrow } from "../../workshop/guided/fixture.ts";
import type { PlateLayout } from "../../workshop/inside/plate-layout.ts";
import { arrowShapes } from "./arrow-shapes.ts";
import { clearNotes, type Label } from "./clear-notes.ts";
import { type Flat, layers, letterHeight, lineBetween, type Note, type Shape } from "./flat.ts";
import { type InsideNotesInput, insideNotes } from "./inside-notes.ts";

/** An opening as it is drawn: its finished recess, its guided edge, where the bit goes in, arrows beside it, and which plate it is on. */
export type DrawnOpening = {
  readonly id: string;
  readonly recess: Path;
  readonly edge: Path;
  readonly plunge: Point;
  readonly arrows: readonly Arrow[];
  readonly plate: number;
};

/**
 * What an inside template is drawn from, mm, as it lies before whoever cuts: the finished recesses, and the rest where there is a set-up and every
 * opening has an edge; `missing` says in a line why there is none. `part` is the outline of the part under it.
 */
export type InsideFlatInput = {
  readonly recesses: readonly Path[];
  readonly missing: string | null;
  readonly made: {
    readonly part: Path;
    readonly layout: PlateLayout;
    readonly openings: readonly DrawnOpening[];
    readonly notes: InsideNotesInput;
  } | null;
};

/** How far notes stand from the plates and plates from one another, the length of a scribed tick and of the line's stubs, of an arrow at most, mm. */
const sizes = { beside: 10, between: 24, tick: 10, stub: 30, arrow: 10 } as const;
const lineStep = letterHeight * 1.7;

/**
 * An inside template: its plates below one another in the order in which they are used, each to cut out with its openings and their guided edges, the finished
 * recesses in them, what is scribed to lay it by, pins, clamps, arrows, the bit and its guide where they go in; and what to know.
 */
export const insideFlat = step("inside.flat", 2, ({ recesses, missing, made }: InsideFlatInput): Flat => {
  if (made === null) {
    const { minX, maxY } = extentsOf(recesses)!;
    return {
      shapes: recesses.map((path) => ({ layer: layers.part, path })),
      notes: [note(missing ?? "NO TEMPLATE", minX, maxY + sizes.beside)],
    };
  }
  const { layout, openings, notes } = made;
  const { minY, maxY } = extentsOf([layout.plate])!;
  const plates = Array.from({ length: notes.plates }, (_, k) => {
    const own = openings.filter(({ plate }) => plate === k);
    const flat = plateFlat(made, own, `PLATE ${k + 1} OF ${notes.plates}`);
    return moved(flat, -k * (maxY - minY + sizes.between));
  });
  const shapes = plates.flatMap((plate) => plate.shapes);
  const { minX, maxY: top } = extentsOf(shapes.map(({ path }) => path))!;
  const words = insideNotes(notes);
  return {
    shapes,
    notes: [
      ...plates.flatMap((plate) => plate.notes),
      ...words.map((text, i) => note(text, minX, top + sizes.beside + (words.length - i - 1) * lineStep)),
    ],
  };
});

type Made = NonNullable<InsideFlatInput["made"]>;

/** One plate with its own openings, where the part lies. */
function plateFlat({ layout, part, notes }: Made, own: readonly DrawnOpening[], name: string): Flat {
  const { plate, clamps, handholds, holes } = layout;
  const box = extentsOf([plate])!;
  const tools = [...new Set([notes.cutter.diameter, notes.guide.diameter])];
  const shapes: Shape[] = [
    { layer: layers.outer, path: plate },
    ...own.flatMap(({ recess, edge }) => {
      // Closed outlines of drawings run counter-clockwise, an opening's edge as a tool goes round it clockwise.
      const opening = reversedPath(edge);
      return [
        { layer: layers.inner, path: opening },
        { layer: layers.part, path: recess },
        { layer: layers.guided, path: opening },
      ];
    }),
    ...scribed(box, own).map((path) => ({ layer: layers.scribe, path })),
    ...clamps.flatMap(({ base, arm }) => [base, arm].map((path) => ({ layer: layers.scribe, path }))),
    ...handholds.map(({ path }) => ({ layer: layers.scribe, path })),
    ...holes.map(({ at, diameter }) => ({ layer: layers.bore(diameter), path: circle(at, diameter / 2) })),
    { layer: layers.note, path: part },
    ...own.flatMap(({ arrows, edge }) => {
      const { minX, maxX, minY, maxY } = extentsOf([edge])!;
      const length = Math.min(sizes.arrow, Math.max(maxX - minX, maxY - minY) / 5);
      return arrows.flatMap((arrow) => arrowShapes(arrow, length));
    }),
    ...own.flatMap(({ plunge }) =>
      tools.map((diameter) => ({ layer: layers.note, path: circle(plunge, diameter / 2) })),
    ),
  ];
  const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  const labels: Label[] = [
    { text: name, at: { x: middle.x, y: box.maxY - 3 * letterHeight }, reach: 0 },
    ...clamps.map(({ id, base }) => ({ text: id.toUpperCase(), at: middleOf(base), reach: 0 })),
    ...own.map(({ id, edge }) => {
      const { depth } = notes.openings.find((one) => one.id === id)!;
      const { minY, maxY } = extentsOf([edge])!;
      const text = `${id.toUpperCase()}, ${depth.toFixed(2)} DEEP`;
      return { text, at: middleOf(edge), reach: (maxY - minY) / 2 };
    }),
    ...own.map(({ plunge, id }) => ({
      ...{ text: `PLUNGE INTO ${id.toUpperCase()}`, at: plunge, reach: Math.max(...tools) / 2 },
    })),
    {
      text: `${notes.part.toUpperCase()} UNDER IT`,
      at: underAt(box, part),
      reach: 1,
    },
    { text: notes.line, at: { x: box.minX + sizes.stub / 2, y: lineAt(box) }, reach: 1 },
    ...holes.map(({ at, diameter, what }) => ({
      ...{ text: `${what.toUpperCase()}: DRILL ${diameter}`, at, reach: diameter / 2 },
    })),
  ];
  const { notes: placed, leaders } = clearNotes(labels, shapes);
  return { shapes: [...shapes, ...leaders], notes: placed };
}

/** A fifth along what a plate covers of the part's extents, on their lower side. */
function underAt(plate: Extents, part: Path): Point {
  const { minX, maxX, minY } = extentsOf([part])!;
  const [from, to] = [Math.max(minX, plate.minX), Math.min(maxX, plate.maxX)];
  return { x: from + (to - from) / 5, y: minY };
}

/** Stubs of the part's own line at both ends of a plate, and ticks on its long sides at each opening's middle. */
function scribed(box: Extents, own: readonly DrawnOpening[]): Path[] {
  const y = lineAt(box);
  return [
    lineBetween(box.minX, y, box.minX + sizes.stub, y),
    lineBetween(box.maxX - sizes.stub, y, box.maxX, y),
    ...own.flatMap(({ recess }) => {
      const { x } = middleOf(recess);
      return [
        lineBetween(x, box.minY, x, box.minY + sizes.tick),
        lineBetween(x, box.maxY, x, box.maxY - sizes.tick),
      ];
    }),
  ];
}

/** The part's own line lies at y = 0; where a plate doesn't reach it, at the side that is nearer. */
function lineAt({ minY, maxY }: Extents): number {
  return Math.min(maxY, Math.max(minY, 0));
}

function middleOf(path: Path): Point {
  const { minX, maxX, minY, maxY } = extentsOf([path])!;
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
}

function note(text: string, x: number, y: number): Note {
  return { text, x, y, height: letterHeight, turn: 0, align: "left" };
}

function moved({ shapes, notes }: Flat, dy: number): Flat {
  return {
    shapes: shapes.map((shape) => ({
      ...shape,
      path: { ...shape.path, points: shape.path.points.map((point) => ({ ...point, y: point.y + dy })) },
    })),
    notes: notes.map((one) => ({ ...one, y: one.y + dy })),
  };
}
