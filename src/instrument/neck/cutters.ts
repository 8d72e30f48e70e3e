import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import { axesAlong } from "../../geometry/solid/axes-along.ts";
import type { Section, Solid } from "../../geometry/solid/solid.ts";
import { unit } from "../../geometry/solid/vec3.ts";
import { coreAxes } from "../core/from-core.ts";
import { drilledCutter } from "../drilled.ts";
import { type Pocket, pocketCutter } from "../pocket.ts";
import type { Hole, NeckSolidInput } from "./solid.ts";

/** What a neck is cut by, and the stretch of it that this may reach, by x from the nut, mm. */
export type Cutter = { readonly solid: Solid; readonly from: number; readonly to: number };

/** How far a cutter stands out of the face that it enters, mm. */
const clear = 1;

/** The cutters of all that is bored and sunk into a neck, as the instrument lies. */
export function cuttersOf(given: NeckSolidInput): Cutter[] {
  const frame = coreAxes(given.core);
  const inCore = (solid: Solid): Solid => ({ kind: "place", solid, frame });
  return [
    ...given.channels.map(channel),
    ...given.holes.map(hole),
    ...given.pockets.map((pocket) => ({
      ...reachOf(given, pocket),
      solid: inCore(pocketCutter(pocket, given.coreDepth)),
    })),
    ...given.drilled.map((bore) => ({
      ...{ from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY },
      solid: inCore(drilledCutter(bore)),
    })),
  ];
}

function channel({ path, depth }: NeckSolidInput["channels"][number]): Cutter {
  const { minX, maxX } = extentsOf([path])!;
  const solid: Solid = {
    ...{ kind: "extrude", outlines: [{ outer: path, holes: [] }], base: -depth, height: depth + clear },
  };
  return { solid, from: minX, to: maxX };
}

/** A pocket leans with the core that it stands square in. */
function reachOf({ core, coreDepth }: NeckSolidInput, { path }: Pocket): Omit<Cutter, "solid"> {
  const { minX, maxX } = extentsOf([path])!;
  const slope = (core.slope * Math.PI) / 180;
  const leans = (coreDepth + clear) * Math.abs(Math.sin(slope)) + clear;
  const at = (along: number) => core.start + along * Math.cos(slope);
  return { from: at(minX) - leans, to: at(maxX) + leans };
}

/** The cutter of a hole, from its bottom to over the face. */
function hole({ at, out, diameter, bottom, depth }: Hole): Cutter {
  const grows = (diameter - bottom) / depth;
  const aside = Math.abs(unit(out).y) < 0.9 ? { x: 0, y: 1, z: 0 } : { x: 0, y: 0, z: 1 };
  // As an input the direction was rounded; its axes are units again.
  const axes = axesAlong(out, aside);
  const round = (over: number): Section => ({
    ...{ kind: "path", path: circle({ x: 0, y: 0 }, (diameter + over * grows) / 2) },
    frame: {
      origin: { x: at.x + over * axes.w.x, y: at.y + over * axes.w.y, z: at.z + over * axes.w.z },
      ...axes,
    },
  });
  const ends = [at.x - depth * axes.w.x, at.x + clear * axes.w.x];
  const wide = Math.max(diameter, bottom) + clear;
  return {
    solid: { kind: "loft", sections: [round(-depth), round(clear)] },
    ...{ from: Math.min(...ends) - wide, to: Math.max(...ends) + wide },
  };
}
