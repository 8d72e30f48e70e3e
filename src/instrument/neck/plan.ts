import { fairCurve } from "../../geometry/fair/fair-curve.ts";
import { fairPath } from "../../geometry/fair/fair-path.ts";
import type { Station } from "../../geometry/fair/station.ts";
import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import { coreHalf } from "../core/width.ts";
import { boardWidth, type Taper } from "../fingerboard/taper.ts";

/** Lengths in mm, angles in degrees. `headLength` is along the head's face, `core.width` across the core at the bridge. */
export type PlanInput = {
  readonly taper: Taper;
  readonly nutThickness: number;
  readonly head: {
    readonly length: number;
    readonly angle: number;
    readonly half: number;
    readonly shoulder: number;
  };
  readonly transition: { readonly start: number; readonly end: number };
  readonly core: {
    readonly width: number;
    readonly at: number;
    readonly taper: number;
    readonly end: number;
  };
  readonly corners: { readonly head: number; readonly tail: number };
};

/**
 * The neck from the front, projected: x from the nut's fingerboard edge, y to the treble side; counter-clockwise from the
 * head's bass corner. `arcs` counts its lines and arcs.
 */
export type NeckPlan =
  | { readonly kind: "ok"; readonly path: Path; readonly arcs: number }
  | { readonly kind: "no-room" };

/**
 * The neck's plan: head, its shoulders running fair into the board's own edges, these edges under nut and board, a fair
 * transition to the core, the core with its taper, tail. Where a straight edge meets a fair one they share their direction. It is the bass
 * half and its mirror image, so that no side differs and one fixture serves both.
 */
export const neckPlan = step("neck.plan", 2, (given: PlanInput): NeckPlan => {
  const curve = fairCurve(bassHalf(given), { closed: false });
  const made = curve.kind === "ok" ? fairPath(curve.curve) : undefined;
  if (made?.kind !== "ok") return { kind: "no-room" };
  // The straights from the head's middle and to the tail's are drawn once, from side to side.
  const bass: Path = { closed: false, points: made.path.points.slice(1, -1) };
  const treble = mirrored(bass, "y").points;
  const points = [...bass.points, ...treble];
  return { kind: "ok", path: { closed: true, points }, arcs: points.length };
});

/** The stations of the bass side from the middle of the head's end to that of the tail. */
function bassHalf({ taper, nutThickness, head, transition, core, corners }: PlanInput): Station[] {
  const tip = -nutThickness - head.length * Math.cos((head.angle * Math.PI) / 180);
  const edge = (x: number) => -boardWidth(taper, x) / 2;
  const board = (-Math.atan((taper.end - taper.nut) / 2 / taper.length) * 180) / Math.PI;
  const { start, end } = transition;
  return [
    { x: tip, y: 0 },
    { x: tip, y: -head.half, corner: corners.head },
    { x: -nutThickness - head.shoulder, y: -head.half, corner: 0, leave: 0 },
    { x: -nutThickness, y: edge(-nutThickness), corner: 0, arrive: board },
    { x: start, y: edge(start), corner: 0, leave: board },
    { x: end, y: -coreHalf(core, end), corner: 0, arrive: -core.taper },
    { x: core.end, y: -coreHalf(core, core.end), corner: corners.tail },
    { x: core.end, y: 0 },
  ];
}
