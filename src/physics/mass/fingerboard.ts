import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import { areaMoments } from "../../geometry/path-measures/area-moments.ts";
import { placesOver } from "../../geometry/path-measures/places-over.ts";
import type { SolidMoments } from "../../geometry/solid/slices.ts";
import { stretches } from "../../geometry/stretches.ts";
import type { BoardCuttersInput } from "../../instrument/fingerboard/board-cutters.ts";
import { boardSection } from "../../instrument/fingerboard/board-section.ts";
import type { SideDots } from "../../instrument/fingerboard/dots.ts";
import type { FretSlots } from "../../instrument/fingerboard/fret-slots.ts";
import { type BoardSurface, boardArc, boardTop } from "../../instrument/fingerboard/surface.ts";
import { boardWidth } from "../../instrument/fingerboard/taper.ts";
import { step } from "../../step/step.ts";
import { type Measured, measuredOf, momentsAt, together } from "./moments.ts";

/** What a board's volume follows from: its surface, the radius of the corners at its end, and what is let into it; mm. */
export type BoardMassInput = Omit<BoardCuttersInput, "through"> & { readonly corner: number };

/**
 * A finished fingerboard's volume and middle: its sections, whose tops are true arcs, integrated along x; less slots between the board's own arc and
 * one of the same centre, dots and recesses as columns over their floors, and the side dots' bores, cylinders square to the edge.
 * What is let in may not lie over one another.
 */
export const boardMeasured = step("mass.fingerboard", 1, (given: BoardMassInput): Measured => {
  const { board, slots, dots, sideDots, recesses } = given;
  const sunk = (path: Path, floor: number) =>
    together(
      placesOver(path, 5).map(({ x, y, weight }) => column(x, y, floor, boardTop(board, x, y), weight)),
    );
  return measuredOf(
    together(
      [plain(given)],
      [
        ...(slots?.slots ?? []).map((slot) => slotMoments(board, slots!, slot)),
        ...(dots?.list ?? []).map(({ x, y, floor }) => sunk(circle({ x, y }, dots!.size / 2), floor)),
        ...(sideDots?.list ?? []).map((dot) => sideBore(board, sideDots!, dot)),
        ...recesses.map(({ path, floor }) => sunk(path, floor)),
      ],
    ),
  );
});

function plain({ board, corner }: BoardMassInput): SolidMoments {
  const { taper } = board;
  const slope = (taper.end - taper.nut) / 2 / taper.length;
  const slant = Math.hypot(1, slope);
  // A corner's arc: its middle, and where it leaves the straight edge.
  const middle = {
    x: taper.length - corner,
    y: boardWidth(taper, taper.length - corner) / 2 - corner * slant,
  };
  const leaves = middle.x - (corner * slope) / slant;
  const half = (x: number) =>
    x < leaves
      ? boardWidth(taper, x) / 2
      : middle.y + Math.sqrt(Math.max(0, corner ** 2 - (x - middle.x) ** 2));
  const sections = stretches(0, taper.length, [leaves], 6).map(({ x, weight }) => {
    const { area, x: y, y: z } = areaMoments(boardSection(board, x, half(x)));
    return { volume: area * weight, x: area * weight * x, y: y * weight, z: z * weight };
  });
  return together(sections);
}

function column(x: number, y: number, low: number, high: number, area: number): SolidMoments {
  const volume = area * (high - low);
  return { volume, x: volume * x, y: volume * y, z: (volume * (low + high)) / 2 };
}

function slotMoments(
  board: BoardSurface,
  { width, depth }: FretSlots,
  { x, half }: FretSlots["slots"][number],
): SolidMoments {
  const arc = boardArc(board, x);
  const height = (radius: number, y: number) =>
    arc.z + Math.sqrt(Math.max(0, radius ** 2 - (y - arc.y) ** 2));
  return together(
    stretches(-half, half, [], 6).map(({ x: y, weight }) =>
      column(x, y, height(arc.radius - depth, y), height(arc.radius, y), weight * width),
    ),
  );
}

function sideBore(
  { taper }: BoardSurface,
  { size, depth }: SideDots,
  { x, z }: SideDots["list"][number],
): SolidMoments {
  const lean = Math.atan((taper.end - taper.nut) / 2 / taper.length);
  const middle = {
    ...{ x: x + (depth / 2) * Math.sin(lean), z },
    y: -boardWidth(taper, x) / 2 + (depth / 2) * Math.cos(lean),
  };
  return momentsAt((Math.PI / 4) * size ** 2 * depth, middle);
}
