import Flatbush from "flatbush";
import type { Extents } from "./measure.ts";

/** Of how many boxes on an index is worth its making. */
const few = 16;

/** Those of some boxed things that touch a box, borders included, for whoever asks it of the same things often. */
export function boxesNear<T extends Extents>(things: readonly T[]): (around: Extents) => T[] {
  if (things.length < few) return (around) => things.filter((thing) => boxesTouch(thing, around));
  const index = new Flatbush(things.length);
  for (const { minX, minY, maxX, maxY } of things) index.add(minX, minY, maxX, maxY);
  index.finish();
  return ({ minX, minY, maxX, maxY }) => index.search(minX, minY, maxX, maxY).map((i) => things[i]!);
}

/** Whether two boxes have a place in common, their borders included. */
export function boxesTouch(a: Extents, b: Extents): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}
