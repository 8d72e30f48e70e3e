import { fairCurve } from "../../geometry/fair/fair-curve.ts";
import { fairPath } from "../../geometry/fair/fair-path.ts";
import type { Station } from "../../geometry/fair/station.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { type CoreFrame, frontAt } from "../core/frame.ts";
import { onHead } from "../head/frame.ts";

/** A place along the neck and how much wood stands under the board's gluing surface there, mm. */
export type WoodAt = { readonly x: number; readonly wood: number };

/** Lengths in mm, angles in degrees. */
export type SideInput = {
  readonly nutThickness: number;
  readonly head: {
    readonly length: number;
    readonly angle: number;
    readonly thickness: number;
    readonly volute: number;
  };
  readonly nut: WoodAt;
  readonly heel: WoodAt;
  /** Where the back has reached the core's underside. */
  readonly heelEnd: number;
  readonly core: CoreFrame & { readonly end: number; readonly depth: number };
};

/** The neck from the bass side: x from the nut's fingerboard edge, z out of the front; counter-clockwise from the head's end. */
export type NeckSide =
  | { readonly kind: "ok"; readonly path: Path; readonly arcs: number; readonly lowest: number }
  | { readonly kind: "no-room" };

/**
 * The neck's side: head at its angle, back fair from the head into a straight line through the two named thicknesses, fair
 * again into the core's underside, which runs parallel to its front; tail square to x; front with the core's drop and slope.
 */
export const neckSide = step("neck.side", 1, (given: SideInput): NeckSide => {
  const curve = fairCurve([...back(given), ...front(given)], { closed: true });
  const path = curve.kind === "ok" ? fairPath(curve.curve) : undefined;
  if (path?.kind !== "ok") return { kind: "no-room" };
  return { kind: "ok", path: path.path, arcs: path.arcs, lowest: underside(given, given.core.end) };
});

/** The core's underside at x: its depth is square from the front. */
function underside(given: SideInput, x: number): number {
  return frontAt(given.core, x) - given.core.depth / Math.cos((given.core.slope * Math.PI) / 180);
}

/** A place of the head, as a station of the side. */
function headStation({ nutThickness, head: { angle } }: SideInput, along: number, out: number) {
  const { x, z } = onHead({ nutThickness, angle }, along, out);
  return { x, y: z };
}

function back(given: SideInput): Station[] {
  const { head, nut, heel, heelEnd, core } = given;
  const line = (Math.atan2(nut.wood - heel.wood, heel.x - nut.x) * 180) / Math.PI;
  return [
    { ...headStation(given, head.length, -head.thickness), corner: 0 },
    { ...headStation(given, head.volute, -head.thickness), corner: 0, leave: head.angle },
    { x: nut.x, y: -nut.wood, corner: 0, arrive: line },
    { x: heel.x, y: -heel.wood, corner: 0, leave: line },
    { x: heelEnd, y: underside(given, heelEnd), corner: 0, arrive: -core.slope },
    { x: core.end, y: underside(given, core.end), corner: 0 },
  ];
}

function front(given: SideInput): Station[] {
  const { core, head, nutThickness } = given;
  const step_ = core.drop > 0 ? [{ x: core.start, y: 0, corner: 0 }] : [];
  return [
    { x: core.end, y: frontAt(core, core.end), corner: 0 },
    { x: core.start, y: -core.drop, corner: 0 },
    ...step_,
    { x: -nutThickness, y: 0, corner: 0 },
    { ...headStation(given, head.length, 0), corner: 0 },
  ];
}
