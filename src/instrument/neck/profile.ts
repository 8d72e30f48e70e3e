import type { Path } from "../../geometry/path.ts";
import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import type { SectionForm } from "./section.ts";

/** What a neck's sections follow from; lengths in mm, angles in degrees. */
export type ProfileInput = {
  /** The neck's outlines from the front and from the side, as neckPlan and neckSide give them. */
  readonly plan: Path;
  readonly side: Path;
  readonly nutThickness: number;
  readonly headAngle: number;
  /** Where the D begins to come out of the head's box, and where it is whole; so at the core, the other way round. */
  readonly head: { readonly box: number; readonly whole: number };
  readonly core: { readonly whole: number; readonly box: number };
  readonly fullness: {
    readonly nut: { readonly x: number; readonly of: number };
    readonly heel: { readonly x: number; readonly of: number };
  };
};

/** The neck at x: its section's form, and how high over z = 0 the top of that section lies, mm. */
export type ProfilePlace = { readonly x: number; readonly top: number; readonly form: SectionForm };

/**
 * The neck at any x between the head's box and the core's. Its width is that of the plan, its back that of the side; its top is
 * z = 0 under nut and board, and before the nut the head's face. The core's front is not looked at: it is cut afterwards.
 */
export function profileOf(given: ProfileInput): (x: number) => ProfilePlace {
  const [plan, side] = [segmentsOf(given.plan), segmentsOf(given.side)];
  const fall = Math.tan((given.headAngle * Math.PI) / 180);
  return (x) => {
    const top = Math.min(0, x + given.nutThickness) * fall;
    const [half, back] = [ordinatesAt(plan, x).at(-1), ordinatesAt(side, x)[0]];
    if (half === undefined || back === undefined) throw new RangeError(`the neck doesn't reach ${x} mm`);
    return {
      ...{ x, top },
      form: { half, depth: top - back, fullness: fullnessAt(given, x), square: squareAt(given, x) },
    };
  };
}

/** The fullness at x: straight between the two named stations, and no other beyond them. */
function fullnessAt({ fullness: { nut, heel } }: ProfileInput, x: number): number {
  const share = Math.min(1, Math.max(0, (x - nut.x) / (heel.x - nut.x)));
  return nut.of + share * (heel.of - nut.of);
}

/** How far the D has run out into the box at x, from 0 to 1, without a sudden change at either end. */
function squareAt({ head, core }: ProfileInput, x: number): number {
  const out = Math.max(
    (head.whole - x) / (head.whole - head.box),
    (x - core.whole) / (core.box - core.whole),
  );
  const share = Math.min(1, Math.max(0, out));
  return share * share * (3 - 2 * share);
}
