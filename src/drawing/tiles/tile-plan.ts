import type { Paper } from "../../order/shop.ts";
import type { Box } from "../sheet/sheet.ts";

/** One sheet of a full-size drawing: row and column count from 0, from the top left; `shows` is what of the drawing it shows, mm. */
export type Tile = { readonly row: number; readonly column: number; readonly shows: Box };

/**
 * How a drawing is laid out on paper, in true mm, as they measure when the printer's own scale is taken off. `window` is the room on each sheet
 * that the drawing shows through; neighbours show the same over `overlap`, in the middle of which they are joined.
 */
export type TilePlan = {
  readonly paper: { readonly id: string; readonly width: number; readonly height: number };
  /** How long what should measure 1 comes out, across and up the sheet as it is read. */
  readonly scale: readonly [x: number, y: number];
  /** The room that the printer reaches. */
  readonly inside: Box;
  readonly window: Box;
  readonly overlap: number;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
};

/** What stands round the window, mm: bars at the left and below, names of the joins at the right and above, words at the foot. */
export const strips = { left: 9, right: 5, top: 5, bar: 9 } as const;

/** How far a line's own width may reach beyond its middle, mm. */
const lineRoom = 0.5;

/** How much wider than the printer's margin sheets overlap, mm: room for the crosses on the join. */
const overlapMore = 8;

/** The longest sheet that is taken from a roll, mm. */
const longestSheet = 4000;

/** The least room for the drawing on a sheet, mm: the square of 100 and what keeps it off the border. */
export const leastWindow = 106;

/** How high the foot of a sheet must be for what is written there, when it is so wide, mm. */
export type FootHeight = (width: number) => number;

/**
 * The layout of a drawing with the given extents (mm) that takes the fewest sheets, upright or across; from a roll the one among them that takes
 * the least of it. What white is left lies to the right and below, where there is most room for the square to measure, unless fewer of the boxes of
 * `kept` (in the drawing: words, holes) come under a join when the drawing is moved into it. A paper with less room than its square of 100 needs, which the shop's file refuses, gives a RangeError.
 */
export function tilePlan(drawing: Box, paper: Paper, foot: FootHeight, kept: readonly Box[] = []): TilePlan {
  const plans = [false, true].flatMap((across) => planFor(drawing, paper, foot, across, kept));
  const best = plans.sort((a, b) => {
    const [[sheets, area], [others, other]] = [cost(a, paper), cost(b, paper)];
    return sheets - others || area - other;
  })[0];
  if (best === undefined) throw new RangeError(`paper ${paper.id} has no room for a square of 100 mm`);
  return best;
}

/** Each join is a place to go wrong, so one sheet less outweighs any paper. */
function cost({ tiles, paper: { width, height } }: TilePlan, paper: Paper): readonly [number, number] {
  return [tiles.length, paper.height === undefined ? width * height : 0];
}

function planFor(
  drawing: Box,
  paper: Paper,
  foot: FootHeight,
  across: boolean,
  kept: readonly Box[],
): TilePlan[] {
  const [sx, sy] = paper.scale ?? [1, 1];
  const scale = across ? ([sy, sx] as const) : ([sx, sy] as const);
  const inset = (paper.margin + lineRoom) * Math.max(1, sx, sy);
  const overlap = paper.margin + overlapMore;
  const needed = { width: drawing.maxX - drawing.minX, height: drawing.maxY - drawing.minY };
  const beside = 2 * inset + strips.left + strips.right;
  // A roll is as long as the drawing needs, up to a sheet that can still be handled.
  const fed = (want: number, around: number) => Math.min(Math.max(want, leastWindow) + around, longestSheet);
  const width = !across
    ? paper.width * scale[0]
    : paper.height === undefined
      ? fed(needed.width, beside)
      : paper.height * scale[0];
  const footHeight = foot(width - 2 * inset);
  const above = 2 * inset + strips.top + strips.bar + footHeight;
  const height = across
    ? paper.width * scale[1]
    : paper.height === undefined
      ? fed(needed.height, above)
      : paper.height * scale[1];
  const inside = { minX: inset, minY: inset, maxX: width - inset, maxY: height - inset };
  const window: Box = {
    ...{ minX: inset + strips.left, maxX: width - inset - strips.right },
    ...{ minY: inset + footHeight + strips.bar, maxY: height - inset - strips.top },
  };
  const room = { width: window.maxX - window.minX, height: window.maxY - window.minY };
  if (Math.min(room.width, room.height) < leastWindow - 1e-9) return [];
  const count = (need: number, have: number) =>
    Math.max(1, Math.ceil((need - overlap) / (have - overlap) - 1e-9));
  const [columns, rows] = [count(needed.width, room.width), count(needed.height, room.height)];
  const left =
    drawing.minX -
    spareBefore(needed.width, columns, room.width, overlap, (at) => {
      return kept.filter(({ minX, maxX }) => minX < drawing.minX + at && maxX > drawing.minX + at).length;
    });
  const top =
    drawing.maxY +
    spareBefore(needed.height, rows, room.height, overlap, (at) => {
      return kept.filter(({ minY, maxY }) => minY < drawing.maxY - at && maxY > drawing.maxY - at).length;
    });
  const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const minX = left + column * (room.width - overlap);
    const maxY = top - row * (room.height - overlap);
    return { row, column, shows: { minX, maxX: minX + room.width, minY: maxY - room.height, maxY } };
  });
  const size = { id: paper.id, width, height };
  return [{ paper: size, scale, inside, window, overlap, rows, columns, tiles }];
}

/** From one way to lay the joins to the next that is tried, mm. */
const nudge = 4;

/** How much white stands before the drawing on its first sheet, so that the joins come over as little as they can; `crossed` counts what a join so far into the drawing comes over. */
function spareBefore(
  need: number,
  count: number,
  room: number,
  overlap: number,
  crossed: (at: number) => number,
): number {
  const spare = count * (room - overlap) + overlap - need;
  const joins = Array.from({ length: count - 1 }, (_, i) => (i + 1) * (room - overlap) + overlap / 2);
  const ways =
    joins.length === 0 ? [0] : Array.from({ length: Math.floor(spare / nudge) + 1 }, (_, i) => i * nudge);
  const costs = ways.map((way) => joins.reduce((sum, join) => sum + crossed(join - way), 0));
  return ways[costs.indexOf(Math.min(...costs))]!;
}

/** A sheet's name: its row as a letter, from the top, and its column as a number, from the left. */
export function tileName({ row, column }: Pick<Tile, "row" | "column">): string {
  const letter = String.fromCharCode(65 + (row % 26));
  return `${row < 26 ? "" : String.fromCharCode(64 + Math.floor(row / 26))}${letter}${column + 1}`;
}
