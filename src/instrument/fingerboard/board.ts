import type { Solid } from "../../geometry/solid/solid.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Blank } from "../blank.ts";
import { type CoreFrame, frontAt } from "../core/frame.ts";
import type { StringHeights } from "../strings/heights.ts";
import type { StringLayout } from "../strings/layout.ts";
import { boardBlank } from "./board-blank.ts";
import { boardCutters } from "./board-cutters.ts";
import { type BoardEdge, boardEdge } from "./board-edge.ts";
import { type BoardGaps, boardGaps } from "./board-gaps.ts";
import { type BoardSolidInput, boardSolid } from "./board-solid.ts";
import { type Dots, faceDots, markedOn, type SideDots, sideDots } from "./dots.ts";
import type { FretSlots } from "./fret-slots.ts";
import { type Inlays, madeInlays } from "./inlays.ts";
import type { BoardOutline } from "./outline.ts";
import type { BoardSurface } from "./surface.ts";

/**
 * What is worked out of the finished board, mm. `boardOverhang`: how far it stands out past the wood that it is glued to, negative where it ends
 * before that, and the gap along z between its underside's end and the core's front there.
 */
export type Board = {
  readonly boardGaps: readonly BoardGaps[];
  readonly boardEdge: BoardEdge;
  readonly boardBlank: Blank;
  readonly boardOverhang: { readonly length: number; readonly gap: number };
  /** The dots of its face and of its bass edge; null where the board has none. */
  readonly boardDots: Dots | null;
  readonly boardSideDots: SideDots | null;
  /** What is cut out of it: slots, dots' bores and inlays' recesses. */
  readonly boardCutters: readonly Solid[];
  readonly boardSolidInput: BoardSolidInput;
  /** The finished board. */
  readonly boardSolid: Solid;
};

/** What the board rests on. */
type Made = {
  readonly surface: BoardSurface;
  readonly layout: StringLayout;
  readonly heights: StringHeights;
  readonly core: CoreFrame;
  readonly board: BoardOutline;
  readonly fretSlots: FretSlots | null;
} & Inlays &
  Board;

/** How each answer about the board is worked out; what it rests on is asked only then. */
export function boardGetters(spec: Spec, store: Store, made: () => Made): Getters<Board> {
  const of = (id: string) => dimensionOf(spec, id);
  const frets = spec.frets?.count ?? null;
  const marks = () => ({ frets, stringLength: of("string.length"), board: made().surface });
  return {
    boardGaps: () => {
      const { surface, layout, heights } = made();
      const at = (where: "nut" | "bridge", i: number) => ({
        y: layout[where][i]!,
        z: heights[where][i]!,
      });
      return store.answer(boardGaps, {
        ...{ board: surface, stations: boardStations(spec), stringLength: of("string.length") },
        crown: spec.frets === null ? 0 : of("fret.crown.height"),
        strings: spec.strings.map(({ diameter }, i) => {
          return { nut: at("nut", i), bridge: at("bridge", i), diameter };
        }),
      }).value;
    },
    boardEdge: () => store.answer(boardEdge, { board: made().surface }).value,
    boardBlank: () => {
      const allowance = {
        end: of("fingerboard.allowance.end"),
        side: of("fingerboard.allowance.side"),
        face: of("fingerboard.allowance.face"),
      };
      return store.answer(boardBlank, { board: made().surface, allowance }).value;
    },
    boardOverhang: () => {
      const { core, surface } = made();
      const { length } = surface.taper;
      return { length: length - core.start, gap: length > core.start ? -frontAt(core, length) : 0 };
    },
    boardDots: () => {
      if (markedOn(spec.dots.face, frets).length === 0) return null;
      const own = { numbers: spec.dots.face, size: of("dot.size"), depth: of("dot.depth") };
      return store.answer(faceDots, { ...marks(), ...own, apart: of("dot.apart") }).value;
    },
    boardSideDots: () => {
      if (markedOn(spec.dots.side, frets).length === 0) return null;
      const own = { numbers: spec.dots.side, size: of("side-dot.size"), depth: of("side-dot.depth") };
      return store.answer(sideDots, { ...marks(), ...own }).value;
    },
    boardCutters: () =>
      store.answer(boardCutters, {
        ...{ board: made().surface, slots: made().fretSlots, through: spec.frets?.slots === "through" },
        ...{ dots: made().boardDots, sideDots: made().boardSideDots },
        recesses: madeInlays(made()).map(({ recess, floor }) => ({ path: recess, floor })),
      }).value,
    boardSolidInput: () => {
      const { surface, board, boardCutters } = made();
      if (board.kind !== "ok") throw new RangeError(`the fingerboard has no outline: ${board.kind}`);
      return { board: surface, outline: board.path, cutters: boardCutters };
    },
    boardSolid: () => store.answer(boardSolid, made().boardSolidInput).value,
  };
}

/** The stations at which gaps are reported, from the nut: those of the design that lie on the board. */
export function boardStations(spec: Spec): readonly number[] {
  return spec.stations.fingerboard.filter((x) => x > 0 && x < dimensionOf(spec, "fingerboard.length"));
}
