import type { Path } from "../../geometry/path.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { RecessPart } from "../../order/recess-part.ts";

/** Something that stands upright in a part between two heights over its front, mm: a recess, a cradle, the room for the core. `ids` are what it follows from. */
export type Upright = {
  readonly what: string;
  readonly path: Path;
  readonly low: number;
  readonly high: number;
  readonly ids: readonly string[];
};

/** A straight round hole in a part, mm: a pin's or a wire's. */
export type Rod = {
  readonly what: string;
  readonly from: Vec3;
  readonly to: Vec3;
  readonly diameter: number;
  readonly ids: readonly string[];
};

/**
 * The wood of a part that recesses are sunk into, in the part's own axes, mm: its front lies at w = 0. `outline` is what it ends at, `rim` what of that
 * is a surface, so much less as its eased edges take; `joint` a face that slants through the origin, by its normal into the wood; `thick` names
 * the dimension that its thickness follows from.
 */
export type Ground = {
  readonly part: RecessPart;
  readonly thickness: number;
  readonly thick: string;
  readonly outline: Path;
  readonly rim: Path;
  readonly eased: number;
  readonly sides: string;
  readonly ids: readonly string[];
  readonly joint: Vec3 | null;
  readonly uprights: readonly Upright[];
  readonly rods: readonly Rod[];
};
