import { fitCircle } from "../../geometry/fit-circle.ts";
import type { BoardGaps } from "../fingerboard/board-gaps.ts";
import { boardTop } from "../fingerboard/surface.ts";
import type { Instrument } from "../instrument.ts";
import { onCircle } from "../notched-crown.ts";
import { raiseTo } from "../wall.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

/** The least that the board's edge may be thick, mm (G: default, confirm). */
const leastEdge = 2;

/** A string in the board, a nut or a fret whose crown crosses the board or its edge, a board with an edge too thin to hold. */
export const boardAtOdds: Look = (of, made) => [
  ...made.boardGaps.flatMap((gaps, i) => stringIn(of, gaps, i, made)),
  ...nutUnder(of, made),
  ...thinEdge(of("fingerboard.edge"), made),
  ...(made.fretSlots === null ? [] : fretEndsOff(of, made)),
];

function stringIn(
  of: (id: string) => number,
  { least, at }: BoardGaps,
  i: number,
  { boardGaps, surface }: Instrument,
): Contradiction[] {
  const { length } = surface.taper;
  const share = i / (boardGaps.length - 1);
  const [where, side] = [at < length / 2 ? "nut" : "end", share < 0.5 ? "high" : "low"] as const;
  const place = at === 0 ? "at the nut" : at === length ? "at the board's end" : `${mm(at)} from the nut`;
  const clearance = `string.clearance.${where}.${side}`;
  // What the outer string's clearance at that end gives this string at this place.
  const felt = (where === "nut" ? 1 - at / length : at / length) * (side === "high" ? 1 - share : share);
  return unless(least >= 0, [clearance, "fingerboard.radius"], {
    found: `string ${i + 1}, counted from the highest, ${mm(-least)} below the board's surface ${place}`,
    allowed: "every string over the board, from nut to board's end",
    hint: raiseTo(clearance, of(clearance) - least / felt + 0.01),
  });
}

/** The finished nut's crown must stand over the board from edge to edge, or the board would stand up behind it. */
function nutUnder(
  of: (id: string) => number,
  { layout, heights, taper, surface }: Instrument,
): Contradiction[] {
  const fit = fitCircle(layout.nut.map((x, i) => ({ x, y: heights.nut[i]! })));
  if (fit.kind !== "ok") return [];
  const places = Array.from({ length: 33 }, (_, i) => (taper.nut * (i - 16)) / 32);
  const over = places.map((y) => onCircle(fit, y).y - boardTop(surface, 0, y));
  const least = Math.min(...over);
  const y = places[over.indexOf(least)]!;
  const [near, far] = y > 0 ? ["high", "low"] : ["low", "high"];
  const clearance = `string.clearance.nut.${near}`;
  const side = y > 0 ? "treble" : "bass";
  return unless(least >= 0, [clearance, `string.clearance.nut.${far}`, "nut.margin"], {
    found: `a nut whose finished crown is ${mm(-least)} under the board, ${mm(Math.abs(y))} to the ${side} side`,
    allowed: "a crown over the board from edge to edge",
    hint: `${raiseTo(clearance, of(clearance) - least)}, lower string.clearance.nut.${far} or nut.margin`,
  });
}

function thinEdge(edge: number, { boardEdge: { least, at, side } }: Instrument): Contradiction[] {
  return unless(least >= leastEdge, ["fingerboard.edge", "fingerboard.scoop.low", "fingerboard.scoop.high"], {
    found: `a ${side} edge ${mm(least)} thick, ${mm(at)} from the nut`,
    allowed: `at least ${mm(leastEdge)}`,
    hint: raiseTo("fingerboard.edge", edge + leastEdge - least),
  });
}

/** A fret's crown must end before the board does, and its flat part reach under both outer strings. */
function fretEndsOff(of: (id: string) => number, made: Instrument): Contradiction[] {
  const { fretSlots, fretEnds, layout, taper } = made;
  const last = fretSlots!.slots.at(-1)!.x + of("fret.crown.width") / 2;
  const under = (["treble", "bass"] as const).flatMap((side) => {
    const i = side === "treble" ? 0 : layout.nut.length - 1;
    const left = fretSlots!.slots.map(({ x }, n) => {
      const across = layout.nut[i]! + ((layout.bridge[i]! - layout.nut[i]!) * x) / of("string.length");
      return fretEnds!.lengths[n]! / 2 - fretEnds![side] - Math.abs(across);
    });
    const least = Math.min(...left);
    return unless(least >= 0, ["fret.dressing", "fret.bevel", "fret.inset", "nut.margin"], {
      found: `the outer string on the ${side} side ${mm(-least)} beyond the flat of fret ${left.indexOf(least) + 1}`,
      allowed: "outer strings over the frets' flat, inside of their bevelled ends",
      hint: "lower fret.dressing, fret.bevel or fret.inset, or raise nut.margin or fingerboard.margin.end",
    });
  });
  return [
    ...unless(last <= taper.length, ["fret.crown.width", "fingerboard.length", "frets"], {
      found: `a last fret whose crown reaches ${mm(last)}, over the end of a board of ${mm(taper.length)}`,
      allowed: "crowns that end on the board",
      hint: "lower fret.crown.width, ask for fewer frets, or lengthen fingerboard.length",
    }),
    ...under,
  ];
}
