import type { Sheet, SheetText, Weight } from "../../../src/drawing/sheet/sheet.ts";
import type { Path } from "../../../src/geometry/path.ts";
import type { Point } from "../../../src/geometry/point.ts";

/** All texts of some pages in the order in which they were written. */
export function textsOf(pages: readonly Sheet[]): SheetText[] {
  return pages.flatMap(({ texts }) => texts);
}

/** All words of some pages in one line, as a person reads them on. */
export function wordsOf(pages: readonly Sheet[]): string {
  return textsOf(pages)
    .map(({ text }) => text)
    .join(" ")
    .replace(/\s+/g, " ");
}

/** What stands in the cell beside a name, its first line; nothing where no row has that name. */
export function cellBeside(pages: readonly Sheet[], name: string): string | undefined {
  for (const { texts } of pages) {
    const own = texts.find(({ text }) => text === name);
    if (own === undefined) continue;
    const beside = texts.filter(({ x, y }) => x > own.x + 1 && Math.abs(y - own.y) < 0.01);
    const next = beside.sort((a, b) => a.x - b.x)[0];
    if (next !== undefined) return next.text;
  }
  return undefined;
}

/** The paths of one weight on a page. */
export function pathsOf({ lines }: Sheet, weight: Weight): Path[] {
  return lines.flatMap((line) => (line.weight === weight ? [line.path] : []));
}

/** An arrow as it is drawn: where it begins and where its head's tip is, mm on paper. */
export type Drawn = { readonly from: Point; readonly to: Point };

/** Thin arrows: straight strokes of a seen edge that end in the tip of a filled head. */
export function thinArrows(page: Sheet): Drawn[] {
  const tips = pathsOf(page, "arrow").map(({ points }) => points[0]!);
  return pathsOf(page, "edge").flatMap(({ closed, points }): Drawn[] => {
    if (closed || points.length !== 2 || points[0]!.bulge !== 0) return [];
    const [from, to] = [points[0]!, points[1]!];
    return tips.some((tip) => apart(tip, to) < 1e-6) ? [{ from, to }] : [];
  });
}

/** Broad arrows: outlines of seven corners, the fourth of them the tip. */
export function broadArrows(page: Sheet): Drawn[] {
  return pathsOf(page, "outline").flatMap(({ closed, points }): Drawn[] => {
    if (!closed || points.length !== 7 || points.some(({ bulge }) => bulge !== 0)) return [];
    const [a, b] = [points[0]!, points[6]!];
    return [{ from: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, to: points[3]! }];
  });
}

/** The middle of a circle that is drawn as two halves; nothing for another path. */
export function middleOf({ closed, points }: Path): Point | undefined {
  if (!closed || points.length !== 2 || points.some(({ bulge }) => Math.abs(bulge) !== 1)) return undefined;
  return { x: (points[0]!.x + points[1]!.x) / 2, y: (points[0]!.y + points[1]!.y) / 2 };
}

/** How far two places are apart. */
export function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
