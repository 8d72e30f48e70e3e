import { boardStations } from "../instrument/fingerboard/board.ts";
import type { BoardGaps } from "../instrument/fingerboard/board-gaps.ts";
import { boardRadius } from "../instrument/fingerboard/surface.ts";
import type { Spec } from "../order/spec.ts";
import { type Dimension, length } from "./dimension.ts";

const part = "fingerboard";

/** The finished board's numbers: every string's gaps over it, its radius, its edge, what of it hangs over the core, and its blank. */
export function boardDimensions(spec: Spec): Dimension[] {
  return [...spec.strings.flatMap(({ name }, i) => gapsOf(spec, name, i)), ...whole];
}

function gapsOf(spec: Spec, name: string, i: number): Dimension[] {
  const over = spec.frets === null ? "the board" : "the frets' tops";
  const gap = (where: string, at: string, of: (gaps: BoardGaps) => number) =>
    length(
      "strings",
      `string.${name}.gap.${where}`,
      `${name}: its underside over ${over}, ${at}`,
      (model) => {
        return of(model.instrument.boardGaps[i]!);
      },
    );
  return [
    gap("nut", "at the nut", ({ nut }) => nut),
    ...boardStations(spec).map((x, k) => gap(`${x}`, `${x} mm from the nut`, ({ stations }) => stations[k]!)),
    gap("end", "at the board's end", ({ end }) => end),
    length(
      "strings",
      `string.${name}.scoop`,
      `${name}: gap under a straightedge on the board along it, from nut to board's end, at mid-length`,
      (model) => model.instrument.boardGaps[i]!.scoop,
    ),
  ];
}

const whole: readonly Dimension[] = [
  length(part, "fingerboard.radius.nut", "Radius across the playing surface at the nut", (model) => {
    return boardRadius(model.instrument.surface, 0);
  }),
  length(part, "fingerboard.radius.end", "Radius across the playing surface at the board's end", (model) => {
    const { surface } = model.instrument;
    return boardRadius(surface, surface.taper.length);
  }),
  length(
    part,
    "fingerboard.edge.least",
    "Thickness of the board's edges at their thinnest place",
    (model) => {
      return model.instrument.boardEdge.least;
    },
  ),
  length(
    part,
    "fingerboard.overhang",
    "Board past the wood that it is glued to, which ends where the core's front begins to fall; negative if it ends before",
    (model) => model.instrument.boardOverhang.length,
  ),
  length(
    part,
    "fingerboard.overhang.gap",
    "Gap along z between the board's underside and the core's front, at the board's end",
    (model) => model.instrument.boardOverhang.gap,
  ),
  ...(["length", "width", "thickness"] as const).map((size) =>
    length(part, `fingerboard.blank.${size}`, `Board's blank: ${size}`, (model) => {
      return model.instrument.boardBlank[size];
    }),
  ),
];
