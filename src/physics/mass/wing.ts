import { gaussRule } from "../../geometry/gauss-rule.ts";
import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { areaMoments } from "../../geometry/path-measures/area-moments.ts";
import type { Point } from "../../geometry/point.ts";
import { facet, facetCounts } from "../../geometry/solid/facet.ts";
import { insetRing } from "../../geometry/solid/inset-ring.ts";
import type { SolidMoments } from "../../geometry/solid/slices.ts";
import { dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import { stretches } from "../../geometry/stretches.ts";
import { coreAxes } from "../../instrument/core/core-axes.ts";
import { placeOfWing } from "../../instrument/wing/place.ts";
import type { WingSolidInput } from "../../instrument/wing/solid.ts";
import type { EdgeProfile } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { type Measured, measuredOf, momentsAt, placed, together } from "./moments.ts";

/** A level cut of the wing, w over its front, how much of its thickness it stands for, and how far its cut edges are moved inward there; mm. */
type Level = { readonly w: number; readonly weight: number; readonly inward: number };

/** How near chords lie to an outline's arcs, mm; they enclose the arcs' own area. */
const chord = 0.1;

/**
 * A finished wing's volume and middle, integrated over level cuts: at each the outline moved inward by what its eased edges lack there, and cut
 * off at the joint face. Between the eased edges a cut's area is quadratic in its height, and the rule exact. Less the pins' holes, which are cylinders
 * square to the joint face. Moving the edges inward is Pappus's rule with its corners: it is exact where they are mitred. Where edges leave no room to be eased, which no solid can be made of, they count as square.
 */
export const wingMeasured = step("mass.wing", 1, (given: WingSolidInput): Measured => {
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
  const cuts = levels(given).map((level) => levelMoments(insetBy(level.inward), own, level));
  const whole = placed(frame, measuredOf(together(cuts)));
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

/** The level cuts, front to back. */
function levels({ thickness, arris, profile }: WingSolidInput): Level[] {
  const front = eased(profile.front, arris);
  const back = eased(profile.back, arris);
  const depth = (list: readonly Level[]) => (list.length === 0 ? 0 : arris);
  const plain = stretches(-thickness + depth(back), -depth(front), [], 2).map(({ x, weight }) => {
    return { w: x, weight, inward: 0 };
  });
  return [
    ...front.map((level) => ({ ...level, w: -level.w })),
    ...plain,
    ...back.map((level) => ({ ...level, w: -thickness + level.w })),
  ];
}

/** The level cuts through an eased edge, `w` counted from its face: along a rounding by its angle, since near the face it runs out flat. */
function eased(profile: EdgeProfile, size: number): Level[] {
  if (profile === "none" || size === 0) return [];
  return gaussRule(3).map(([at, weight]): Level => {
    if (profile === "bevel") return { w: size * at, weight: size * weight, inward: size * (1 - at) };
    const angle = (Math.PI / 2) * at;
    return {
      ...{ w: size * (1 - Math.cos(angle)), weight: size * Math.sin(angle) * (Math.PI / 2) * weight },
      inward: size * (1 - Math.sin(angle)),
    };
  });
}

function moved(ring: readonly Point[], inward: number): readonly Point[] {
  const inset = insetRing(ring, inward);
  return inset.kind === "ok" ? inset.ring : ring;
}

function levelMoments(ring: readonly Point[], normal: Vec3, { w, weight }: Level): SolidMoments {
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

function polygon(points: readonly Point[]): Path {
  return { closed: true, points: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}
