import Module, { type CrossSection } from "manifold-3d";
import type { Path } from "../../../src/geometry/path.ts";
import { flat } from "../random/flat.ts";

const engine = await Module();
engine.setup();

/** The independent polygon engine: `read` works on flattened paths and everything it makes is freed after. */
export function onPolygons(
  outlines: readonly Path[],
  chord: number,
  read: (section: CrossSection) => CrossSection,
): { area: number; contours: number } {
  const section = new engine.CrossSection(
    outlines.map((path) => flat(path, chord).map(([x, y]): [number, number] => [x, y])),
    "EvenOdd",
  );
  const result = read(section);
  const found = { area: result.area(), contours: result.numContour() };
  if (result !== section) result.delete();
  section.delete();
  return found;
}

/** The area of the offset of flattened outlines, mm², round corners by the same chord error. */
export function offsetArea(outlines: readonly Path[], by: number, chord: number): number {
  return onPolygons(outlines, chord, (section) => {
    const step = 2 * Math.acos(Math.max(0, 1 - chord / Math.max(Math.abs(by), chord)));
    return section.offset(by, "Round", 2, Math.max(8, 4 * Math.ceil(Math.PI / (2 * step))));
  }).area;
}

/** The area of a combination of flattened outlines, mm². */
export function combinedArea(
  how: "add" | "subtract" | "intersect",
  a: readonly Path[],
  b: readonly Path[],
  chord: number,
): number {
  const polygons = b.map((path) => flat(path, chord).map(([x, y]): [number, number] => [x, y]));
  const other = new engine.CrossSection(polygons, "EvenOdd");
  const { area } = onPolygons(a, chord, (section) => section[how](other));
  other.delete();
  return area;
}
