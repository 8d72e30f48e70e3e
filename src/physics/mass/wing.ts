import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { areaMoments } from "../../geometry/path-measures/area-moments.ts";
import type { Point } from "../../geometry/point.ts";
import { polygon } from "../../geometry/polygon.ts";
import { facet, facetCounts } from "../../geometry/solid/facet.ts";
import { insetRing } from "../../geometry/solid/inset-ring.ts";
import type { SolidMoments } from "../../geometry/solid/slices.ts";
import { dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import { coreAxes } from "../../instrument/core/from-core.ts";
import { placeOfWing } from "../../instrument/wing/place.ts";
import type { WingSolidInput } from "../../instrument/wing/solid.ts";
import { step } from "../../step/step.ts";
import { type EasedLevel, easedLevels } from "./eased-levels.ts";
import { type Measured, measuredOf, momentsAt, placed, together } from "./moments.ts";
import { sunkenMoments } from "./sunken.ts";

/** How near chords lie to an outline's arcs, mm; they enclose the arcs' own area. */
const chord = 0.1;

/**
 * A finished wing's volume and middle, integrated over level cuts: at each the outline moved inward by what its eased edges lack there, and cut
 * off at the joint face. Between the eased edges a cut's area is quadratic in its height, and the rule exact. Less the pins' holes, which are cylinders
 * square to the joint face, and what is sunk into it. Moving the edges inward is Pappus's rule with its corners: it is exact where they are mitred. Where edges leave no room to be eased, which no solid can be made of, they count as square.
 */
export const wingMeasured = step("mass.wing", 2, (given: WingSolidInput): Measured => {
  const { frame, joint } = placeOfWing(given.place);
  const own: Vec3 = {
    x: dot(joint.normal, frame.u),
    y: dot(joint.normal, frame.v),
    z: dot(joint.normal, frame.w),
  };
  const over: Path = given.place.side === "bass" ? mirrored(given.over, "y") : given.over;
  const faceted = facet(over, facetCounts(over, chord));
  const ring = areaMoments(polygon(faceted)).area > 0 ? faceted : faceted.reverse();
  const insets = new Map<number, readonly Point[]>();
  const insetBy = (inward: number) => {
    // Front and back are eased alike as a rule.
    const found = insets.get(inward) ?? moved(ring, inward);
    insets.set(inward, found);
    return found;
  };
  const cuts = easedLevels(given).map((level) => levelMoments(insetBy(level.inward), own, level));
  const taken = sunkenMoments(given.sunken, given.thickness);
  const whole = placed(frame, measuredOf(together(cuts, taken)));
  const { diameter, depth } = given.pin;
  const pins = given.pins.map(({ at }) => {
    const middle = (axis: "x" | "y" | "z") => at[axis] + (joint.normal[axis] * depth) / 2;
    return momentsAt((Math.PI / 4) * diameter ** 2 * depth, {
      x: middle("x"),
      y: middle("y"),
      z: middle("z"),
    });
  });
  const left = measuredOf(together([momentsAt(whole.volume, whole.centre)], pins));
  return placed(coreAxes(given.place.core), left);
});

function moved(ring: readonly Point[], inward: number): readonly Point[] {
  const inset = insetRing(ring, inward);
  return inset.kind === "ok" ? inset.ring : ring;
}

function levelMoments(ring: readonly Point[], normal: Vec3, { w, weight }: EasedLevel): SolidMoments {
  const { area, x, y } = areaMoments(polygon(beyondJoint(ring, normal, w)));
  return { volume: area * weight, x: x * weight, y: y * weight, z: area * weight * w };
}

/** What of a ring lies on the wing's side of the joint face at a level. */
function beyondJoint(ring: readonly Point[], normal: Vec3, w: number): Point[] {
  const out = ({ x, y }: Point) => x * normal.x + y * normal.y + w * normal.z;
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    const [from, to] = [out(a), out(b)];
    const kept = from >= 0 ? [a] : [];
    if (from >= 0 === to >= 0) return kept;
    const share = from / (from - to);
    return [...kept, { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share }];
  });
}
