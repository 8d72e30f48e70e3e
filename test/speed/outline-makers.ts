import makerjs from "makerjs";
import Module, { type CrossSection } from "manifold-3d";
import type { Path } from "../../src/geometry/path.ts";
import { segmentsOf } from "../../src/geometry/segment.ts";
import { flat } from "../geometry/random/flat.ts";

/** An offset by the line-drawing library's own outline; the path is turned into its model beforehand. */
export function drawingOutline(path: Path, by: number): () => unknown {
  const paths: Record<string, makerjs.IPath> = {};
  segmentsOf(path).forEach((segment, i) => {
    if (segment.kind === "line") {
      paths[`s${i}`] = new makerjs.paths.Line([segment.from.x, segment.from.y], [segment.to.x, segment.to.y]);
      return;
    }
    const { centre, radius, start, sweep } = segment;
    const [from, to] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
    const degrees = 180 / Math.PI;
    paths[`s${i}`] = new makerjs.paths.Arc([centre.x, centre.y], radius, from * degrees, to * degrees);
  });
  return () => makerjs.model.outline({ paths }, Math.abs(by), 0, by < 0);
}

/** An offset by the polygon engine on a flattening, chord error in mm; flattened and built beforehand. */
export async function engineOffset(path: Path, by: number, chord: number): Promise<() => unknown> {
  const engine = await Module();
  engine.setup();
  const places = flat(path, chord).map(([x, y]): [number, number] => [x, y]);
  const section: CrossSection = new engine.CrossSection([places], "EvenOdd");
  const step = 2 * Math.acos(1 - chord / Math.abs(by));
  const segments = 4 * Math.ceil(Math.PI / (2 * step));
  return () => {
    const result = section.offset(by, "Round", 2, segments);
    const polygons = result.toPolygons();
    result.delete();
    return polygons;
  };
}
