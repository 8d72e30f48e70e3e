import { difference } from "../../geometry/boolean/difference.ts";
import type { Extents } from "../../geometry/measure.ts";
import { offsetOpen } from "../../geometry/offset/offset-open.ts";
import type { Path } from "../../geometry/path.ts";
import { outlinesOf, type Region } from "../../geometry/region.ts";
import { regionWithin } from "../../geometry/region-within.ts";
import { ledOnBothWays } from "./led-on.ts";
import { longSides } from "./long-sides.ts";
import { stretchesWithin } from "./stretches-within.ts";

/** A finished outline along x, the blank's rectangle round it, the wood to leave outside and the blade's kerf; mm. */
export type SawLinesInput = {
  readonly outline: Path;
  readonly blank: Extents;
  readonly allowance: number;
  readonly kerf: number;
};

/** A saw line, walked along x, and on which side of the kept wood it runs: at lesser or at greater y. */
export type SawLine = { readonly side: "low" | "high"; readonly path: Path };

/** Saw lines, each from the blank's edge to its edge, and what of the blank is kept between them. */
export type SawLines =
  | { readonly kind: "ok"; readonly lines: readonly SawLine[]; readonly kept: Path }
  | { readonly kind: "no-line" };

type Side = SawLine["side"];

/** How far past the blank the edge of the kept wood is led before the waste is closed round outside, mm. */
const past = 1;

/**
 * The saw lines along both long sides of an outline: the finished side led on straight past its ends, moved outward by the
 * allowance and half a kerf, its corners mitred.
 *
 * The ends stay in the blank, since the index pins stand there. Where the kerf would not lie within the blank there is no
 * waste to saw off, and the blank's own face is kept: the line then runs out straight through it. `kept` is the blank less
 * what lies beyond the kerfs' inner edges, which stand half a kerf from the lines. `no-line` where a side can't be followed
 * at that distance, or nothing in one piece is kept.
 */
export function sawLines({ outline, blank, allowance, kerf }: SawLinesInput): SawLines {
  const sides = longSides(outline);
  if (sides.kind !== "ok") return { kind: "no-line" };
  const wide = grown(blank, 2 * (allowance + kerf) + past);
  const lines: SawLine[] = [];
  let kept: Region = regionWithin(rectangle(blank));
  for (const side of ["low", "high"] as const) {
    const out = side === "high" ? 1 : -1;
    const moved = offsetOpen(ledOnBothWays(sides[side], wide), out * (allowance + kerf / 2), {
      corners: "mitre",
    });
    if (moved.outcome !== "ok") return { kind: "no-line" };
    for (const stretch of stretchesWithin(moved.path, kerfWithin(blank, side, kerf))) {
      const waste = wasteBeyond(stretch, { blank, side, kerf });
      const left = waste === undefined ? undefined : difference(kept, regionWithin(waste));
      if (left?.outcome !== "ok") return { kind: "no-line" };
      kept = left.region;
      lines.push({ side, path: ledOnBothWays(stretch, blank) });
    }
  }
  const [only, more] = outlinesOf(kept);
  return only === undefined || more !== undefined ? { kind: "no-line" } : { kind: "ok", lines, kept: only };
}

/** A rectangle, larger by so much all round. */
function grown({ minX, maxX, minY, maxY }: Extents, by: number): Extents {
  return { minX: minX - by, maxX: maxX + by, minY: minY - by, maxY: maxY + by };
}

/** A rectangle as a path, counter-clockwise. */
export function rectangle({ minX, maxX, minY, maxY }: Extents): Path {
  const corners = [
    [minX, minY],
    [maxX, minY],
    [maxX, maxY],
    [minX, maxY],
  ] as const;
  return { closed: true, points: corners.map(([x, y]) => ({ x, y, bulge: 0 })) };
}

/** Where a line along one side may lie for its kerf to be in the blank. The other side's face is left to its own line. */
function kerfWithin(blank: Extents, side: Side, kerf: number): Extents {
  return side === "high"
    ? { ...blank, maxY: blank.maxY - kerf / 2 }
    : { ...blank, minY: blank.minY + kerf / 2 };
}

/** All that lies beyond a line's kerf, closed well outside the blank. */
function wasteBeyond(
  stretch: Path,
  { blank, side, kerf }: { blank: Extents; side: Side; kerf: number },
): Path | undefined {
  const led = ledOnBothWays(stretch, grown(blank, kerf + past));
  const inner = offsetOpen(led, ((side === "high" ? -1 : 1) * kerf) / 2);
  if (inner.outcome !== "ok") return undefined;
  const far = side === "high" ? blank.maxY + 20 * past + 2 * kerf : blank.minY - 20 * past - 2 * kerf;
  const [first, last] = [inner.path.points[0]!, inner.path.points.at(-1)!];
  return {
    closed: true,
    points: [...inner.path.points, { x: last.x, y: far, bulge: 0 }, { x: first.x, y: far, bulge: 0 }],
  };
}
