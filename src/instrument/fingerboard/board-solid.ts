import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { facet, facetCounts } from "../../geometry/solid/facet.ts";
import type { Section, Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import { boardSection } from "./board-section.ts";
import { type BoardSurface, boardTop } from "./surface.ts";
import { boardWidth } from "./taper.ts";

/** What the finished board follows from: its surface, its outline from the front, and what is cut out of it; mm. */
export type BoardSolidInput = {
  readonly board: BoardSurface;
  readonly outline: Path;
  readonly cutters: readonly Solid[];
};

/** How far the loft's straight pieces may lie over the scooped surface, and the chords of its corners off their arcs, mm. */
const near = { along: 0.0005, corner: 0.004 };

/**
 * The finished board as the instrument lies: underside z = 0, square edges along its outline, on top the playing surface, each of its
 * sections a true arc. A loft of sections across it, so near to each other that it lies within 0.0005 of the scoop; `cutters` are cut out.
 */
export const boardSolid = step(
  "fingerboard.solid",
  1,
  ({ board, outline, cutters }: BoardSolidInput): Solid => {
    const rim = bassRim(outline);
    const places = [...rim.map(({ x }) => x), ...alongBoard(board)].sort((a, b) => a - b);
    const sections = places
      .filter((x, i) => i === 0 || x - places[i - 1]! > 1e-4)
      .map((x): Section => {
        return {
          ...{ kind: "path", path: boardSection(board, x, halfAt(rim, x)) },
          frame: {
            origin: { x, y: 0, z: 0 },
            ...{ u: { x: 0, y: 1, z: 0 }, v: { x: 0, y: 0, z: 1 }, w: { x: 1, y: 0, z: 0 } },
          },
        };
      });
    const whole: Solid = { kind: "loft", sections };
    return cutters.length === 0 ? whole : { kind: "cut", from: whole, by: cutters };
  },
);

/** The outline's bass side from the nut to the board's end, its corner's arc in chords; the treble side is the same mirrored. */
function bassRim(outline: Path): Point[] {
  return facet(outline, facetCounts(outline, near.corner))
    .filter(({ y }) => y < 0)
    .sort((a, b) => a.x - b.x);
}

/** Places from nut to end with so little hollow between two that a straight piece over it lies within `near.along`. */
function alongBoard(board: BoardSurface): number[] {
  const { taper } = board;
  const hollow = Math.max(
    ...[-1, 0, 1].map((side) => {
      const [a, m, b] = [0, 0.5, 1].map((t) => {
        const x = taper.length * t;
        return boardTop(board, x, (side * boardWidth(taper, x)) / 2);
      });
      return Math.abs((a! + b!) / 2 - m!);
    }),
  );
  const count = Math.max(8, Math.ceil(Math.sqrt(hollow / near.along)));
  return Array.from({ length: count + 1 }, (_, i) => (taper.length * i) / count);
}

/** Half the board's width at x, by the rim. */
function halfAt(rim: readonly Point[], x: number): number {
  const i = Math.max(
    1,
    rim.findIndex((place) => place.x >= x),
  );
  const [a, b] = [rim[i - 1]!, rim[i]!];
  return -(a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x));
}
