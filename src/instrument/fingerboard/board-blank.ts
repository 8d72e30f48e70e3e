import { step } from "../../step/step.ts";
import { type Blank, blankHolding } from "../blank.ts";
import { type BoardSurface, boardArc, boardTop } from "./surface.ts";
import { boardWidth } from "./taper.ts";

/** The board's surface, and the wood that its blank has beyond it at either end, on either side, and over its greatest thickness; mm. */
export type BoardBlankInput = {
  readonly board: BoardSurface;
  readonly allowance: { readonly end: number; readonly side: number; readonly face: number };
};

/** The board's blank, rounded up to what is measured off. Its underside is planed already, so it has the face's allowance once. */
export const boardBlank = step("fingerboard.blank", 1, ({ board, allowance }: BoardBlankInput): Blank => {
  const { length, nut, end } = board.taper;
  return blankHolding({
    length: length + 2 * allowance.end,
    width: Math.max(nut, end) + 2 * allowance.side,
    thickness: thickest(board) + allowance.face,
  });
});

/** The board's greatest thickness: the highest of the tops of 65 sections. */
function thickest(board: BoardSurface): number {
  const { taper } = board;
  return Math.max(
    ...Array.from({ length: 65 }, (_, i) => {
      const x = (taper.length * i) / 64;
      const half = boardWidth(taper, x) / 2;
      return boardTop(board, x, Math.min(half, Math.max(-half, boardArc(board, x).y)));
    }),
  );
}
