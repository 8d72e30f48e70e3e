import { facet } from "../../geometry/facet.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { type Frame, fromFrame } from "../../geometry/solid/frame.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { EdgeProfile } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { coreAxes } from "../core/core-axes.ts";
import { sign } from "./frame.ts";
import { placeOfWing, type WingPlaceInput } from "./place.ts";

/** A wing's front and how its edge is eased, mm; `from` and `to` are the stretch along the instrument that is asked for, from the nut. */
export type WingTopInput = {
  readonly place: WingPlaceInput;
  readonly path: Path;
  readonly profile: EdgeProfile;
  readonly arris: number;
  readonly from: number;
  readonly to: number;
};

/** How far the facets of a wing's edge may stray, mm, and in how many a quarter round is cut. */
const fine = { chord: 0.01, quarter: 8 } as const;

/**
 * The finished surface of a wing as seen from over the strings, right-handed among the instrument's axes: its front inside the eased edge, and
 * the facets of that edge over the stretch asked for; flat pieces by their corners.
 */
export const wingTop = step("wing.top", 1, (given: WingTopInput): readonly (readonly Vec3[])[] => {
  const placed = placing(given.place);
  const points = facet(given.path, fine.chord).points;
  // The first edge is the joint, which is not eased.
  const cut = [...points.slice(1), points[0]!];
  const rings = profileSteps(given.profile, given.arris).map(({ inward, down }) =>
    cut.map((point, i) => placed(inset(cut, i, point, inward), down)),
  );
  const strips = rings
    .slice(1)
    .flatMap((ring, k) =>
      ring.slice(1).map((corner, i) => [rings[k]![i]!, rings[k]![i + 1]!, corner, ring[i]!]),
    );
  const within = (piece: readonly Vec3[]) =>
    piece.some(({ x }) => x > given.from) && piece.some(({ x }) => x < given.to);
  return [rings.at(-1)!, ...strips.filter(within)];
});

/** Where a place of a wing's plane, `down` under its front, lies among the instrument's axes. */
function placing(input: WingPlaceInput): (place: Point, down: number) => Vec3 {
  const { frame } = placeOfWing(input);
  const core: Frame = coreAxes(input.core);
  return ({ x, y }, down) => {
    const at = fromFrame(frame, x, sign(input.side) * y, -down);
    return fromFrame(core, at.x, at.y, at.z);
  };
}

/** From the wall to the face: how far inward and how far under the face the edge's profile passes. */
function profileSteps(profile: EdgeProfile, size: number): { inward: number; down: number }[] {
  if (profile === "none" || size === 0) return [{ inward: 0, down: 0 }];
  const count = profile === "bevel" ? 1 : fine.quarter;
  return Array.from({ length: count + 1 }, (_, i) => {
    if (profile === "bevel") return { inward: i * size, down: (1 - i) * size };
    const angle = ((i / count) * Math.PI) / 2;
    return { inward: size * (1 - Math.cos(angle)), down: size * (1 - Math.sin(angle)) };
  });
}

/** A corner of a faceted outline moved inward by the same from both its edges; the two ends run along the joint's neighbours. */
function inset(points: readonly Point[], i: number, { x, y }: Point, by: number): Point {
  const before = normal(points[i - 1], points[i]) ?? normal(points[i], points[i + 1])!;
  const after = normal(points[i], points[i + 1]) ?? before;
  const along = 1 + before.x * after.x + before.y * after.y;
  return { x: x + ((before.x + after.x) * by) / along, y: y + ((before.y + after.y) * by) / along };
}

/** The way inward of an edge of a counter-clockwise outline; none where an end is missing. */
function normal(a: Point | undefined, b: Point | undefined): Point | undefined {
  if (a === undefined || b === undefined) return undefined;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(dx, dy);
  return { x: -dy / length, y: dx / length };
}
