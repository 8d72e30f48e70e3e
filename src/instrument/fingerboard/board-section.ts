import type { Path } from "../../geometry/path.ts";
import { type BoardSurface, boardArc } from "./surface.ts";

/**
 * The board's section at x from the nut, seen from the tail: y to the treble side, z over its underside, mm; counter-clockwise from the
 * bass corner of the underside. Its top is one true arc. `half` is half its width there.
 */
export function boardSection(board: BoardSurface, x: number, half: number): Path {
  const arc = boardArc(board, x);
  const at = (y: number) => ({ x: y, y: arc.z + Math.sqrt(arc.radius ** 2 - (y - arc.y) ** 2) });
  const angle = (y: number) => Math.asin((y - arc.y) / arc.radius);
  return {
    closed: true,
    points: [
      { x: -half, y: 0, bulge: 0 },
      { x: half, y: 0, bulge: 0 },
      { ...at(half), bulge: Math.tan((angle(half) - angle(-half)) / 4) },
      { ...at(-half), bulge: 0 },
    ],
  };
}
