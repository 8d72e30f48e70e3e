import { extentsOf } from "../../geometry/measure.ts";
import type { Point } from "../../geometry/point.ts";
import { rectangleOf } from "../../geometry/rectangle.ts";
import { lettering, textBox } from "../sheet/lettering.ts";
import type { Box, SheetLine, SheetText } from "../sheet/sheet.ts";

const side = 100;
const words = `${side} BY ${side} MM`;

/** How far from what is drawn a side of the square counts as free, mm. */
const beside = 2;

/** From one place that is tried to the next, mm. */
const pitch = 5;

/** How long the arms of a square's corners are where it has no room for its sides, the longest first that have room, mm. */
const arms = [8, 5, 3] as const;

/**
 * A square of 100 mm to measure, on the page, where none of its sides comes over what is drawn in the window and least stands inside it; where there is no such
 * place, its four corners alone where they come over least. `drawn` are places along the drawing's lines and words, on the page.
 */
export function tileSquare(window: Box, drawn: readonly Point[]): SheetLine[] {
  const near = inWindow(window, drawn);
  const whole = bestPlace(window, near, costOfSides);
  if (whole.cost < onLine) return [{ weight: "dimension", path: rectangleOf(boxAt(whole)) }];
  const tried = arms.map((arm) => ({ arm, place: bestPlace(window, near, costOfCorners(arm)) }));
  const { arm, place } = tried.find((one) => one.place.cost === 0) ?? tried.at(-1)!;
  const { minX, minY, maxX, maxY } = boxAt(place);
  const corner = (x: number, y: number, dx: number, dy: number): SheetLine => {
    const points = [
      { x: x + dx * arm, y },
      { x, y },
      { x, y: y + dy * arm },
    ];
    return {
      weight: "dimension",
      path: { closed: false, points: points.map((at) => ({ ...at, bulge: 0 })) },
    };
  };
  return [
    corner(minX, minY, 1, 1),
    corner(maxX, minY, -1, 1),
    corner(maxX, maxY, -1, -1),
    corner(minX, maxY, 1, -1),
  ];
}

/** What the square is, in words inside it; nothing where they would stand on something in every place there. */
export function squareWords(square: readonly SheetLine[], window: Box, drawn: readonly Point[]): SheetText[] {
  const { minX, minY } = extentsOf(square.map(({ path }) => path))!;
  const near = inWindow(window, drawn);
  const text = placesFor(minX, minY).find((at) => isFree(at, near));
  return text === undefined ? [] : [text];
}

function inWindow(window: Box, places: readonly Point[]): Point[] {
  return places.filter(
    ({ x, y }) => x > window.minX && x < window.maxX && y > window.minY && y < window.maxY,
  );
}

type Corner = { readonly x: number; readonly y: number };
/** What a place costs; `enough` when it costs so much or more, since another is better then. */
type Cost = (left: number, low: number, near: readonly Point[], enough: number) => number;

const boxAt = ({ x, y }: Corner): Box => ({ minX: x, minY: y, maxX: x + side, maxY: y + side });

/** The lower left corner of the place that costs least, the first of several. */
function bestPlace(window: Box, near: readonly Point[], cost: Cost): Corner & { readonly cost: number } {
  const room = { x: window.maxX - window.minX - side - 6, y: window.maxY - window.minY - side - 6 };
  const steps = (length: number) =>
    Array.from({ length: Math.floor(length / pitch) + 1 }, (_, i) => i * pitch).concat(length);
  let best = { cost: Number.POSITIVE_INFINITY, x: 0, y: 0 };
  for (const dx of steps(room.x))
    for (const dy of steps(room.y)) {
      const [x, y] = [window.minX + 3 + dx, window.minY + 3 + dy];
      const here = cost(x, y, near, best.cost);
      if (here < best.cost) best = { cost: here, x, y };
      if (here === 0) return best;
    }
  return best;
}

/** What one place on a line of the square counts, against one inside it. */
const onLine = 100;

/** What lies on the square's sides counts a hundredfold, what lies inside it once. */
function costOfSides(left: number, low: number, near: readonly Point[], enough: number): number {
  let cost = 0;
  for (const { x, y } of near) {
    const inward = Math.min(x - left, left + side - x, y - low, low + side - y);
    if (inward < -beside) continue;
    cost += inward <= beside ? onLine : 1;
    if (cost >= enough) return enough;
  }
  return cost;
}

/** What lies on its corners' arms, which run so long inward from them. */
function costOfCorners(arm: number): Cost {
  const isAlong = (at: number) => at >= -beside && at <= arm + beside;
  return (left, low, near, enough) => {
    let cost = 0;
    for (const { x, y } of near) {
      const [inX, inY] = [Math.min(x - left, left + side - x), Math.min(y - low, low + side - y)];
      const onArm = (Math.abs(inX) <= beside && isAlong(inY)) || (Math.abs(inY) <= beside && isAlong(inX));
      if (onArm && ++cost >= enough) return enough;
    }
    return cost;
  };
}

function placesFor(x: number, y: number): SheetText[] {
  const at = (dx: number, dy: number): SheetText => {
    return { text: words, x: x + dx, y: y + dy, height: lettering.height, turn: 0, align: "left" };
  };
  const rows = [3, side - 3 - lettering.height, 20, 35, 50, 65, 80];
  return rows.flatMap((dy) => [3, 35, 65].map((dx) => at(dx, dy)));
}

function isFree(text: SheetText, near: readonly Point[]): boolean {
  const { minX, minY, maxX, maxY } = textBox(text);
  return !near.some(({ x, y }) => x > minX - 1.5 && x < maxX + 1.5 && y > minY - 1.5 && y < maxY + 1.5);
}
