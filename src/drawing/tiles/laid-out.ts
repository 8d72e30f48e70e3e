import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Paper } from "../../order/shop.ts";
import { type Flat, layers, type Note, type Shape } from "../flat/flat.ts";
import type { FromNumbers } from "../flat/from-numbers.ts";
import { wholeNotes } from "../flat/whole-notes.ts";
import { textBox } from "../sheet/lettering.ts";
import type { Box, SheetLine, SheetText } from "../sheet/sheet.ts";
import { type TilePlan, tilePlan } from "./tile-plan.ts";
import { footHeight, type TileTitle } from "./tile-words.ts";

/** What is laid out: a drawing as it stands before its title, whose it is, the paper, and what is not taken from paper. */
export type FullSize = {
  readonly flat: Flat;
  /** What of the drawing's notes was broken into lines, whole. */
  readonly remarks?: readonly string[] | undefined;
  readonly title: Omit<TileTitle, "paper" | "scale" | "fromNumbers" | "remarks" | "fewer">;
  readonly paper: Paper;
  readonly fromNumbers: FromNumbers | undefined;
  /** Another paper of the shop that takes far fewer sheets; its sheets are told at the foot. */
  readonly fewer?: TileTitle["fewer"];
};

/** How much white there is round a drawing at least, mm. */
const around = 4;

/** A longer note is a sentence about the whole drawing and stands at the foot; a label stands where it is. */
const longestLabel = 40;

/** A drawing as its sheets show it: its labels, its lines, what stands at the foot, and the layout. */
export type LaidOut = {
  readonly texts: readonly SheetText[];
  readonly lines: readonly Drawn[];
  readonly title: TileTitle;
  readonly plan: TilePlan;
};

/** A drawing laid out on its paper; null for a drawing without lines. */
export function laidOut({
  flat,
  remarks = [],
  title,
  paper,
  fromNumbers,
  fewer = null,
}: FullSize): LaidOut | null {
  const notes = wholeNotes(flat.notes, remarks);
  const texts = notes.filter(({ text }) => text.length <= longestLabel).map(textOf);
  const lines = linesOf(flat, fromNumbers);
  const box = boxRound(lines, texts);
  if (box === undefined) return null;
  const own: TileTitle = {
    ...{ ...title, paper: paper.id, scale: paper.scale ?? null, fewer },
    remarks: notes.filter(({ text }) => text.length > longestLabel).map(({ text }) => text),
    fromNumbers: fromNumbers === undefined ? null : `${fromNumbers.what} (BROKEN LINES)`,
  };
  const plan = tilePlan(box, paper, (width) => footHeight(own, width), keptWhole(flat, texts));
  return { texts, lines, title: own, plan };
}

const isNote = (layer: string) => layer === layers.note;

/** A line of the drawing and its layer. */
export type Drawn = { readonly layer: string; readonly line: SheetLine };

/** The drawing's lines, each once: an outline that stands on two layers is drawn once. */
function linesOf({ shapes }: Flat, fromNumbers: FromNumbers | undefined): Drawn[] {
  const seen = new Set<Path>();
  return shapes.flatMap((shape): Drawn[] => {
    if (seen.has(shape.path)) return [];
    seen.add(shape.path);
    return [{ layer: shape.layer, line: { weight: weightOf(shape, fromNumbers), path: shape.path } }];
  });
}

function weightOf({ layer, chain }: Shape, fromNumbers: FromNumbers | undefined): SheetLine["weight"] {
  if (chain) return "centre";
  if (fromNumbers?.layers.test(layer)) return "hidden";
  if (isNote(layer)) return "dimension";
  return layer === layers.scribe ? "reference" : "edge";
}

function textOf({ text, x, y, height, turn, align }: Note): SheetText {
  if (turn !== 0 && turn !== 90) throw new RangeError(`a note that is turned by ${turn}`);
  return { text, x, y, height, turn, align };
}

function boxRound(lines: readonly Drawn[], texts: readonly SheetText[]): Box | undefined {
  const drawn = extentsOf(lines.map(({ line }) => line.path));
  if (drawn === undefined) return undefined;
  const boxes = [drawn, ...texts.map(textBox)];
  return {
    minX: Math.min(...boxes.map(({ minX }) => minX)) - around,
    minY: Math.min(...boxes.map(({ minY }) => minY)) - around,
    maxX: Math.max(...boxes.map(({ maxX }) => maxX)) + around,
    maxY: Math.max(...boxes.map(({ maxY }) => maxY)) + around,
  };
}

/** What no join should come over where that can be had: words, and whatever is small enough to stand on one sheet's corner. */
function keptWhole({ shapes }: Flat, texts: readonly SheetText[]): Box[] {
  const small = shapes
    .map(({ path }) => extentsOf([path])!)
    .filter(({ minX, minY, maxX, maxY }) => Math.max(maxX - minX, maxY - minY) < 40);
  return [...texts.map(textBox), ...small];
}
