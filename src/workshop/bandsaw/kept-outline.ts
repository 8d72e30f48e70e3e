import { difference } from "../../geometry/boolean/difference.ts";
import { grown } from "../../geometry/extents/grown.ts";
import type { Extents } from "../../geometry/measure.ts";
import { offsetOpen } from "../../geometry/offset/offset-open.ts";
import type { Path } from "../../geometry/path.ts";
import { rectangleOf } from "../../geometry/rectangle.ts";
import { outlinesOf, type Region } from "../../geometry/region.ts";
import { regionWithin } from "../../geometry/region-within.ts";
import { ledOnBothWays } from "./led-on.ts";
import type { SawLine } from "./saw-lines.ts";

/** What is left between the kerfs; or that it isn't one piece without a hole. */
export type KeptOutline = { readonly kind: "ok"; readonly path: Path } | { readonly kind: "not-one" };

/** How far past the blank the edge of the kept wood is led before the waste is closed round outside, mm. */
const past = 1;

/**
 * What is kept of a blank that is sawn along its lines: the blank less what lies beyond the kerfs' inner edges, which stand
 * half a kerf from the lines; counter-clockwise, mm.
 */
export function keptOutline(blank: Extents, lines: readonly SawLine[], kerf: number): KeptOutline {
  let kept: Region = regionWithin(rectangleOf(blank));
  for (const line of lines) {
    const waste = wasteBeyond(line, blank, kerf);
    const left = waste === undefined ? undefined : difference(kept, regionWithin(waste));
    if (left?.outcome !== "ok") return { kind: "not-one" };
    kept = left.region;
  }
  const [only, more] = outlinesOf(kept);
  return only === undefined || more !== undefined ? { kind: "not-one" } : { kind: "ok", path: only };
}

/** All that lies beyond a line's kerf, closed well outside the blank. */
function wasteBeyond({ side, path }: SawLine, blank: Extents, kerf: number): Path | undefined {
  const led = ledOnBothWays(path, grown(blank, kerf + past));
  const inner = offsetOpen(led, ((side === "high" ? -1 : 1) * kerf) / 2);
  if (inner.outcome !== "ok") return undefined;
  const far = 20 * past + 2 * kerf;
  const y = side === "high" ? blank.maxY + far : blank.minY - far;
  const [first, last] = [inner.path.points[0]!, inner.path.points.at(-1)!];
  return {
    closed: true,
    points: [...inner.path.points, { x: last.x, y, bulge: 0 }, { x: first.x, y, bulge: 0 }],
  };
}
