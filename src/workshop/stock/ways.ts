import type { Blank } from "../../instrument/blank.ts";
import type { Stock } from "../../order/shop.ts";
import { takenOff } from "./taken-off.ts";

/**
 * One way to get a blank out of a board; mm. `flat`: the blank's thickness comes out of the board's, its width from across it.
 * `turned`: turned a quarter about its length, the other way round. `glued`: plies side by side, turned, the glue lines upright.
 * `joined`: pieces that lie flat, glued edge to edge.
 */
export type Way = {
  readonly board: string;
  readonly wood: string;
  readonly lies: "flat" | "turned" | "glued" | "joined";
  readonly plies: number;
  /** How much of the blank's width a ply makes once it is planed. */
  readonly ply: number;
  /** How much the board is too short, too narrow and too thin; 0 where it isn't. */
  readonly missing: { readonly length: number; readonly width: number; readonly thickness: number };
  /** How much of the section that is cut from the board doesn't end up in the blank, mm². */
  readonly waste: number;
};

const { planed, parting } = takenOff;

/** Every way to get the blank, its length along the board's grain, out of one board, glued from at most so many plies, or joined edge to edge from at most so many pieces. */
export function waysOutOf(
  board: Stock & { readonly wood: string },
  blank: Blank,
  most: number,
  joined = 1,
): Way[] {
  const { id, wood } = board;
  const one = (lies: Way["lies"], thick: number, across: number, plies: number): Way => ({
    ...{
      board: id,
      wood,
      lies,
      plies,
      ply: blank.width / plies,
      missing: missing(board, blank, { thick, across, plies }),
    },
    waste: Math.max(0, plies * board.thickness * across - blank.width * blank.thickness),
  });
  const ways = [one("flat", blank.thickness, blank.width, 1), one("turned", blank.width, blank.thickness, 1)];
  for (let plies = 2; plies <= most; plies++) {
    // An inner ply is planed on both faces.
    const thick = blank.width / plies + (plies > 2 ? 2 : 1) * planed;
    ways.push(one("glued", thick, blank.thickness, plies));
  }
  for (let pieces = 2; pieces <= joined; pieces++) {
    const across = blank.width / pieces + (pieces > 2 ? 2 : 1) * planed;
    ways.push(one("joined", blank.thickness, across, pieces));
  }
  return ways;
}

/** What a board misses for so many pieces, one behind another along it and beside one another across it. */
function missing(
  board: Stock,
  blank: Blank,
  { thick, across, plies }: { readonly thick: number; readonly across: number; readonly plies: number },
): Way["missing"] {
  const beside = Math.max(1, Math.floor((board.width + parting) / (across + parting)));
  const behind = Math.ceil(plies / beside);
  const over = (wanted: number, there: number) => (wanted - there > 1e-6 ? wanted - there : 0);
  return {
    length: over(behind * blank.length + (behind - 1) * parting, board.length),
    width: over(across, board.width),
    thickness: over(thick, board.thickness),
  };
}
