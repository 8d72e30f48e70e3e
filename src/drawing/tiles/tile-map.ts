import type { Path } from "../../geometry/path.ts";
import { rectangleOf } from "../../geometry/rectangle.ts";
import { lettering } from "../sheet/lettering.ts";
import type { Box, Marks, SheetLine, SheetText } from "../sheet/sheet.ts";
import { stroke } from "../sheet/strokes.ts";
import { type Tile, type TilePlan, tileName } from "./tile-plan.ts";

/** The map's own words need so much room at its left and above it, mm. */
const besides = 6;

/** The map of a drawing's sheets with the drawing in it, this sheet crossed out and named, in a box of the page, mm. */
export function tileMap(plan: TilePlan, tile: Tile, drawing: readonly Path[], box: Box): Marks {
  const { rows, columns, tiles, overlap } = plan;
  const [first, last] = [tiles[0]!.shows, tiles.at(-1)!.shows];
  const [width, height] = [last.maxX - first.minX, first.maxY - last.minY];
  const room = { width: box.maxX - box.minX - besides, height: box.maxY - box.minY - besides };
  const scale = Math.min(room.width / width, room.height / height);
  const x = (at: number) => box.minX + besides + (at - first.minX) * scale;
  const y = (at: number) => box.maxY - besides - (first.maxY - at) * scale;
  // A cell reaches to the middle of what its sheet shares with the next.
  const cell = ({ shows, row, column }: Tile): Box => ({
    minX: x(shows.minX + (column === 0 ? 0 : overlap / 2)),
    maxX: x(shows.maxX - (column === columns - 1 ? 0 : overlap / 2)),
    minY: y(shows.minY + (row === rows - 1 ? 0 : overlap / 2)),
    maxY: y(shows.maxY - (row === 0 ? 0 : overlap / 2)),
  });
  const own = cell(tile);
  const lines: SheetLine[] = [
    ...tiles.map((each): SheetLine => ({ weight: "extension", path: rectangleOf(cell(each)) })),
    stroke("extension", { x: own.minX, y: own.minY }, { x: own.maxX, y: own.maxY }),
    stroke("extension", { x: own.minX, y: own.maxY }, { x: own.maxX, y: own.minY }),
    ...drawing.map(({ closed, points }): SheetLine => {
      const moved = points.map((point) => ({ x: x(point.x), y: y(point.y), bulge: point.bulge }));
      return { weight: "edge", path: { closed, points: moved } };
    }),
  ];
  return { lines, texts: namesOf(plan, tile, cell) };
}

/** Letters of the rows and numbers of the columns, as many as there is room for; this sheet's own are always there. */
function namesOf({ rows, columns, tiles }: TilePlan, tile: Tile, cell: (tile: Tile) => Box): SheetText[] {
  const height = lettering.height;
  const at = (row: number, column: number) => tiles[row * columns + column]!;
  const sparse = (index: number, own: number, size: number) => size >= 5 || index === own;
  const upright = Array.from({ length: rows }, (_, row) => row).flatMap((row): SheetText[] => {
    const { minX, minY, maxY } = cell(at(row, 0));
    if (!sparse(row, tile.row, maxY - minY)) return [];
    const text = tileName(at(row, 0)).replace(/\d+$/, "");
    return [{ text, height, turn: 0, align: "right", x: minX - 1.2, y: (minY + maxY) / 2 - height / 2 }];
  });
  const level = Array.from({ length: columns }, (_, column) => column).flatMap((column): SheetText[] => {
    const { minX, maxX, maxY } = cell(at(0, column));
    if (!sparse(column, tile.column, maxX - minX)) return [];
    return [
      { text: String(column + 1), height, turn: 0, align: "center", x: (minX + maxX) / 2, y: maxY + 1.4 },
    ];
  });
  return [...upright, ...level];
}
