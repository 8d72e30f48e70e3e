import { rectangle } from "../../geometry/rectangle.ts";
import type { Frets } from "../../instrument/fingerboard/frets.ts";
import { boardWidth } from "../../instrument/fingerboard/taper.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { type DrillPlateInput, drillPlate } from "./drill-plate.ts";
import { fretStrip, fretStripKey, fretStripPiece } from "./fret-strip.ts";
import { handOnly, type Jig, jigOf } from "./jig.ts";
import type { Key } from "./piece.ts";
import type { Stretch } from "./pieces.ts";
import { type PrintRules, printed } from "./print-rules.ts";

/** How far a strip or a guide runs on past its last mark, mm (G). */
const past = 10;

/** A dot guide's thickness and its pilot, mm: it marks the middle, the dot's own drill follows free-hand (G). */
const dot = { thick: 4, pilot: 2 };

const marksOnly = "for a pilot or a mark by hand, not for the dot's own drill";

/** What places frets and dots on the board; each only where the board has them. */
export function fretJigs(model: Model, rules: PrintRules): Jig[] {
  const { fretSlots } = model.instrument;
  return [
    ...(fretSlots === null ? [] : [slots(model, rules, fretSlots)]),
    ...faceGuide(model, rules),
    ...sideGuide(model, rules),
  ];
}

function slots({ spec }: Model, rules: PrintRules, { slots, width }: NonNullable<Frets["fretSlots"]>): Jig {
  const frets = slots.map(({ x }) => x);
  const length = frets.at(-1)! + past;
  const thickness = dimensionOf(spec, "gauge.thickness");
  const half = (width + rules.growth) / 2 + printed.wall;
  const stringLength = dimensionOf(spec, "string.length");
  // Lettered are those that a board is marked at, and the first.
  const numbers = [1, 3, 5, 7, 9, 12, 15, 17, 19, 21, 24].filter((n) => n <= frets.length);
  return jigOf(
    {
      ...{ name: "fret-slots", part: "fingerboard", along: { from: 0, to: length }, high: thickness + 0.6 },
      ...{ wide: fretStrip.wide, key: fretStripKey },
      uncut: frets.map((x) => ({ from: x - half, to: x + half })),
      what: `printed strip with a notch at each fret, laid on with its end flush with the board's nut end; a printed part strays by ${printed.accuracy} where a fret wants 0.1: measure each notch from that end against the report's fret.N before it is used, pieces put together; it is for marking by hand, and ${handOnly}`,
    },
    rules,
    fretStripPiece,
    {
      ...{ frets, slot: width, growth: rules.growth, length, thickness, numbers },
      lines: [`${spec.order} FRETS ${stringLength}`],
    },
  );
}

type Plate = Pick<DrillPlateInput, "outline" | "holes" | "lips" | "lipHeight" | "lettersAt" | "key">;

function guide(
  { spec }: Model,
  rules: PrintRules,
  where: { readonly name: "face" | "side"; readonly how: string; readonly uncut: readonly Stretch[] },
  { length, wide }: { readonly length: number; readonly wide: number },
  plate: Plate,
): Jig {
  return jigOf(
    {
      ...{ name: `dots-${where.name}`, part: "fingerboard", along: { from: 0, to: length }, wide },
      ...{ high: dot.thick + plate.lipHeight, key: plate.key, uncut: where.uncut },
      what: `printed guide for the dots in the board's ${where.name}, ${where.how}, ${marksOnly}: ${handOnly}`,
    },
    rules,
    drillPlate,
    {
      ...{ ...plate, thickness: dot.thick, pilot: dot.pilot, growth: rules.growth },
      ...{ mirrored: spec.hand === "left", lines: [`${spec.order} ${where.name.toUpperCase()} DOTS`] },
    },
  );
}

/** As wide as the board all along, so that its edges and its end lie flush with the board's. */
function faceGuide(model: Model, rules: PrintRules): Jig[] {
  const { boardDots, taper } = model.instrument;
  if (boardDots === null) return [];
  const { list } = boardDots;
  const length = Math.min(taper.length, Math.max(...list.map(({ x }) => x)) + past);
  const [near, far] = [taper.nut / 2, boardWidth(taper, length) / 2];
  const at = (x: number, y: number) => ({ x, y, bulge: 0 });
  const radius = (dot.pilot + rules.growth) / 2 + printed.wall;
  const key: Key = { y: 0, root: 9, end: 13, reach: 8, top: null };
  const uncut = list.map(({ x }) => ({ from: x - key.reach - radius, to: x + radius }));
  const how = "laid on while its face is flat, edges and nut end flush with the board's";
  return [
    guide(
      model,
      rules,
      { name: "face", how, uncut },
      { length, wide: 2 * far },
      {
        outline: { closed: true, points: [at(0, -near), at(length, -far), at(length, far), at(0, near)] },
        ...{ holes: list.map(({ x, y }) => ({ x, y: -y })), lips: [], lipHeight: 0, key },
        lettersAt: -Math.max(...list.map(({ y }) => Math.abs(y))) - radius,
      },
    ),
  ];
}

/** How far a side guide's lip reaches under the board, how wide the lip is, and what the plate has over the edge's thickness, mm (G). */
const side = { under: 5, lip: 9, over: 3 };

/** A plate against the board's bass edge, with a lip under the board: the underside lies on y = 0, the face on the side where y is negative. */
function sideGuide(model: Model, rules: PrintRules): Jig[] {
  const { boardSideDots } = model.instrument;
  if (boardSideDots === null) return [];
  const { list } = boardSideDots;
  const length = Math.max(...list.map(({ along }) => along)) + past;
  const high = Math.max(...list.map(({ edge }) => edge)) + side.over;
  const radius = (dot.pilot + rules.growth) / 2 + printed.wall;
  const uncut = list.map(({ along }) => ({ from: along - radius, to: along + radius }));
  const how = "held against the bass edge with its lip under the board and its end flush with the nut end";
  return [
    guide(
      model,
      rules,
      { name: "side", how, uncut },
      { length, wide: high + side.lip },
      {
        outline: rectangle(0, -high, length, side.lip),
        holes: list.map(({ along, z }) => ({ x: along, y: -z })),
        ...{ lips: [rectangle(0, 0, length, side.lip)], lipHeight: side.under, lettersAt: 7.5 },
        key: { y: 4, root: 4, end: 6, reach: 6, top: null },
      },
    ),
  ];
}
