import { fairCurve } from "../../geometry/fair/fair-curve.ts";
import { fairPath } from "../../geometry/fair/fair-path.ts";
import type { Station } from "../../geometry/fair/station.ts";
import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";

/** A whole width of the body and where it is, from the body's head end; mm. */
export type Breadth = { readonly at: number; readonly width: number };

/** What a body's outline follows from, mm: `start` is its head end along the core's front; `corners` stand before and behind the waist. */
export type BodyOutlineInput = {
  readonly start: number;
  readonly length: number;
  readonly head: { readonly width: number; readonly corner: number };
  readonly upper: Breadth;
  readonly waist: Breadth;
  readonly lower: Breadth;
  readonly corners: { readonly upper: Breadth; readonly lower: Breadth; readonly radius: number } | null;
};

/**
 * A body from the front, in the plane of its front: x along the core's front from its start, y to the treble side, mm. `path` runs
 * counter-clockwise from the head's bass corner; `rim` is the same without the straight head end. `no-room`
 * where a corner's radius has none, `unfair` where no fair curve passes the bouts.
 */
export type BodyOutline =
  | { readonly kind: "ok"; readonly path: Path; readonly rim: Path; readonly arcs: number }
  | { readonly kind: "no-room"; readonly corner: "head" | "bouts" }
  | { readonly kind: "unfair" };

/**
 * A fair curve through upper bout, waist and lower bout, square to the centreline at the tail, with a straight head end: one
 * half and its mirror image, so that both sides are alike. The curvature is continuous at the tail too.
 */
export const bodyOutline = step("body.outline", 1, (given: BodyOutlineInput): BodyOutline => {
  const curve = fairCurve(bassHalf(given), { closed: false });
  if (curve.kind !== "ok") return { kind: "unfair" };
  const made = fairPath(curve.curve);
  if (made.kind === "no-room") return { kind: "no-room", corner: made.corner === 0 ? "head" : "bouts" };
  if (made.kind !== "ok") return { kind: "unfair" };
  // The straight from the head's middle to its corner is drawn once, from side to side.
  const bass: Path = { closed: false, points: made.path.points.slice(1) };
  const points = [...bass.points.slice(0, -1), ...mirrored(bass, "y").points];
  return {
    kind: "ok",
    ...{ path: { closed: true, points }, rim: { closed: false, points }, arcs: points.length },
  };
});

/** The stations of the bass side, from the head's middle to the tail's. */
function bassHalf({ start, length, head, upper, waist, lower, corners }: BodyOutlineInput): Station[] {
  const at = ({ at: along, width }: Breadth) => ({ x: start + along, y: -width / 2 });
  const point = (corner: Breadth | undefined): Station[] =>
    corners === null || corner === undefined ? [] : [{ ...at(corner), corner: corners.radius }];
  return [
    { x: start, y: 0 },
    { x: start, y: -head.width / 2, corner: head.corner },
    at(upper),
    ...point(corners?.upper),
    at(waist),
    ...point(corners?.lower),
    at(lower),
    { x: start + length, y: 0, corner: 0, arrive: 90 },
  ];
}
