import { fairCurve } from "../../geometry/fair/fair-curve.ts";
import { fairPath } from "../../geometry/fair/fair-path.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type BoardSurface, boardTop } from "./surface.ts";
import { boardWidth } from "./taper.ts";

/** A board, and the line along it that the profile is of: the middle line, or the bass edge seen square. */
export type BoardProfileInput = { readonly board: BoardSurface; readonly line: "middle" | "bass-edge" };

/** How many places of the surface between nut and end a profile passes through. */
const inner = 15;

/**
 * The board's profile along a line, head at the left and front up: from 0 at the nut along the line, and over the underside, mm; closed, counter-clockwise.
 * Its top is fair through 17 places of the surface, within 0.02 mm of it everywhere. A board with a thickness somewhere that isn't positive throws.
 */
export const boardProfile = step("fingerboard.profile", 1, ({ board, line }: BoardProfileInput): Path => {
  const { taper } = board;
  const slant = line === "middle" ? 1 : Math.hypot(1, (taper.end - taper.nut) / 2 / taper.length);
  const top = Array.from({ length: inner + 2 }, (_, i) => {
    const x = (taper.length * (inner + 1 - i)) / (inner + 1);
    return { x: x * slant, y: boardTop(board, x, line === "middle" ? 0 : -boardWidth(taper, x) / 2) };
  });
  const curve = fairCurve(
    [
      { x: 0, y: 0, corner: 0 },
      { x: taper.length * slant, y: 0, corner: 0 },
      ...top.map((place, i) => (i === 0 || i === inner + 1 ? { ...place, corner: 0 } : place)),
    ],
    { closed: true },
  );
  const path = curve.kind === "ok" ? fairPath(curve.curve) : undefined;
  if (path?.kind !== "ok") throw new RangeError("the board has no profile");
  return path.path;
});
