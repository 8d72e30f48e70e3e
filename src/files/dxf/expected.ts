import type { Flat } from "../../drawing/flat/flat.ts";
import { extentsOf, pathLength, signedArea } from "../../geometry/measure.ts";
import type { Expected } from "./read-back.ts";

/** What the model's own geometry says that each path of a drawing measures. */
export function expectedOf({ shapes }: Flat): Expected[] {
  return shapes.map(({ layer, path }) => {
    const extents = extentsOf([path]);
    const bulges = path.points
      .filter((_, i) => path.closed || i < path.points.length - 1)
      .map(({ bulge }) => bulge);
    return {
      ...{ layer, closed: path.closed, length: pathLength(path), area: path.closed ? signedArea(path) : 0 },
      extents:
        extents === undefined ? [0, 0, 0, 0] : [extents.minX, extents.minY, extents.maxX, extents.maxY],
      arcs: {
        left: bulges.filter((bulge) => bulge >= straight).length,
        right: bulges.filter((bulge) => bulge <= -straight).length,
      },
    };
  });
}

/** A bulge under this is written as a line: see the writer. */
const straight = 1e-6;
