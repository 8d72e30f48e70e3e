import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import type { Arrow } from "../../workshop/guided/fixture.ts";
import type { Holding } from "../../workshop/guided/holding.ts";
import { arrowShapes } from "./arrow-shapes.ts";
import { clearNotes, type Label } from "./clear-notes.ts";
import { type FixtureNotesInput, fixtureNotes } from "./fixture-notes.ts";
import { type Flat, layers, letterHeight, type Note, type Shape } from "./flat.ts";

/**
 * What a fixture is drawn from, mm, as it lies before whoever cuts: the part's outline, and the rest where there is a set-up and an edge;
 * `missing` says in a line why there is none.
 */
export type FixtureFlatInput = {
  readonly outline: Path;
  readonly missing: string | null;
  readonly made: {
    readonly template: Path;
    readonly edge: Path;
    readonly holding: Holding;
    readonly arrows: readonly Arrow[];
    /** Whether the edge is cut along its own direction or back along it. */
    readonly way: "along" | "back";
    readonly notes: FixtureNotesInput;
  } | null;
};

/** Length of an arrow, how far notes stand from the template, mm. */
const sizes = { arrow: 18, beside: 10 };

/**
 * A fixture: the template to cut out with its guided edge and the finished part on it, what is scribed for batten, clamps and handholds, the
 * holes with their drills, arrows for the cutter's way, and what to know. Without a set-up it shows the part and says what is
 * missing; a check keeps it from being written.
 */
export const fixtureFlat = step("fixture.flat", 2, ({ outline, missing, made }: FixtureFlatInput): Flat => {
  if (made === null) {
    const { minX, maxY } = extentsOf([outline])!;
    const words = stacked([missing ?? "NO FIXTURE"], minX, maxY + sizes.beside + letterHeight);
    return { shapes: [{ layer: layers.part, path: outline }], notes: words };
  }
  const { template, edge, holding, arrows, notes } = made;
  const { minX, maxY } = extentsOf([template, ...arrows.map(({ at }) => circle(at, sizes.arrow))])!;
  const words = stacked(
    fixtureNotes(notes),
    minX,
    maxY + sizes.beside + fixtureNotes(notes).length * lineStep,
  );
  const shapes = [
    { layer: layers.outer, path: template },
    { layer: layers.part, path: outline },
    { layer: layers.guided, path: edge },
    ...[...(holding.batten === null ? [] : [holding.batten]), ...holding.marks].map((path) => ({
      layer: layers.scribe,
      path,
    })),
    ...holding.clamps.flatMap(({ base, arm }) => [base, arm].map((path) => ({ layer: layers.scribe, path }))),
    ...holding.handholds.map(({ path }) => ({ layer: layers.scribe, path })),
    ...holding.holes.map(({ at, diameter }) => ({
      layer: layers.bore(diameter),
      path: circle(at, diameter / 2),
    })),
    ...arrows.flatMap((arrow) => arrowShapes(arrow, sizes.arrow)),
    ...toolShapes(made),
  ];
  const { notes: labels, leaders } = clearNotes(labelsOf(made), shapes, words);
  return { shapes: [...shapes, ...leaders], notes: [...labels, ...words] };
});

const lineStep = letterHeight * 1.7;

/** Lines of text above one another, the first one's foot at y less a line. */
function stacked(lines: readonly string[], x: number, y: number): Note[] {
  return lines.map((text, i) => note(text, x, y - (i + 1) * lineStep, "left"));
}

function note(text: string, x: number, y: number, align: Note["align"]): Note {
  return { text, x, y, height: letterHeight, turn: 0, align };
}

function middleOf({ points }: Path): Point {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

type Made = NonNullable<FixtureFlatInput["made"]>;

/** The end of the guided edge, how it is walked there, and the middle of a guide that touches it. */
function endOf({ edge, notes: { guide } }: Made, end: "first" | "last") {
  const { points } = edge;
  const [from, to] = end === "first" ? [points[0]!, points[1]!] : [points.at(-2)!, points.at(-1)!];
  const at = end === "first" ? from : to;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const out = { x: (to.y - from.y) / length, y: -(to.x - from.x) / length };
  return { x: at.x + (out.x * guide.diameter) / 2, y: at.y + (out.y * guide.diameter) / 2, out };
}

/** What is said beside holes, on clamps, and beside the cutter's place where the cut begins and where it ends. */
function labelsOf(made: Made): Label[] {
  const { cutter, guide } = made.notes;
  const aside = Math.max(cutter.diameter, guide.diameter) / 2;
  return [
    ...made.holding.clamps.map(({ id, base }) => ({ text: id.toUpperCase(), at: middleOf(base), reach: 0 })),
    ...(["first", "last"] as const).map((end) => {
      const { x, y, out } = endOf(made, end);
      const starts = (end === "first") === (made.way === "along");
      const text = starts ? "START HERE ON THE RUN-IN" : "RUN-OUT ENDS HERE";
      return { text, at: { x: x + out.x, y: y + out.y }, reach: aside };
    }),
    ...made.holding.holes.map(({ at, diameter, what }) => ({
      ...{ text: `${what.toUpperCase()}: DRILL ${diameter}`, at, reach: diameter / 2 },
    })),
  ];
}

/** Cutter and guide about one middle, where the cut begins: how they stand to the edge is seen at once. */
function toolShapes(made: Made): Shape[] {
  const { cutter, guide } = made.notes;
  const middle = endOf(made, made.way === "along" ? "first" : "last");
  const round = guide.diameter === cutter.diameter ? [cutter.diameter] : [cutter.diameter, guide.diameter];
  return round.map((diameter) => ({ layer: layers.note, path: circle(middle, diameter / 2) }));
}
