import { type Flat, flatExtents } from "../../drawing/flat/flat.ts";
import { extentsOf, pathLength, signedArea } from "../../geometry/measure.ts";
import type { Expected, ExpectedPath } from "./read-back.ts";
import { straight } from "./straight.ts";

/** What the model's own geometry says that a drawing's file holds: every path, every note and the extents. */
export function expectedOf(flat: Flat): Expected {
  const { minX, minY, maxX, maxY } = flatExtents(flat) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return {
    paths: flat.shapes.map(expectedPath),
    notes: flat.notes.map(({ text, x, y, height, turn }) => ({ layer: "NOTE", text, x, y, height, turn })),
    extents: [minX, minY, maxX, maxY],
  };
}

function expectedPath({ layer, path }: Flat["shapes"][number]): ExpectedPath {
  const extents = extentsOf([path]);
  const bulges = path.points
    .filter((_, i) => path.closed || i < path.points.length - 1)
    .map(({ bulge }) => bulge);
  return {
    ...{ layer, closed: path.closed, length: pathLength(path), area: path.closed ? signedArea(path) : 0 },
    extents: extents === undefined ? [0, 0, 0, 0] : [extents.minX, extents.minY, extents.maxX, extents.maxY],
    arcs: {
      left: bulges.filter((bulge) => bulge >= straight).length,
      right: bulges.filter((bulge) => bulge <= -straight).length,
    },
    vertices: path.points.map(({ x, y, bulge }) => ({ x, y, bulge })),
  };
}
