import type { FittedSaw } from "../../workshop/bandsaw/fitted-saws.ts";
import type { Way } from "../../workshop/stock/ways.ts";

/** How a blank comes out of its board, as a saw drawing says it. */
export function boardText(board: Way | null): string {
  if (board === null) return "FROM A BOARD THAT THE SHOP DOESN'T HAVE";
  const how = {
    flat: "LYING FLAT",
    turned: "TURNED A QUARTER, ITS WIDTH OUT OF THE BOARD'S THICKNESS",
    glued: `GLUED UP FROM ${board.plies} PLIES OF ${mmText(board.ply)} PLANED, GLUE LINES UPRIGHT`,
    joined: `JOINED EDGE TO EDGE FROM ${board.plies} PIECES OF ${mmText(board.ply)} PLANED`,
  };
  return `FROM BOARD ${board.board.toUpperCase()}, ${how[board.lies]}`;
}

/** The saw, its blade and what that follows, as a saw drawing says it. */
export function sawText(saw: FittedSaw | null): string {
  if (saw === null) return "NO SAW: THE LINES STAND WITHOUT A KERF";
  const { width, kerf, radius } = saw.blade;
  return `BANDSAW ${saw.id.toUpperCase()}, BLADE ${mmText(width)}, KERF ${mmText(kerf)}: LINES ARE ITS MIDDLE; LEAST RADIUS ${mmText(radius)} (S)`;
}

/** A length as a saw drawing says it: at most two decimals, mm. */
export function mmText(value: number): string {
  return String(Math.round(value * 100) / 100);
}
