import type { Blank } from "../../instrument/blank.ts";
import { takenOff } from "./taken-off.ts";
import type { Way } from "./ways.ts";

/** The pieces of a blank as they are sawn out of a board, mm: `width` across the board, `thickness` out of its own. */
export type Pieces = Blank & { readonly count: number };

/** What is sawn out of a board for a blank that comes out of it in one way: edges and faces that are glued are planed by `takenOff.planed` first. */
export function piecesOf(
  { length, width, thickness }: Blank,
  { lies, plies, ply }: Pick<Way, "lies" | "plies" | "ply">,
): Pieces {
  const planed = (plies > 2 ? 2 : 1) * takenOff.planed;
  switch (lies) {
    case "flat":
      return { length, width, thickness, count: 1 };
    case "turned":
      return { length, width: thickness, thickness: width, count: 1 };
    case "glued":
      return { length, width: thickness, thickness: ply + planed, count: plies };
    case "joined":
      return { length, width: ply + planed, thickness, count: plies };
  }
}
