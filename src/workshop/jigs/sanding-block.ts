import { upright } from "../../geometry/solid/frame.ts";
import type { Section, Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import { lettered, letteringSize } from "./lettered.ts";
import type { Piece } from "./piece.ts";
import { hollowUnder } from "./radius-gauge.ts";

/**
 * A hollow block for sanding a board across, mm: the board's radius and width at the two ends of its stretch, how long that is, and how thick
 * the paper is that is stuck into the hollow; what is lettered on the end toward the bridge.
 */
export type SandingBlockInput = {
  readonly near: { readonly radius: number; readonly width: number };
  readonly far: { readonly radius: number; readonly width: number };
  readonly length: number;
  readonly paper: number;
  readonly lines: readonly string[];
  readonly piece: Piece;
};

/** Sandpaper with its glue, mm (G: measure your own; the block is lettered with it). */
export const paperThickness = 0.3;

/** The rims beside the hollow, and what lies round the lettering, mm (G). */
const [foot, over] = [3, 2];

/** Half the hollow's width, half the block's, and how high its back is over the hollow's top, mm. */
export function sandingBlockSize(given: Pick<SandingBlockInput, "near" | "far" | "lines">): {
  half: number;
  wide: number;
  back: number;
} {
  const size = letteringSize(given.lines);
  const half = Math.max(given.near.width, given.far.width) / 2;
  return { half, wide: Math.max(half + foot, size.width / 2 + over), back: size.height + 2 * over };
}

/**
 * A block whose hollow has the board's radius and the paper's thickness all along, so that what the paper cuts has the board's. It stands on
 * its end as it is printed, the board's length up along z toward the bridge: layers are arcs then, and nothing hangs over.
 */
export const sandingBlock = step("jig.sanding-block", 1, (given: SandingBlockInput): Solid => {
  const { near, far, length, paper, lines } = given;
  const { half, wide, back } = sandingBlockSize(given);
  const section = ({ radius }: SandingBlockInput["near"], z: number): Section => ({
    ...{ kind: "path", frame: { ...upright, origin: { x: 0, y: 0, z } } },
    path: hollowUnder(radius + paper, half, wide, back),
  });
  const block: Solid = { kind: "loft", sections: [section(near, 0), section(far, length)] };
  return lettered(block, { lines, x: 0, y: back - over, z: length });
});
