import { step } from "../../step/step.ts";
import { type BoardSurface, boardTop } from "./surface.ts";
import { boardWidth } from "./taper.ts";

/** The thinnest place of the board's two edges: how thick it is there, where from the nut, and on which side; mm. */
export type BoardEdge = { readonly least: number; readonly at: number; readonly side: "treble" | "bass" };

/** The thinnest place of the board's edges, by looking at 270 places along each. */
export const boardEdge = step("fingerboard.edge", 1, ({ board }: { board: BoardSurface }): BoardEdge => {
  const { taper } = board;
  let thinnest: BoardEdge = { least: Number.POSITIVE_INFINITY, at: 0, side: "treble" };
  for (let i = 0; i <= 270; i++) {
    const at = (taper.length * i) / 270;
    for (const side of ["treble", "bass"] as const) {
      const least = boardTop(board, at, ((side === "treble" ? 1 : -1) * boardWidth(taper, at)) / 2);
      if (least < thinnest.least) thinnest = { least, at, side };
    }
  }
  return thinnest;
});
