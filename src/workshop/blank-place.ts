import { type Extents, extentsOf } from "../geometry/measure.ts";
import type { Path } from "../geometry/path.ts";
import type { Blank } from "../instrument/blank.ts";

/** Where the neck's blank lies, in the instrument's axes, mm. */
export type BlankPlace = {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
  readonly minZ: number;
  readonly maxZ: number;
};

/**
 * The blank's place: its middle in the middle of the finished neck's own box, so that what a size is rounded up by lies
 * half on either side. `plan` is the neck in x and y, `side` in x and z; an outline without extents throws a RangeError.
 */
export function blankPlace({ length, width, thickness }: Blank, plan: Path, side: Path): BlankPlace {
  const [inPlan, inSide] = [extentsOf([plan]), extentsOf([side])];
  if (inPlan === undefined || inSide === undefined)
    throw new RangeError("a neck without an outline has no blank");
  const [x, y, z] = [
    (inPlan.minX + inPlan.maxX) / 2,
    (inPlan.minY + inPlan.maxY) / 2,
    (inSide.minY + inSide.maxY) / 2,
  ];
  return {
    ...{ minX: x - length / 2, maxX: x + length / 2, minY: y - width / 2, maxY: y + width / 2 },
    ...{ minZ: z - thickness / 2, maxZ: z + thickness / 2 },
  };
}

/** The blank seen from the front: x along, y to the treble side. */
export function blankInPlan({ minX, maxX, minY, maxY }: BlankPlace): Extents {
  return { minX, maxX, minY, maxY };
}

/** The blank seen from the side: x along, z up as y. */
export function blankInSide({ minX, maxX, minZ, maxZ }: BlankPlace): Extents {
  return { minX, maxX, minY: minZ, maxY: maxZ };
}
