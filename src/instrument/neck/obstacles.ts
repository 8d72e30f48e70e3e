import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import type { Rod } from "./rods.ts";

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
