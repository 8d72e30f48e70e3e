import { takenOff } from "./taken-off.ts";

/** A piece to be sawn out of a board: its length along the grain and its width across, mm. */
export type PieceWanted = { readonly part: string; readonly length: number; readonly width: number };

/** A piece on a board: its corner nearest the board's end and edge, along the board and across it, mm. */
export type PieceLaid = PieceWanted & { readonly x: number; readonly y: number };

/**
 * One board as it is sawn: crosscut into `sections`, each ripped into strips, and a strip crosscut where it holds several pieces.
 * `used` is how much of its length is taken, mm.
 */
export type BoardLaid = {
  readonly used: number;
  readonly sections: readonly { readonly from: number; readonly to: number }[];
  readonly pieces: readonly PieceLaid[];
};

type Strip = { readonly y: number; readonly width: number; filled: number };
type Section = { readonly from: number; readonly to: number; across: number; readonly strips: Strip[] };
type Open = { used: number; readonly sections: Section[]; readonly pieces: PieceLaid[] };

const { parting } = takenOff;
const slack = 1e-6;

/**
 * Pieces laid on as many boards of one size as it takes, never turned, with what the saw takes between any two of them. Each of
 * the three cuts goes right through what lies before it: across, along, across. No section is shorter than `least`, as far as the board goes, so
 * that a strip can be held while it is ripped. The longest come first, each into the first strip, section
 * or board that has room. Not the least waste that there is. A piece larger than the board throws a RangeError.
 */
export function laidOut(
  pieces: readonly PieceWanted[],
  { length, width, least }: { readonly length: number; readonly width: number; readonly least: number },
): BoardLaid[] {
  const boards: Open[] = [];
  for (const piece of longestFirst(pieces)) {
    if (piece.length > length + slack || piece.width > width + slack)
      throw new RangeError(`${piece.part} is larger than the board`);
    const laid = boards.some((board) => inStrip(board, piece) || inSection(board, piece, width));
    if (laid || boards.some((board) => inNewSection(board, piece, length, least))) continue;
    const board: Open = { used: 0, sections: [], pieces: [] };
    inNewSection(board, piece, length, least);
    boards.push(board);
  }
  return boards.map(({ used, sections, pieces: laid }) => ({
    used,
    sections: sections.map(({ from, to }) => ({ from, to })),
    pieces: laid,
  }));
}

function longestFirst(pieces: readonly PieceWanted[]): PieceWanted[] {
  return pieces.toSorted(
    (a, b) => b.length - a.length || b.width - a.width || (a.part < b.part ? -1 : a.part > b.part ? 1 : 0),
  );
}

/** Behind the pieces of a strip that is wide enough. */
function inStrip({ sections, pieces }: Open, piece: PieceWanted): boolean {
  for (const { from, to, strips } of sections) {
    const strip = strips.find(
      ({ width, filled }) =>
        width >= piece.width - slack && from + filled + parting + piece.length <= to + slack,
    );
    if (strip === undefined) continue;
    pieces.push({ ...piece, x: from + strip.filled + parting, y: strip.y });
    strip.filled += parting + piece.length;
    return true;
  }
  return false;
}

/** In a new strip of a section that is long enough. */
function inSection({ sections, pieces }: Open, piece: PieceWanted, width: number): boolean {
  const section = sections.find(
    ({ from, to, across }) =>
      to - from >= piece.length - slack && across + parting + piece.width <= width + slack,
  );
  if (section === undefined) return false;
  const y = section.across + parting;
  pieces.push({ ...piece, x: section.from, y });
  section.strips.push({ y, width: piece.width, filled: piece.length });
  section.across = y + piece.width;
  return true;
}

/** In a new section behind the others, if the board is long enough. */
function inNewSection(board: Open, piece: PieceWanted, length: number, least: number): boolean {
  const from = board.sections.length === 0 ? 0 : board.used + parting;
  if (from + piece.length > length + slack) return false;
  const to = Math.max(from + piece.length, Math.min(from + least, length));
  const strip = { y: 0, width: piece.width, filled: piece.length };
  board.sections.push({ from, to, across: piece.width, strips: [strip] });
  board.pieces.push({ ...piece, x: from, y: 0 });
  board.used = to;
  return true;
}
