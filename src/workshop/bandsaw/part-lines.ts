import { grown } from "../../geometry/extents/grown.ts";
import type { Extents } from "../../geometry/measure.ts";
import { offsetOpen } from "../../geometry/offset/offset-open.ts";
import type { Path, PathPoint } from "../../geometry/path.ts";
import type { FramePoint } from "../../order/spec.ts";
import { ledOnBothWays } from "./led-on.ts";
import { sawLines } from "./saw-lines.ts";
import { stretchesWithin } from "./stretches-within.ts";

/**
 * What of a part is sawn, in its own plane, its outline counter-clockwise, mm and degrees. A wing: its joint line from [0, 0] to `tail`, which is
 * the outline's first edge, and its joint's bevel, its face `up` when that is sawn and how thick it is then. A body: all round. A
 * board: its two long sides and its two ends.
 */
export type SawnShape =
  | {
      readonly kind: "wing";
      readonly outline: Path;
      readonly tail: FramePoint;
      readonly bevel: number;
      readonly up: "front" | "back";
      readonly thickness: number;
    }
  | { readonly kind: "body" | "board"; readonly outline: Path };

/** A saw line and what it cuts; the joint's stands as it is on the face that is up then. */
export type PartLine = {
  readonly cut: "joint" | "rim" | "outline" | "side" | "end";
  readonly path: Path;
};

/** The saw lines of a part, in the order in which they are cut, or that none leads round it at that distance. */
export type PartLines =
  | { readonly kind: "ok"; readonly lines: readonly PartLine[] }
  | { readonly kind: "no-line" };

/** Where a part's lines stand: its blank, the wood to leave outside and the blade's kerf, mm. */
export type LinesWithin = { readonly blank: Extents; readonly allowance: number; readonly kerf: number };

/** How far past the blank a line is led before it is moved, mm. */
const past = 1;

/**
 * A part's saw lines: its finished edges moved outward by the allowance and half a kerf, corners mitred, from edge to edge of its blank or
 * all round. A joint's line is left as far from the joint's face, square to it, and so farther along the part's face where it is bevelled.
 */
export function partLines(shape: SawnShape, within: LinesWithin): PartLines {
  if (shape.kind === "wing") return wingLines(shape, within);
  return shape.kind === "body" ? bodyLines(shape.outline, within) : boardLines(shape.outline, within);
}

function wingLines(
  shape: Extract<SawnShape, { kind: "wing" }>,
  { blank, allowance, kerf }: LinesWithin,
): PartLines {
  const { outline, tail, up } = shape;
  const bevel = (shape.bevel * Math.PI) / 180;
  const length = Math.hypot(...tail);
  // Away from the wing, square to its joint line in the plane of its face.
  const out = { x: tail[1] / length, y: -tail[0] / length };
  const arris = up === "front" ? 0 : -shape.thickness * Math.tan(bevel);
  const by = arris + (allowance + kerf / 2) / Math.cos(bevel);
  const at = (x: number, y: number): PathPoint => ({ x: x + out.x * by, y: y + out.y * by, bulge: 0 });
  const joint = ledOnBothWays({ closed: false, points: [at(0, 0), at(...tail)] }, blank);
  const [first, ...others] = outline.points;
  const rim: Path = { closed: false, points: [...others, { ...first!, bulge: 0 }] };
  const led = ledOnBothWays(rim, grown(blank, 2 * (allowance + kerf) + past));
  const moved = movedOutward(led, blank, allowance + kerf / 2);
  if (moved.length === 0) return { kind: "no-line" };
  return {
    kind: "ok",
    lines: [
      { cut: "joint", path: joint },
      ...moved.map((path): PartLine => ({ cut: "rim", path: ledOnBothWays(path, blank) })),
    ],
  };
}

function bodyLines(outline: Path, { blank, allowance, kerf }: LinesWithin): PartLines {
  const moved = movedOutward(fromTail(outline), blank, allowance + kerf / 2);
  if (moved.length === 0) return { kind: "no-line" };
  return { kind: "ok", lines: moved.map((path) => ({ cut: "outline", path })) };
}

/** A closed outline, opened where it reaches farthest to the tail. */
function fromTail({ points }: Path): Path {
  const start = points.reduce((best, { x }, i) => (x > points[best]!.x ? i : best), 0);
  const turned = [...points.slice(start), ...points.slice(0, start)];
  return { closed: false, points: [...turned, { ...turned[0]!, bulge: 0 }] };
}

/** A path with the wood on its left, moved away from that, as far as it lies in the blank. */
function movedOutward(path: Path, blank: Extents, by: number): Path[] {
  const moved = offsetOpen(path, -by, { corners: "mitre" });
  return moved.outcome === "ok" ? stretchesWithin(moved.path, blank) : [];
}

function boardLines(outline: Path, { blank, allowance, kerf }: LinesWithin): PartLines {
  const sides = sawLines({ outline, blank, allowance, kerf });
  if (sides.kind !== "ok") return sides;
  const xs = outline.points.map(({ x }) => x);
  const by = allowance + kerf / 2;
  const across = (x: number): Path => ({
    closed: false,
    points: [
      { x, y: blank.minY, bulge: 0 },
      { x, y: blank.maxY, bulge: 0 },
    ],
  });
  // A kerf that would not lie within the blank has nothing to take off: the blank's own end is kept.
  const ends = [Math.min(...xs) - by, Math.max(...xs) + by].filter(
    (x) => x - kerf / 2 > blank.minX && x + kerf / 2 < blank.maxX,
  );
  return {
    kind: "ok",
    lines: [
      ...sides.lines.map(({ path }): PartLine => ({ cut: "side", path })),
      ...ends.map((x): PartLine => ({ cut: "end", path: across(x) })),
    ],
  };
}
