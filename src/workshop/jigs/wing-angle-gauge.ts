import { circle } from "../../geometry/circle.ts";
import type { Point } from "../../geometry/point.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import { lettered, letteringSize } from "./lettered.ts";
import type { Piece } from "./piece.ts";

/**
 * A gauge for the angle between a wing's front and its joint face, degrees, within the wood; how deep the joint face is and how thick the plate, mm;
 * what is lettered on it.
 */
export type WingAngleGaugeInput = {
  readonly angle: number;
  readonly deep: number;
  readonly thickness: number;
  readonly lines: readonly string[];
  readonly piece: Piece;
};

/** How wide the arms are, how far the one on the front reaches, the hole that clears the arris, and what lies round the lettering, mm (G). */
const [arm, along, clear, over] = [12, 60, 3, 2];

/** How wide and high an angle gauge lies on the bed, mm. */
export function wingAngleSize(given: Omit<WingAngleGaugeInput, "piece">): { x: number; y: number } {
  const corners = cornersOf(given);
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  return { x: Math.max(...xs) - Math.min(...xs), y: Math.max(...ys) - Math.min(...ys) };
}

/** The corners of a plate whose inner corner, at the origin, takes the wing: its front along x, its joint face `angle` from that and downward. */
function cornersOf({ angle, deep, lines }: Omit<WingAngleGaugeInput, "piece">): Point[] {
  const size = letteringSize(lines);
  const turn = (-angle * Math.PI) / 180;
  const down = (by: number): Point => ({ x: by * Math.cos(turn), y: by * Math.sin(turn) });
  const aside = (point: Point): Point => ({
    x: point.x + arm * Math.sin(turn),
    y: point.y - arm * Math.cos(turn),
  });
  const reach = 0.9 * deep;
  const top = size.height + 2 * over;
  const outer = aside(down(reach));
  // The outer side of the arm on the joint face runs on up to the plate's top.
  const up = (top - outer.y) / Math.sin(turn);
  const head = { x: outer.x + up * Math.cos(turn), y: top };
  return [
    { x: 0, y: 0 },
    { x: Math.max(along, size.width + 2 * over), y: 0 },
    { x: Math.max(along, size.width + 2 * over), y: top },
    head,
    outer,
    down(reach),
  ];
}

/**
 * A plate with a corner that is held over the arris between a wing's front and its joint face, square to the joint line; a hole clears the arris. It
 * measures from either side, so that both hands' are the same.
 */
export const wingAngleGauge = step("jig.wing-angle", 1, (given: WingAngleGaugeInput): Solid => {
  const { thickness, lines } = given;
  const size = letteringSize(lines);
  const corners = cornersOf(given);
  const outer = { closed: true, points: corners.map(({ x, y }) => ({ x, y, bulge: 0 })) };
  const plate: Solid = { kind: "extrude", outlines: [{ outer, holes: [] }], height: thickness };
  const hole: Solid = {
    ...{ kind: "extrude", base: -1, height: thickness + 2 },
    outlines: [{ outer: circle({ x: 0, y: 0 }, clear / 2), holes: [] }],
  };
  const x = size.width / 2 + over;
  return lettered(
    { kind: "cut", from: plate, by: [hole] },
    { lines, x, y: size.height + over, z: thickness },
  );
});
