import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Frame } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";
import { squashed } from "./squashed.ts";
import { type BridgeStand, sideBetween } from "./stand.ts";

/** What the bridge's solid follows from: its outline and holes in its flat face, how it stands, and the core; mm and degrees. */
export type BridgeSolidInput = {
  readonly outline: Path;
  readonly holes: readonly Path[];
  readonly stand: BridgeStand;
  readonly core: CoreFrame;
};

/** How far a cutting outline stands over what it cuts, mm. */
const clear = 1;

/**
 * The finished bridge as it stands on the instrument: its outline, holes and notches run along the core's front, so that its foot lies flat on
 * it, and the flat face and the face toward the nut are cut through them as the side view has them.
 */
export const bridgeSolid = step(
  "bridge.solid",
  1,
  ({ outline, holes, stand, core }: BridgeSolidInput): Solid => {
    const lean = Math.cos((stand.tilt * Math.PI) / 180);
    const [outer, ...inner] = [outline, ...holes].map((path) => squashed(path, lean));
    const { minX, maxX, maxY } = extentsOf([outer!])!;
    const side = sideBetween(stand, -clear, maxY + over(stand, maxY));
    const { minX: nut, maxX: tail } = extentsOf([side])!;
    const face: Solid = {
      kind: "extrude",
      outlines: [{ outer: outer!, holes: inner }],
      ...{ base: nut - clear, height: tail - nut + 2 * clear },
    };
    const faces: Solid = {
      ...{ kind: "extrude", outlines: [{ outer: side, holes: [] }] },
      ...{ base: -maxX - clear, height: maxX - minX + 2 * clear },
    };
    const both: Solid = {
      kind: "intersect",
      solids: [
        { kind: "place", solid: face, frame: fromNut },
        { kind: "place", solid: faces, frame: fromTreble },
      ],
    };
    return { kind: "place", solid: both, frame: coreAxes(core) };
  },
);

/** As much over the crown as the two faces leave before they would meet. */
function over({ foot, top, height }: BridgeStand, at: number): number {
  const left = foot + ((top - foot) * at) / height;
  return foot > top ? Math.min(clear, (left * height) / (foot - top) / 2) : clear;
}

/** Outlines across the core (y, z'), raised toward the tail. */
const fromNut: Frame = {
  origin: { x: 0, y: 0, z: 0 },
  u: { x: 0, y: 1, z: 0 },
  v: { x: 0, y: 0, z: 1 },
  w: { x: 1, y: 0, z: 0 },
};

/** Outlines along the core (x', z'), raised toward the bass side. */
const fromTreble: Frame = {
  origin: { x: 0, y: 0, z: 0 },
  u: { x: 1, y: 0, z: 0 },
  v: { x: 0, y: 0, z: 1 },
  w: { x: 0, y: -1, z: 0 },
};
