import { extentsOf } from "../../geometry/measure.ts";
import { areaMoments } from "../../geometry/path-measures/area-moments.ts";
import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import { type Segment, segmentsOf } from "../../geometry/segment.ts";
import type { SolidMoments } from "../../geometry/solid/slices.ts";
import { stretches } from "../../geometry/stretches.ts";
import { type CoreFrame, frontAt } from "../../instrument/core/frame.ts";
import { coreAxes } from "../../instrument/core/from-core.ts";
import { profileOf } from "../../instrument/neck/profile.ts";
import { type SectionForm, trebleSide } from "../../instrument/neck/section.ts";
import type { NeckSolidInput } from "../../instrument/neck/solid.ts";
import { step } from "../../step/step.ts";
import { type Measured, measuredOf, momentsAt, placed, together } from "./moments.ts";
import { channelMoments, holeMoments } from "./neck-cuts.ts";
import { sunkenMoments } from "./sunken.ts";

/** A finished neck, and what its rods' channels hold, which is filled again; nothing where it has none. */
export type NeckMeasured = { readonly neck: Measured; readonly rods: Measured | null };

/** A cut across the neck at x: its area, mm², and its first moments about y = 0 and z = 0, mm³. */
type Section = { readonly area: number; readonly y: number; readonly z: number };

/**
 * A finished neck's volume and middle, integrated along x over its sections: head and core are as wide as the plan and as deep as the side; between them the
 * section's own outline, less what the core's front cuts off it. Less channels, holes and pockets.
 */
export const neckMeasured = step("mass.neck", 2, (given: NeckSolidInput): NeckMeasured => {
  const { profile, stations, core, holes, channels, coreDepth } = given;
  const [plan, side] = [segmentsOf(profile.plan), segmentsOf(profile.side)].map(spans);
  const vertices = [...profile.plan.points, ...profile.side.points].map(({ x }) => x);
  const box = (x: number): Section => {
    const [ys, zs] = [across(plan!, x), across(side!, x)];
    const [bass, treble, back, front] = [ys[0]!, ys.at(-1)!, zs[0]!, zs.at(-1)!];
    const area = (treble - bass) * (front - back);
    return { area, y: (area * (bass + treble)) / 2, z: (area * (back + front)) / 2 };
  };
  const at = profileOf(profile);
  const carved = (x: number): Section => {
    const { top, form } = at(x);
    return x > core.start ? cutOff(carvedSection(form, top), form, core, x) : carvedSection(form, top);
  };
  // Where head and core run out the sections change fastest.
  const halves = [
    (profile.head.box - profile.nutThickness) / 2,
    (profile.core.whole + profile.core.box) / 2,
    (profile.core.whole + core.start) / 2,
  ];
  const [inPlan, inSide] = [extentsOf([profile.plan])!, extentsOf([profile.side])!];
  const ends = [Math.max(inPlan.minX, inSide.minX), Math.min(inPlan.maxX, inSide.maxX)] as const;
  const also = [
    ...[-profile.nutThickness, 0, profile.head.whole, profile.core.whole, core.start],
    ...[profile.fullness.nut.x, profile.fullness.heel.x, ...stations],
  ];
  const whole = [
    along(ends[0], profile.head.box, vertices, box),
    along(profile.head.box, profile.core.box, [...also, ...halves], carved),
    along(profile.core.box, ends[1], apart(vertices), box),
  ];
  const sunk = channels.map((channel) => channelMoments(profile, core, channel));
  const bored = holes.map((hole) => holeMoments(profile.side, hole));
  const routed = sunkenMoments(given, coreDepth).map((taken) => {
    const { volume, centre } = placed(coreAxes(core), measuredOf(taken));
    return momentsAt(volume, centre);
  });
  return {
    neck: measuredOf(together(whole, [...sunk, ...bored, ...routed])),
    rods: sunk.length === 0 ? null : measuredOf(together(sunk)),
  };
});

/** A segment, and between which x all of it lies: an arc strays no farther from its ends than these are apart. */
type Span = { readonly segment: Segment; readonly low: number; readonly high: number };

function spans(segments: readonly Segment[]): Span[] {
  return segments.map((segment) => {
    const { from, to, kind } = segment;
    const over = kind === "arc" ? Math.hypot(to.x - from.x, to.y - from.y) : 1e-6;
    return { segment, low: Math.min(from.x, to.x) - over, high: Math.max(from.x, to.x) + over };
  });
}

/** An outline's ordinates at x, asked only of the segments that come near it. */
function across(all: readonly Span[], x: number): number[] {
  const near = all.filter(({ low, high }) => x >= low && x <= high);
  return ordinatesAt(
    near.map(({ segment }) => segment),
    x,
  );
}

function along(
  from: number,
  to: number,
  breaks: readonly number[],
  at: (x: number) => Section,
): SolidMoments {
  return together(
    stretches(from, to, breaks, 3).map(({ x, weight }) => {
      const { area, y, z } = at(x);
      return { volume: area * weight, x: area * weight * x, y: y * weight, z: z * weight };
    }),
  );
}

/** Breaks without those that lie within 2 mm of one before: between arcs that run on tangent nothing is lost by leaving one out. */
function apart(breaks: readonly number[]): number[] {
  const kept: number[] = [];
  for (const x of breaks.toSorted((a, b) => a - b)) if (x - (kept.at(-1) ?? -Infinity) > 2) kept.push(x);
  return kept;
}

function carvedSection(form: SectionForm, top: number): Section {
  const { points } = trebleSide(form);
  const half = areaMoments({ closed: true, points: [...points, { x: 0, y: 0, bulge: 0 }] });
  const sign = Math.sign(half.area);
  const area = 2 * sign * half.area;
  return { area, y: 0, z: 2 * sign * half.y + top * area };
}

/** A section less what the core's front cuts off its top, by Gauss's rule over its breadths there. */
function cutOff(section: Section, form: SectionForm, core: CoreFrame, x: number): Section {
  const upright = trebleSide(form).points.map((point) => ({ x: point.y, y: point.x, bulge: -point.bulge }));
  const segments = segmentsOf({ closed: false, points: upright });
  let { area, z: moment } = section;
  for (const { x: z, weight } of stretches(frontAt(core, x), 0, [], 3)) {
    const breadth = 2 * (ordinatesAt(segments, z).at(-1) ?? form.half);
    area -= breadth * weight;
    moment -= breadth * weight * z;
  }
  return { area, y: 0, z: moment };
}
