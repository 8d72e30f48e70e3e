import type { Point } from "../../geometry/point.ts";
import { lettering, textLength } from "../sheet/lettering.ts";
import type { Marks, SheetText } from "../sheet/sheet.ts";
import { stroke } from "../sheet/strokes.ts";
import type { MarkGroup } from "./tile-page.ts";
import { type Tile, type TilePlan, tileName } from "./tile-plan.ts";

/** Where a sheet is joined to a neighbour: the line in the drawing, the sheet before it and the one after it, which is cut. */
type Join = {
  readonly before: Tile;
  readonly after: Tile;
  readonly from: Point;
  readonly to: Point;
  readonly upright: boolean;
};

/** Half of a match mark's arms, mm; with it a mark lies wholly within what both sheets show. */
export const crossReach = 5;

/** How far from a join's middle its outer marks stand, as a part of its length. */
const spread = 0.33;

/** Every place where two sheets are joined. */
export function joinsOf({ tiles, overlap }: TilePlan): Join[] {
  const at = (row: number, column: number) =>
    tiles.find((tile) => tile.row === row && tile.column === column);
  return tiles.flatMap((before): Join[] => {
    const { row, column, shows } = before;
    const [right, below] = [at(row, column + 1), at(row + 1, column)];
    const [x, y] = [shows.maxX - overlap / 2, shows.minY + overlap / 2];
    const joins: Join[] = [];
    if (right !== undefined)
      joins.push({
        before,
        after: right,
        from: { x, y: shows.minY },
        to: { x, y: shows.maxY },
        upright: true,
      });
    if (below !== undefined)
      joins.push({
        before,
        after: below,
        from: { x: shows.minX, y },
        to: { x: shows.maxX, y },
        upright: false,
      });
    return joins;
  });
}

/** The match marks of a join, in the drawing: each stands on both sheets under one name. */
export function marksOf({ before, after, from, to, upright }: Join): { name: string; at: Point }[] {
  return [0.5 - spread, 0.5, 0.5 + spread].map((part, i) => ({
    name: `match.${tileName(before)}-${tileName(after)}.${i + 1}`,
    at: upright
      ? { x: from.x, y: from.y + part * (to.y - from.y) }
      : { x: from.x + part * (to.x - from.x), y: from.y },
  }));
}

/** The join lines and match marks of one sheet, in the drawing's own mm, and the words beside the lines, on the page. */
export function joinGroups(plan: TilePlan, tile: Tile, shift: Point): MarkGroup[] {
  const own = joinsOf(plan).filter(({ before, after }) => before === tile || after === tile);
  return own.flatMap((join): MarkGroup[] => {
    const name = `join.${tileName(join.before)}-${tileName(join.after)}`;
    const line = { lines: [stroke("extension", join.from, join.to)], texts: [] };
    return [
      { name, marks: line, shift, clip: plan.window },
      ...marksOf(join).map((mark) => ({ name: mark.name, marks: cross(mark.at), shift, clip: plan.window })),
      { name: "words", marks: label(plan, join, tile, shift), shift: { x: 0, y: 0 }, clip: null },
    ];
  });
}

/** A cross with a square on its tip round the middle, which tells it from a centre mark of the drawing. */
function cross({ x, y }: Point): Marks {
  const half = 1.5;
  const corners = [
    { x: x - half, y },
    { x, y: y - half },
    { x: x + half, y },
    { x, y: y + half },
  ];
  const lines = [
    stroke("dimension", { x: x - crossReach, y }, { x: x + crossReach, y }),
    stroke("dimension", { x, y: y - crossReach }, { x, y: y + crossReach }),
    {
      weight: "dimension" as const,
      path: { closed: true, points: corners.map((corner) => ({ ...corner, bulge: 0 })) },
    },
  ];
  return { lines, texts: [] };
}

/** What is to be done at a join, in the strip above an upright line or to the right of a level one. */
function label({ window }: TilePlan, join: Join, tile: Tile, shift: Point): Marks {
  const { before, after, from, upright } = join;
  const words = tile === after ? "CUT ALONG THIS LINE" : `LAY ${tileName(after)} TO THIS LINE`;
  const height = lettering.height;
  const half = textLength({ text: words, height }) / 2;
  const within = (at: number, least: number, most: number) =>
    Math.min(Math.max(at, least + half), most - half);
  const text: SheetText = upright
    ? {
        ...{ text: words, height, turn: 0, align: "center" },
        ...{ x: within(from.x + shift.x, window.minX, window.maxX), y: window.maxY + 1.3 },
      }
    : {
        ...{ text: words, height, turn: 90, align: "center" },
        ...{ x: window.maxX + 1.3 + height, y: within(from.y + shift.y, window.minY, window.maxY) },
      };
  return { lines: [], texts: before === tile || after === tile ? [text] : [] };
}
