import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { type DrillPlace, type DrillPlateInput, drilling, drillPlate } from "./drill-plate.ts";
import { handOnly, type Jig, jigOf } from "./jig.ts";
import type { Key } from "./piece.ts";
import { type PrintRules, printed } from "./print-rules.ts";

/** The words of every drill guide: what a printed plate is good for. */
export const pilotOnly = `its holes take a ${drilling.pilot} mm pilot in a hand drill or a mark, and no larger drill`;

/** How high a line of letters is, mm, and what is kept round it. */
const row = { high: 4.8, aside: 1.2 };

/** A joint in the middle, for a plate that is longer than the bed. */
const middleKey: Key = { y: 0, root: 9, end: 13, reach: 8, top: drilling.thick };

/** Plates that start holes square to a face: the tuners', and the four index pins'. */
export function drillJigs(model: Model, rules: PrintRules): Jig[] {
  return [
    tuners(model, rules),
    indexEnd(model, rules, "head"),
    indexEnd(model, rules, "tail"),
    indexBoard(model, rules),
  ];
}

type Plate = Pick<DrillPlateInput, "outline" | "holes" | "lips"> & { readonly lettersAt?: number };

function plateJig(
  { spec }: Model,
  rules: PrintRules,
  { name, part, words, lines }: { name: string; part: string; words: string; lines: readonly string[] },
  [x1, y1, x2, y2]: readonly [number, number, number, number],
  { lettersAt = rowFor([], 0), ...plate }: Plate,
): Jig {
  const lipHeight = plate.lips.length === 0 ? 0 : drilling.lip;
  const radius = (drilling.pilot + rules.growth) / 2 + printed.wall;
  return jigOf(
    {
      ...{
        name,
        part,
        along: { from: x1, to: x2 },
        wide: y2 - y1,
        high: drilling.thick + lipHeight,
        key: middleKey,
      },
      uncut: plate.holes.map(({ x }) => ({ from: x - middleKey.reach - radius, to: x + radius })),
      what: `printed drill guide ${words}; ${pilotOnly}: ${handOnly}`,
    },
    rules,
    drillPlate,
    {
      ...{
        ...plate,
        lipHeight,
        thickness: drilling.thick,
        pilot: drilling.pilot,
        growth: rules.growth,
        key: middleKey,
      },
      ...{ mirrored: spec.hand === "left", lines, lettersAt },
    },
  );
}

/** Where a row of letters has room: in the middle if no hole is near it, or outside of them all. */
function rowFor(holes: readonly DrillPlace[], growth: number): number {
  const radius = (drilling.pilot + growth) / 2 + row.aside;
  const near = holes.some(({ y }) => Math.abs(y) < row.high / 2 + radius);
  return near ? -Math.max(...holes.map(({ y }) => Math.abs(y))) - radius : row.high / 2;
}

/** Lips round three sides: beside something `half` wide to either side of the centreline from x1 on, and past its end at x2. */
function lipsRound(half: number, x1: number, x2: number): Path[] {
  const { slide } = printed.clearance;
  const [inner, outer] = [half + slide, half + slide + drilling.lipWide];
  const end = x2 + Math.sign(x2 - x1) * slide;
  const tip = end + Math.sign(x2 - x1) * drilling.lipWide;
  const across = (a: number, b: number, from: number, to: number) =>
    rectangle(Math.min(a, b), from, Math.max(a, b), to);
  return [across(x1, tip, inner, outer), across(x1, tip, -outer, -inner), across(end, tip, -outer, outer)];
}

/** The head's plate: along the face from the nut's head edge, its lips round the head past the shoulders. */
function tuners(model: Model, rules: PrintRules): Jig {
  const { spec, instrument } = model;
  const { length, half, tuners: all } = instrument.tuners;
  const holes = all.map(({ along, y }) => ({ x: along, y }));
  const shoulder =
    dimensionOf(spec, "head.shoulder") / Math.cos((dimensionOf(spec, "head.angle") * Math.PI) / 180);
  const first = Math.min(...holes.map(({ x }) => x));
  const start = Math.min(shoulder + 1, first - drilling.pilot - drilling.lipWide);
  const reach = printed.clearance.slide + drilling.lipWide;
  const [end, wide] = [length + reach, half + reach];
  const lips = lipsRound(half, Math.max(start, shoulder + 1), length);
  const words =
    "for the tuners' holes, laid on the head's face with its lips round the end and the two sides";
  return plateJig(
    model,
    rules,
    { name: "drill-tuners", part: "neck", words, lines: [`${spec.order} HEAD`] },
    [start, -wide, end, wide],
    {
      ...{ outline: rectangle(start, -wide, end, wide), holes, lips, lettersAt: rowFor(holes, rules.growth) },
    },
  );
}

/** The plate for the pin in the waste at one end, on the blank's end and sides: x runs from the blank's end inward. */
function indexEnd(model: Model, rules: PrintRules, id: "head" | "tail"): Jig {
  const { place } = model.sawing;
  const { neckBlank, neckPins } = model.instrument;
  const pin = neckPins.find((one) => one.id === id)!;
  const x = id === "head" ? pin.x - place.minX : place.maxX - pin.x;
  const half = neckBlank.width / 2;
  const reach = printed.clearance.slide + drilling.lipWide;
  const [end, wide] = [x + 18, half + reach];
  const words = `for the index pin in the waste at the ${id}, laid over the blank's end and its two sides`;
  const lines = [model.spec.order, `${id.toUpperCase()} END`, `D${pin.diameter}`];
  return plateJig(
    model,
    rules,
    { name: `drill-index-${id}`, part: "neck", words, lines },
    [-reach, -wide, end, wide],
    {
      ...{ outline: rectangle(-reach, -wide, end, wide), holes: [{ x, y: pin.y }] },
      ...{ lips: lipsRound(half, end, 0), lettersAt: pin.y - drilling.pilot - row.aside },
    },
  );
}

/** The notch that shows the centreline at a plate's ends, mm (G). */
const vee = 2;

/** The plate for the two pins under the board: its end on the nut's line, the notches in its ends on the centreline. */
function indexBoard(model: Model, rules: PrintRules): Jig {
  const pins = model.instrument.neckPins.filter(({ id }) => id === "upper" || id === "lower");
  // Looked at from where it lies on the wood, x to the tail: the treble side is where y is negative.
  const holes = pins.map(({ x, y }) => ({ x, y: -y }));
  const length = Math.max(...holes.map(({ x }) => x)) + 14;
  const wide = Math.max(...holes.map(({ y }) => Math.abs(y))) + 14;
  const at = (x: number, y: number) => ({ x, y, bulge: 0 });
  const points = [
    ...[at(0, -wide), at(length, -wide)],
    ...[at(length, -vee), at(length - vee, 0), at(length, vee)],
    ...[at(length, wide), at(0, wide)],
    ...[at(0, vee), at(vee, 0), at(0, -vee)],
  ];
  const words =
    "for the two index pins under the board, its end on the nut's line and the notches in its ends on the centreline";
  const lines = [`${model.spec.order} BOARD ${pins.map(({ diameter }) => `D${diameter}`).join(" ")}`];
  return plateJig(
    model,
    rules,
    { name: "drill-index-board", part: "neck", words, lines },
    [0, -wide, length, wide],
    {
      ...{ outline: { closed: true, points }, holes, lips: [], lettersAt: rowFor(holes, rules.growth) },
    },
  );
}
