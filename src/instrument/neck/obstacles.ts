import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import type { CoreFrame } from "../core/frame.ts";
import { fromCore } from "../core/from-core.ts";
import type { CorePocket } from "./core-pockets.ts";
import { fromFront } from "./joinery-walls.ts";
import type { Rod } from "./rods.ts";
import type { WingPinHole } from "./wing-pin-holes.ts";

/**
 * Something in the neck that an index pin must stay clear of: its closed outline from the front, what it follows from, and
 * how it can give way, if raising a dimension moves it outward: `at` is that dimension's value, `half` half its width, mm.
 */
export type Obstacle = {
  readonly what: string;
  readonly path: Path;
  readonly ids: readonly string[];
  readonly outward: { readonly id: string; readonly at: number; readonly half: number } | null;
};

/** The rods' channels as obstacles. */
export function rodObstacles(rods: readonly Rod[]): Obstacle[] {
  return rods.map(({ y, width, path }) => ({
    ...{
      what: "a rod's channel",
      path,
      ids: ["rod.offset", "rod.width", "rod.start", "rod.length", "rod.count"],
    },
    outward: y === 0 ? null : { id: "rod.offset", at: Math.abs(y), half: width / 2 },
  }));
}

/** Tuners' holes as obstacles, where they project; as wide along the neck as across, which is a little more than they are. */
export function tunerObstacles(
  holes: readonly { readonly x: number; readonly y: number }[],
  diameter: number,
): Obstacle[] {
  return holes.map((hole) => ({
    ...{ what: "a tuner's hole", path: circle(hole, diameter / 2), ids: ["tuner.hole"], outward: null },
  }));
}

/** What is sunk into the core's front as obstacles, where it projects. */
export function pocketObstacles(pockets: readonly CorePocket[], core: CoreFrame): Obstacle[] {
  return pockets.map(({ what, path, depthId }) => {
    const points = path.points.map((point) => ({ ...point, x: fromCore(core, { x: point.x, z: 0 }).x }));
    const ids = [depthId.startsWith("tailpiece") ? "tailpiece.length" : "bridge.foot.width"];
    return { what, path: { ...path, points }, ids, outward: null };
  });
}

/** The wings' pins as obstacles, those that reach up to a depth under the neck's front, mm: deeper ones are in no index pin's way. */
export function wingPinObstacles(pins: readonly WingPinHole[], depth: number): Obstacle[] {
  return pins.flatMap((pin) => {
    const { path, top } = fromFront(pin);
    const what = `pin ${pin.id} of the ${pin.side} wing`;
    return top > -depth ? [{ what, path, ids: [`wing.${pin.side}.pin.depth`], outward: null }] : [];
  });
}
