import { difference } from "../../../geometry/boolean/difference.ts";
import { extentsOf, signedArea } from "../../../geometry/measure.ts";
import type { Path } from "../../../geometry/path.ts";
import { rectangle } from "../../../geometry/rectangle.ts";
import { outlinesOf } from "../../../geometry/region.ts";
import { type Annotated, annotated } from "../annotate.ts";
import { hatched } from "../hatch.ts";
import { stacked } from "../linear.ts";
import { placed } from "../moved.ts";
import { stroke } from "../strokes.ts";
import type { NeckSheetInput, SectionAt } from "./input.ts";

/** A section of the neck, seen from the tail, hatched where it is cut, with its width and depth. */
export function sectionView(input: NeckSheetInput, section: SectionAt, scale: number): Annotated {
  const outlines = cutThrough(input, section).map((path) => placed(path, scale));
  const { minX, maxX, minY, maxY } = extentsOf([section.path])!;
  const area = signedArea(section.path) * scale * scale;
  const lines = [
    ...outlines.map((path) => ({ weight: "cut", path }) as const),
    ...hatched(outlines, Math.min(4, Math.max(1.6, Math.sqrt(area) / 9))),
    stroke("centre", { x: 0, y: minY * scale - 4 }, { x: 0, y: maxY * scale + 4 }),
  ];
  const { usual } = input.tolerances;
  const [left, right] = [
    { x: minX, y: maxY },
    { x: maxX, y: maxY },
  ];
  const bottom = { x: 0, y: minY };
  const name = `section at ${section.name}`;
  return annotated({ lines, texts: [] }, [
    stacked(
      { name: `width of the ${name}`, along: "x", from: left, to: right, tolerance: usual },
      scale,
      maxY * scale,
      1,
    ),
    stacked(
      { name: `depth of the ${name}`, along: "y", from: right, to: bottom, tolerance: usual },
      scale,
      maxX * scale,
      1,
    ),
  ]);
}

/** The section's outlines without what channels and pins' holes take of it there. */
function cutThrough({ rods, pins }: NeckSheetInput, { x, path }: SectionAt): Path[] {
  const { minY } = extentsOf([path])!;
  const pockets = [
    ...rods.flatMap(({ path: channel, depth }) => {
      const { minX, maxX, minY: low, maxY: high } = extentsOf([channel])!;
      return x > minX && x < maxX ? [rectangle(low, -depth, high, 1)] : [];
    }),
    ...pins.flatMap(({ x: at, y, diameter, depth }) => {
      const off = Math.abs(x - at);
      if (off >= diameter / 2) return [];
      const half = Math.sqrt((diameter / 2) ** 2 - off ** 2);
      return [rectangle(y - half, depth === "through" ? minY - 1 : -depth, y + half, 1)];
    }),
  ];
  return pockets.reduce<Path[]>(
    (outlines, pocket) => {
      const left = difference(
        outlines.map((outer) => ({ outer, holes: [] })),
        [{ outer: pocket, holes: [] }],
      );
      if (left.outcome !== "ok") throw new RangeError(`nothing is left of the section: ${left.outcome}`);
      return outlinesOf(left.region);
    },
    [path],
  );
}
