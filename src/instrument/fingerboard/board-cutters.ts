import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import type { Frame } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import type { Dots, SideDots } from "./dots.ts";
import type { FretSlots } from "./fret-slots.ts";
import { slotFloor } from "./slot-floor.ts";
import { type BoardSurface, boardArc } from "./surface.ts";
import { boardWidth } from "./taper.ts";

/** What is let into the board: slots, dots and inlays' recesses, each recess by its outline and the height of its floor; mm. */
export type BoardCuttersInput = {
  readonly board: BoardSurface;
  readonly slots: FretSlots | null;
  readonly through: boolean;
  readonly dots: Dots | null;
  readonly sideDots: SideDots | null;
  readonly recesses: readonly { readonly path: Path; readonly floor: number }[];
};

/** How far a cutter stands out of the face that it enters, mm. */
const clear = 1;

/** What is cut out of the board, each a solid that stands out of the face that it enters. Slots' floors follow the arc; the others' are flat. */
export const boardCutters = step("fingerboard.cutters", 1, (given: BoardCuttersInput): readonly Solid[] => {
  const { board, slots, dots, sideDots, recesses } = given;
  const up = highest(board) + clear;
  const sunk = (outer: Path, floor: number): Solid => {
    return { kind: "extrude", outlines: [{ outer, holes: [] }], base: floor, height: up - floor };
  };
  return [
    ...(slots?.slots ?? []).map(({ x, half }) =>
      slot(board, { x, half, width: slots!.width, depth: slots!.depth, through: given.through, up }),
    ),
    ...(dots?.list ?? []).map(({ x, y, floor }) => sunk(circle({ x, y }, dots!.size / 2), floor)),
    ...(sideDots?.list ?? []).map(({ x, z }) => sideBore(board, x, z, sideDots!)),
    ...recesses.map(({ path, floor }) => sunk(path, floor)),
  ];
});

/** A height that no place of the board reaches over: that of the tops of its sections' circles. */
function highest(board: BoardSurface): number {
  const tops = Array.from({ length: 33 }, (_, i) => {
    const arc = boardArc(board, (board.taper.length * i) / 32);
    return arc.z + arc.radius;
  });
  return Math.max(...tops);
}

type Slot = {
  readonly x: number;
  readonly half: number;
  readonly width: number;
  readonly depth: number;
  readonly through: boolean;
  readonly up: number;
};

/** A slot's cutter: its section across the board, raised along x. A through slot runs on level beyond the board's edges. */
function slot(board: BoardSurface, { x, half, width, depth, through, up }: Slot): Solid {
  const arc = boardArc(board, x);
  const floor = (y: number) => ({ x: y, y: slotFloor(board, x, y, depth) });
  const angle = (y: number) => Math.asin(Math.max(-1, Math.min(1, (y - arc.y) / (arc.radius - depth))));
  const beyond = half + clear;
  const [bass, treble] = [floor(-half), floor(half)];
  const bulge = -Math.tan((angle(half) - angle(-half)) / 4);
  const points = [
    ...(through ? [{ x: -beyond, y: bass.y, bulge: 0 }] : []),
    { ...bass, bulge },
    { ...treble, bulge: 0 },
    ...(through ? [{ x: beyond, y: treble.y, bulge: 0 }] : []),
    { x: through ? beyond : half, y: up, bulge: 0 },
    { x: through ? -beyond : -half, y: up, bulge: 0 },
  ];
  const solid: Solid = {
    kind: "extrude",
    outlines: [{ outer: { closed: true, points }, holes: [] }],
    height: width,
  };
  return { kind: "place", solid, frame: across(x - width / 2) };
}

/** The plane across the board at x: y to the treble side, z up, raised toward the tail. */
function across(x: number): Frame {
  return {
    origin: { x, y: 0, z: 0 },
    ...{ u: { x: 0, y: 1, z: 0 }, v: { x: 0, y: 0, z: 1 }, w: { x: 1, y: 0, z: 0 } },
  };
}

/** A bore square into the bass edge, whose wall leans outward toward the tail as the board widens. */
function sideBore(board: BoardSurface, x: number, z: number, { size, depth }: SideDots): Solid {
  const { taper } = board;
  const lean = Math.atan((taper.end - taper.nut) / 2 / taper.length);
  const out = { x: -Math.sin(lean), y: -Math.cos(lean), z: 0 };
  const frame: Frame = {
    origin: { x: x - depth * out.x, y: -boardWidth(taper, x) / 2 - depth * out.y, z },
    ...{ u: { x: Math.cos(lean), y: -Math.sin(lean), z: 0 }, v: { x: 0, y: 0, z: 1 }, w: out },
  };
  const round = { outer: circle({ x: 0, y: 0 }, size / 2), holes: [] };
  return { kind: "place", solid: { kind: "extrude", outlines: [round], height: depth + clear }, frame };
}
