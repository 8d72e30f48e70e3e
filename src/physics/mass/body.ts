import { areaMoments } from "../../geometry/path-measures/area-moments.ts";
import type { Point } from "../../geometry/point.ts";
import { polygon } from "../../geometry/polygon.ts";
import { facet, facetCounts } from "../../geometry/solid/facet.ts";
import { type Frame, upright } from "../../geometry/solid/frame.ts";
import { insetRing } from "../../geometry/solid/inset-ring.ts";
import type { SolidMoments } from "../../geometry/solid/slices.ts";
import { stretches } from "../../geometry/stretches.ts";
import type { BodySolidInput } from "../../instrument/body/solid.ts";
import { coreAxes } from "../../instrument/core/from-core.ts";
import type { EdgeProfile } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { type EasedLevel, easedLevels } from "./eased-levels.ts";
import { type Measured, measuredOf, placed, together } from "./moments.ts";
import { sunkenMoments } from "./sunken.ts";

/** How near chords lie to an outline's arcs, mm; they enclose the arcs' own area. */
const chord = 0.02;

/**
 * A finished body's volume and middle, integrated over level cuts: at each the outline moved inward by what its eased edges lack there, less the
 * core's room as far as that reaches into it, and less what is sunk into it. The room leaves the body by its square head end alone, so that end cuts it off.
 */
export const bodyMeasured = step("mass.body", 2, (given: BodySolidInput): Measured => {
  const ring = counterClockwise(facet(given.path, facetCounts(given.path, chord)));
  const room = counterClockwise(facet(given.recess.path, facetCounts(given.recess.path, chord)));
  const plates = easedLevels(given).map((level) => insetMoments(ring, level));
  const head = Math.min(...ring.map(({ x }) => x));
  // The room's floor lies between the plate's levels, so what it takes is reckoned over its own depth.
  const zones = [-given.arris, given.arris - given.thickness];
  const levels = stretches(-(given.recess.depth ?? given.thickness), 0, zones, 8);
  const taken = levels.map(({ x: w, weight }) => {
    return momentsOf(from(room, head + inwardAt(given, w)), { w, weight });
  });
  const sunk = sunkenMoments(given.sunken, given.thickness);
  const lowered: Frame = { ...upright, origin: { x: 0, y: 0, z: -given.drop } };
  return placed(coreAxes(given.core), placed(lowered, measuredOf(together(plates, [...taken, ...sunk]))));
});

/** How far the eased edges lack inward of the outline at a height over the front. */
function inwardAt({ thickness, arris, profile }: BodySolidInput, w: number): number {
  const lacks = (kind: EdgeProfile, down: number) => {
    if (kind === "none" || down >= arris) return 0;
    return kind === "bevel" ? arris - down : arris - Math.sqrt(down * (2 * arris - down));
  };
  return Math.max(lacks(profile.front, -w), lacks(profile.back, w + thickness));
}

function insetMoments(ring: readonly Point[], { w, weight, inward }: EasedLevel): SolidMoments {
  const inset = insetRing(ring, inward);
  if (inset.kind !== "ok") throw new RangeError("a body whose edges leave no room to be eased");
  return momentsOf(inset.ring, { w, weight });
}

function momentsOf(ring: readonly Point[], { w, weight }: Pick<EasedLevel, "w" | "weight">): SolidMoments {
  const { area, x, y } = areaMoments(polygon(ring));
  return { volume: area * weight, x: x * weight, y: y * weight, z: area * weight * w };
}

/** What of a ring lies on the tail's side of a place along it. */
function from(ring: readonly Point[], start: number): Point[] {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    const kept = a.x >= start ? [a] : [];
    if (a.x >= start === b.x >= start) return kept;
    return [...kept, { x: start, y: a.y + ((b.y - a.y) * (start - a.x)) / (b.x - a.x) }];
  });
}

function counterClockwise(ring: readonly Point[]): readonly Point[] {
  return areaMoments(polygon(ring)).area > 0 ? ring : ring.toReversed();
}
