import { depthIn } from "../../geometry/path-measures/depth-in.ts";
import type { Dot, SideDot } from "../fingerboard/dots.ts";
import { boardWidth } from "../fingerboard/taper.ts";
import type { Instrument } from "../instrument.ts";
import { lowerTo } from "../wall.ts";
import { type Contradiction, type Look, mm, unless } from "./at-odds.ts";

/** Wood under a dot, beside it to the board's edge and end, and to an inlay, mm (G: default, confirm). */
const round = 1;

/** Wood over and under a side dot, in the board's edge, mm (G: default, confirm). */
const inEdge = 0.5;

/** Wood between a dot and a fret's slot, mm: the highest frets leave hardly more (G: default, confirm). */
const atSlot = 0.1;

/** Dots that the board has no room for. */
export const dotsAtOdds: Look = (of, made) => {
  const { boardDots: face, boardSideDots: side } = made;
  return [
    ...(face === null
      ? []
      : [...twoApart(face.size, of("dot.apart")), ...face.list.flatMap((dot) => faceDot(dot, face, made))]),
    ...(side === null ? [] : side.list.flatMap((dot) => sideDot(dot, side, made))),
  ];
};

function twoApart(size: number, apart: number): Contradiction[] {
  return unless(apart >= size + atSlot, ["dot.apart", "dot.size"], {
    found: `two dots of ${mm(size)} whose middles are ${mm(apart)} apart`,
    allowed: `at least ${mm(size + atSlot)}`,
    hint: "raise dot.apart or lower dot.size",
  });
}

type Bores = { readonly size: number; readonly depth: number };

function faceDot({ fret, x, y, floor }: Dot, { size, depth }: Bores, made: Instrument): Contradiction[] {
  const beside = boardWidth(made.taper, x - size / 2) / 2 - Math.abs(y) - size / 2;
  return [
    ...beyondEnd("dot.size", "dots", fret, x + size / 2, made),
    ...unless(floor >= round, ["dot.depth", "fingerboard.edge"], {
      found: `dot ${fret} ${mm(depth)} deep, with ${mm(floor)} of wood under it`,
      allowed: `at least ${mm(round)}`,
      hint: `${lowerTo("dot.depth", depth + floor - round)}, or raise fingerboard.edge`,
    }),
    ...unless(beside >= round, ["dot.apart", "dot.size"], {
      found: `${mm(beside)} of wood between dot ${fret} and the board's edge`,
      allowed: `at least ${mm(round)}`,
      hint: "lower dot.apart or dot.size",
    }),
    ...inSlot("dot.size", fret, x, size, made),
    ...inInlay(fret, { x, y }, size, made),
  ];
}

function sideDot({ fret, x, edge }: SideDot, { size, depth }: Bores, made: Instrument): Contradiction[] {
  const most = edge - 2 * inEdge;
  const half = boardWidth(made.taper, x) / 2;
  return [
    ...beyondEnd("side-dot.size", "side-dots", fret, x + size / 2, made),
    ...unless(size <= most, ["side-dot.size", "fingerboard.edge"], {
      found: `side dot ${fret}, ${mm(size)} across, in an edge ${mm(edge)} thick`,
      allowed: `at most ${mm(most)}, so that ${mm(inEdge)} of wood is left over and under it`,
      hint: `${lowerTo("side-dot.size", most)}, or raise fingerboard.edge`,
    }),
    ...unless(depth <= half, ["side-dot.depth"], {
      found: `side dot ${fret}, ${mm(depth)} deep, in a board ${mm(2 * half)} wide`,
      allowed: `at most ${mm(half)}, to the board's middle`,
      hint: lowerTo("side-dot.depth", half),
    }),
    ...inSlot("side-dot.size", fret, x, size, made),
  ];
}

function beyondEnd(
  id: string,
  list: string,
  fret: number,
  reach: number,
  { taper }: Instrument,
): Contradiction[] {
  return unless(reach + round <= taper.length, ["fingerboard.length", id], {
    found: `${list === "dots" ? "dot" : "side dot"} ${fret} reaching ${mm(reach)} on a board of ${mm(taper.length)}`,
    allowed: `at least ${mm(round)} of wood to the board's end`,
    hint: `take ${fret} out of the design's ${list}, or lengthen fingerboard.length`,
  });
}

function inSlot(
  id: string,
  fret: number,
  x: number,
  size: number,
  { fretSlots }: Instrument,
): Contradiction[] {
  if (fretSlots === null) return [];
  const { slots, width } = fretSlots;
  const wood = Math.min(...slots.map((slot) => Math.abs(slot.x - x) - (size + width) / 2));
  return unless(wood >= atSlot, [id, "fret.tang.width"], {
    found: `${id === "dot.size" ? "dot" : "side dot"} ${fret} with ${mm(wood)} of wood to a fret's slot`,
    allowed: `at least ${mm(atSlot)}`,
    hint: lowerTo(id, size - 2 * (atSlot - wood)),
  });
}

function inInlay(
  fret: number,
  at: { x: number; y: number },
  size: number,
  { inlays }: Instrument,
): Contradiction[] {
  return inlays.flatMap((inlay) => {
    if (inlay.kind !== "ok") return [];
    const wood = Math.max(0, -depthIn(inlay.design, at)) - size / 2;
    return unless(wood >= round, ["dot.size", "inlay.length"], {
      place: `inlay.${inlay.id}`,
      found:
        wood < 0
          ? `dot ${fret} in inlay ${inlay.id}`
          : `${mm(wood)} of wood between dot ${fret} and inlay ${inlay.id}`,
      allowed: `at least ${mm(round)}`,
      hint: `move inlay ${inlay.id}, or take ${fret} out of the design's dots`,
    });
  });
}
