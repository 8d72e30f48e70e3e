import type { Blank } from "../instrument/blank.ts";
import type { Shop } from "../order/shop.ts";
import { step } from "../step/step.ts";
import { sawRoom } from "./bandsaw/saw-room.ts";
import { type BoardLaid, laidOut, type PieceLaid } from "./stock/lay-out.ts";
import { piecesOf } from "./stock/pieces-of.ts";
import type { StockFound } from "./stock/stock-for.ts";

/** Every part's blank with the board that was found for it, the leaves of veneer, and the shop's boards; mm. */
export type CutListInput = {
  readonly parts: readonly { readonly part: string; readonly blank: Blank; readonly stock: StockFound }[];
  readonly leaves: readonly Leaf[];
  readonly boards: Shop["stock"]["boards"];
};

/** What is cut from veneer, which no board is sawn into: so many leaves of a size, its length along its part; mm. */
export type Leaf = Blank & { readonly veneer: string; readonly part: string; readonly count: number };

/** A piece on its board: `thickness` is what it is planed to, mm. */
export type CutPiece = PieceLaid & { readonly thickness: number };

/**
 * A board that something is sawn out of, mm. `number` counts the boards of this name that are needed, from 1. `yield` is the
 * pieces' area as a share of what is used of the board, over its whole width.
 */
export type CutBoard = Omit<BoardLaid, "pieces"> & {
  readonly board: string;
  readonly wood: string;
  readonly number: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly pieces: readonly CutPiece[];
  readonly yield: number;
};

/**
 * The cut list of one instrument: its boards by name, the parts that no board holds, the leaves of veneer, and the yield of all
 * boards together, 0 where nothing comes out of one.
 */
export type CutList = {
  readonly boards: readonly CutBoard[];
  readonly missing: readonly { readonly part: string; readonly blank: Blank }[];
  readonly leaves: readonly Leaf[];
  readonly yield: number;
};

/** The blanks laid on the boards that were found for them. */
export const cutList = step("cut.list", 1, ({ parts, leaves, boards }: CutListInput): CutList => {
  const wanted = parts.flatMap(({ part, blank, stock }) => {
    if (stock.kind !== "ok") return [];
    const { count, ...size } = piecesOf(blank, stock.way);
    return Array.from({ length: count }, () => ({ part, board: stock.way.board, ...size }));
  });
  const cut = boards
    .toSorted((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap(({ id, wood, length, width, thickness }) => {
      const own = wanted.filter(({ board }) => board === id);
      const laid = laidOut(
        own.map(({ part, length: long, width: wide }) => ({ part, length: long, width: wide })),
        { length, width, least: sawRoom.least },
      );
      const thick = new Map(own.map((one) => [one.part, one.thickness]));
      return laid.map(
        ({ used, sections, pieces }, i): CutBoard => ({
          ...{ board: id, wood, number: i + 1, length, width, thickness, used, sections },
          pieces: pieces.map((piece) => ({ ...piece, thickness: thick.get(piece.part)! })),
          yield: areaOf(pieces) / (used * width),
        }),
      );
    });
  const used = cut.reduce((sum, board) => sum + board.used * board.width, 0);
  return {
    boards: cut,
    missing: parts.filter(({ stock }) => stock.kind !== "ok").map(({ part, blank }) => ({ part, blank })),
    leaves,
    yield: used === 0 ? 0 : cut.reduce((sum, { pieces }) => sum + areaOf(pieces), 0) / used,
  };
});

function areaOf(pieces: readonly PieceLaid[]): number {
  return pieces.reduce((sum, { length, width }) => sum + length * width, 0);
}
