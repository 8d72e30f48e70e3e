import { measureSurface, type Surface } from "./surface.ts";

/** What a model says that a file of it must measure: volume (mm³), least and most x, y, z (mm), triangles. */
export type Expected = {
  readonly volume: number;
  readonly least: { readonly x: number; readonly y: number; readonly z: number };
  readonly most: { readonly x: number; readonly y: number; readonly z: number };
  readonly triangles: number;
};

/** How a file differs from its model; `found` and `wanted` in mm, mm³ or a count. */
export type Difference = {
  readonly what: "triangles" | "open-edges" | "crowded-edges" | "volume" | "extents";
  readonly found: number;
  readonly wanted: number;
};

/** How much of a mm float32 and the rounding of text may move a vertex, for parts up to some metres. */
const MOVED = 2e-4;

/**
 * Compares a surface read from a file with its model: the count of triangles, that every edge is run once each way (in
 * an STL, which knows places only, an edge along which a solid touches itself is crowded), the
 * volume (within what vertices moved by 0.0002 mm can make, and a part in ten thousand), each of the extents. No
 * difference gives an empty list.
 */
export function readBack(surface: Surface, expected: Expected): readonly Difference[] {
  const { triangles, openEdges, crowdedEdges, volume, extents } = measureSurface(surface);
  const { least, most } = expected;
  const wanted = [least.x, least.y, least.z, most.x, most.y, most.z];
  const [width, depth, height] = [most.x - least.x, most.y - least.y, most.z - least.z];
  const skin = 2 * (width * depth + depth * height + height * width) * MOVED;
  const differences: Difference[] = [];
  if (triangles !== expected.triangles)
    differences.push({ what: "triangles", found: triangles, wanted: expected.triangles });
  if (crowdedEdges !== 0) differences.push({ what: "crowded-edges", found: crowdedEdges, wanted: 0 });
  if (openEdges !== 0) differences.push({ what: "open-edges", found: openEdges, wanted: 0 });
  if (!(Math.abs(volume - expected.volume) <= Math.min(skin, 1e-4 * expected.volume))) {
    differences.push({ what: "volume", found: volume, wanted: expected.volume });
  }
  for (const [i, value] of wanted.entries()) {
    if (!(Math.abs(extents[i]! - value) <= MOVED))
      differences.push({ what: "extents", found: extents[i]!, wanted: value });
  }
  return differences;
}
