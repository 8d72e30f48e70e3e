import { grown } from "../../geometry/extents/grown.ts";
import type { Extents } from "../../geometry/measure.ts";
import { offsetOpen } from "../../geometry/offset/offset-open.ts";
import type { Path } from "../../geometry/path.ts";
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

/** Saw lines, each from the blank's edge to its edge. */
export type SawLines =
  | { readonly kind: "ok"; readonly lines: readonly SawLine[] }
  | { readonly kind: "no-line" };

type Side = SawLine["side"];

/** How far past the blank a side is led, beyond what it is moved by, mm: its moved end must lie outside too. */
const past = 1;

/**
 * The saw lines along both long sides of an outline: the finished side led on straight past its ends, moved outward by the
 * allowance and half a kerf, its corners mitred.
 *
 * The ends stay in the blank, since the index pins stand there. Where the kerf would not lie within the blank there is no
 * waste to saw off: the line then runs out straight through the blank's face, which is kept. `no-line` where a side can't be
 * followed at that distance.
 */
export function sawLines({ outline, blank, allowance, kerf }: SawLinesInput): SawLines {
  const sides = longSides(outline);
  if (sides.kind !== "ok") return { kind: "no-line" };
  const wide = grown(blank, 2 * (allowance + kerf) + past);
  const lines: SawLine[] = [];
  for (const side of ["low", "high"] as const) {
    const out = side === "high" ? 1 : -1;
    const moved = offsetOpen(ledOnBothWays(sides[side], wide), out * (allowance + kerf / 2), {
      corners: "mitre",
    });
    if (moved.outcome !== "ok") return { kind: "no-line" };
    for (const stretch of stretchesWithin(moved.path, kerfWithin(blank, side, kerf)))
      lines.push({ side, path: ledOnBothWays(stretch, blank) });
  }
  return { kind: "ok", lines };
}

/** Where a line along one side may lie for its kerf to be in the blank. The other side's face is left to its own line. */
export function kerfWithin(blank: Extents, side: Side, kerf: number): Extents {
  return side === "high"
    ? { ...blank, maxY: blank.maxY - kerf / 2 }
    : { ...blank, minY: blank.minY + kerf / 2 };
}
