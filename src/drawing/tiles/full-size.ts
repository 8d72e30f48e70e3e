import { facet } from "../../geometry/facet.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { layers } from "../flat/flat.ts";
import { textBox } from "../sheet/lettering.ts";
import type { Box, Marks, SheetText } from "../sheet/sheet.ts";
import { type Chord, chordsOf, clearTexts } from "./clear-texts.ts";
import { type Drawn, type FullSize, laidOut } from "./laid-out.ts";
import { remarkPages } from "./remark-pages.ts";
import { tileBars } from "./tile-bars.ts";
import { joinGroups } from "./tile-joins.ts";
import { tileMap } from "./tile-map.ts";
import type { MarkGroup, Page } from "./tile-page.ts";
import { type Tile, type TilePlan, tileName } from "./tile-plan.ts";
import { squareWords, tileSquare } from "./tile-square.ts";
import { footSides, remarksFit, type TileTitle, tileWords } from "./tile-words.ts";

/** How far apart the places are at which it is looked for what is drawn, mm. */
const look = 4;

/** A drawing at full size on as many pages as it takes, row by row; a drawing without lines has none. */
export function fullSize(given: FullSize): { pages: readonly Page[]; plan: TilePlan | null } {
  const laid = laidOut(given);
  if (laid === null) return { pages: [], plan: null };
  const { texts, lines, title: own, plan } = laid;
  const outlines = given.flat.shapes.filter(({ layer }) => layer !== layers.note).map(({ path }) => path);
  const drawn = lines.flatMap(({ line }) => placesOn(line.path));
  const chords = chordsOf(lines.map(({ line }) => line.path));
  const pages = plan.tiles.map((tile): Page => {
    const { paper: size, scale } = plan;
    const { words, square } = wordsOn(plan, tile, texts, { chords, drawn });
    const furniture = furnitureOf(plan, tile, own, outlines, square);
    return { paper: size, scale, groups: [...drawingGroups(plan, tile, lines, words), ...furniture] };
  });
  const width = plan.inside.maxX - plan.inside.minX;
  if (remarksFit(own, width)) return { pages, plan };
  const heading = `ORDER ${own.order}   ${own.name.toUpperCase()}   REMARKS AND CAUTIONS`;
  return { pages: [...pages, ...remarkPages(heading, own.remarks, plan)], plan };
}

/** From the drawing to the page of a sheet, mm. */
function shiftOf({ window }: TilePlan, { shows }: Tile): Point {
  return { x: window.minX - shows.minX, y: window.minY - shows.minY };
}

/** What is drawn, as chords and as places along its lines, in the drawing. */
type Ground = { readonly chords: readonly Chord[]; readonly drawn: readonly Point[] };

/**
 * The words of the drawing that one sheet shows, off its lines, its joins, its square and one another, and the square on the page. Words that are whole on some
 * sheets stand on those, others on that which their middle lies on.
 */
function wordsOn(
  plan: TilePlan,
  tile: Tile,
  texts: readonly SheetText[],
  { chords, drawn }: Ground,
): { words: SheetText[]; square: Marks } {
  const { x, y } = shiftOf(plan, tile);
  const onPage = (places: readonly Point[]) => places.map((at) => ({ x: at.x + x, y: at.y + y }));
  const own = texts.filter((text) => {
    const box = textBox(text);
    const whole = plan.tiles.some(({ shows }) => holds(shows, box));
    return whole ? holds(tile.shows, box) : plan.tiles.find(({ shows }) => isIn(shows, box)) === tile;
  });
  const joins = joinGroups(plan, tile, { x: 0, y: 0 }).flatMap(({ marks, clip }) =>
    clip === null ? [] : marks.lines.map(({ path }) => path),
  );
  const lines = onPage([...drawn, ...joins.flatMap(placesOn)]);
  const square = tileSquare(plan.window, [...lines, ...onPage(own.flatMap(placesRound))]);
  const sides = chordsOf(square.map(({ path }) => path)).map(([x1, y1, x2, y2]): Chord => {
    return [x1 - x, y1 - y, x2 - x, y2 - y];
  });
  const words = clearTexts(own, [...chords, ...chordsOf(joins), ...sides], tile.shows);
  const label = squareWords(square, plan.window, [...lines, ...onPage(words.flatMap(placesRound))]);
  return { words, square: { lines: square, texts: label } };
}

/** What a sheet shows of the drawing, one group a layer, and its words. */
function drawingGroups(
  plan: TilePlan,
  tile: Tile,
  lines: readonly Drawn[],
  words: readonly SheetText[],
): MarkGroup[] {
  const shift = shiftOf(plan, tile);
  const seen = lines.filter(({ line }) => meets(extentsOf([line.path])!, tile.shows));
  const groups = [...new Set(seen.map(({ layer }) => layer))].map((layer): MarkGroup => {
    const marks = { lines: seen.filter((each) => each.layer === layer).map(({ line }) => line), texts: [] };
    return { name: `layer.${layer}`, marks, shift, clip: plan.window };
  });
  const notes: Marks = { lines: [], texts: words };
  return words.length === 0 ? groups : [...groups, { name: "notes", marks: notes, shift, clip: plan.window }];
}

function furnitureOf(
  plan: TilePlan,
  tile: Tile,
  title: TileTitle,
  outlines: readonly Path[],
  square: Marks,
): MarkGroup[] {
  const { window, inside } = plan;
  const shift = shiftOf(plan, tile);
  const here = { shift: { x: 0, y: 0 }, clip: null };
  const bars = tileBars(window);
  const joins = joinGroups(plan, tile, shift);
  const foot = window.minY - 9;
  const mapBox = { minX: inside.maxX - footSides.map, maxX: inside.maxX, minY: inside.minY, maxY: foot - 1 };
  return [
    ...joins,
    { name: "square", marks: square, ...here },
    { name: `bar-x.${bars.lengths[0]}`, marks: bars.x, ...here },
    { name: `bar-y.${bars.lengths[1]}`, marks: bars.y, ...here },
    { name: "map", marks: tileMap(plan, tile, outlines, mapBox), ...here },
    { name: `foot.${tileName(tile)}`, marks: tileWords(title, plan, tile), ...here },
  ];
}

const meets = (a: Box, b: Box) =>
  a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY;
const holds = (a: Box, b: Box) =>
  a.minX <= b.minX && a.maxX >= b.maxX && a.minY <= b.minY && a.maxY >= b.maxY;

/** Whether a box's middle lies in another. */
const isIn = ({ minX, maxX, minY, maxY }: Box, b: Box) => {
  const [x, y] = [(b.minX + b.maxX) / 2, (b.minY + b.maxY) / 2];
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
};

/** Places along a path, some millimetres apart, with the ends of all its lines. */
function placesOn(path: Path): Point[] {
  return segmentsOf(facet(path, 0.5)).flatMap(({ from, to }) => {
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / look));
    return Array.from({ length: count + 1 }, (_, i) => ({
      x: from.x + ((to.x - from.x) * i) / count,
      y: from.y + ((to.y - from.y) * i) / count,
    }));
  });
}

/** Places in a text's box. */
function placesRound(text: SheetText): Point[] {
  const { minX, minY, maxX, maxY } = textBox(text);
  const across = (from: number, to: number) => {
    const count = Math.max(1, Math.ceil((to - from) / look));
    return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
  };
  return across(minX, maxX).flatMap((x) => across(minY, maxY).map((y) => ({ x, y })));
}
