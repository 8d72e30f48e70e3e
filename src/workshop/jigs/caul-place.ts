import { facet } from "../../geometry/facet.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Frame } from "../../geometry/solid/frame.ts";
import { between, cross, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import { sign } from "../../instrument/wing/frame.ts";
import { placeOfWing, type WingPlaceInput } from "../../instrument/wing/place.ts";
import type { Stretch } from "./pieces.ts";
import { printed } from "./print-rules.ts";
import { upperEdge } from "./upper-edge.ts";

/**
 * What a caul's shape follows from, mm: the wing that it sits on, by its place, its outline led on past the joint, its thickness and its own joint; and the joint that is
 * glued, by the place of the wing whose it is. The two wings are one, or the caul is held against the first while the second is glued.
 */
export type CaulPlaceInput = {
  readonly held: WingPlaceInput;
  readonly over: Path;
  readonly thickness: number;
  readonly own: { readonly length: number; readonly deep: number };
  readonly pressing: WingPlaceInput;
  readonly joint: { readonly length: number; readonly deep: number };
};

/** What a caul keeps clear of the joint for glue that is squeezed out, how far it grips the wing at least, its floor under the rim, its lips, the floor round these, half the width that a clamp bears on, and what it keeps from the joint's ends, mm (G). */
export const caul = { relief: 8, grip: 8, floor: 10, lip: 4, rim: 1, pad: 12, ends: 4 } as const;

/**
 * How a caul lies. `frame` puts what is drawn in the wing's plane (along, out, over its front) onto the bed: along the glued joint on x, toward the front on y, the
 * clamp face on z = 0, and the glued joint's face `far` over that; the lips end at z = `high`. `slide` is the way in the wing's plane that the caul comes off by, `along` where the wing's rim stands out far enough, and
 * `across` what the floor takes up on y.
 */
export type CaulPlace = {
  readonly frame: Frame;
  readonly far: number;
  readonly high: number;
  readonly slide: Point;
  readonly along: Stretch;
  readonly across: Stretch;
};

/** How coarse a rim is looked at to see where a caul goes, mm. */
const coarse = 0.05;

/** Where a caul sits, worked out from outlines alone; null where the rim stands out far enough nowhere beside the joint. */
export function caulPlace(given: CaulPlaceInput): CaulPlace | null {
  const { thickness, joint } = given;
  const press = pressed(given);
  const { u, front, out, origin } = press;
  const flat = Math.hypot(out.x, out.y);
  const slide = { x: out.x / flat, y: out.y / flat };
  const rim = rimOf(facet(given.over, coarse).points, slide);
  const middle = (place: Point): Vec3 => ({ ...place, z: -thickness / 2 });
  const reached = rim.map((place) => {
    const from = between(origin, middle(place));
    return { x: dot(from, u), out: dot(from, out) };
  });
  const near = nearest(given, press) + caul.relief;
  const along = standing(reached, near + caul.grip, joint.length);
  if (along === null) return null;
  const within = reached.filter(({ x }) => x >= along.from && x <= along.to).map((place) => place.out);
  // The rim stands square to the wing's front: its outer arris lies further out, or its inner one.
  const lean = (Math.abs(out.z) * thickness) / 2;
  const far = Math.max(...within) + lean + printed.clearance.loose + caul.floor;
  const axis = (k: "x" | "y" | "z"): Vec3 => ({ x: u[k], y: front[k], z: -out[k] });
  const frame: Frame = {
    origin: { x: -dot(origin, u), y: -dot(origin, front), z: far + dot(origin, out) },
    ...{ u: axis("x"), v: axis("y"), w: axis("z") },
  };
  return { frame, far, high: far - near, slide, along, across: floorAcross(given, press, along, far) };
}

type Pressed = { readonly u: Vec3; readonly front: Vec3; readonly out: Vec3; readonly origin: Vec3 };

/** The glued joint in the plane of the wing that is held: its origin, along it, up its face to the front, and out of the core on this wing's side. */
function pressed({ held, pressing }: CaulPlaceInput): Pressed {
  const [own, glued] = [placeOfWing(held), placeOfWing(pressing)];
  const s = sign(held.side);
  const inPlane = (v: Vec3): Vec3 => ({
    x: dot(v, own.frame.u),
    y: s * dot(v, own.frame.v),
    z: dot(v, own.frame.w),
  });
  const { normal } = glued.joint;
  const across = cross(glued.cut.edge, normal);
  const up = across.z > 0 ? 1 : -1;
  const outward = held.side === pressing.side ? 1 : -1;
  return {
    u: inPlane(glued.cut.edge),
    front: inPlane({ x: up * across.x, y: up * across.y, z: up * across.z }),
    out: inPlane({ x: outward * normal.x, y: outward * normal.y, z: outward * normal.z }),
    origin: inPlane(between(own.frame.origin, glued.frame.origin)),
  };
}

/** The rim that something meets which slides onto a wing: in the wing's own axes, in the order of places along the joint. */
export function rimOf(points: readonly Point[], slide: Point): Point[] {
  const turned = points.map(({ x, y }) => ({ x: x * slide.y - y * slide.x, y: x * slide.x + y * slide.y }));
  return upperEdge(turned).map(({ x, y }) => ({
    x: x * slide.y + y * slide.x,
    y: y * slide.y - x * slide.x,
  }));
}

/** How far out the held wing's own joint face reaches, from the glued one: 0 where the two are one, or as far as the core is wide. */
function nearest({ held, over, thickness, own, joint }: CaulPlaceInput, { out, origin }: Pressed): number {
  const { u, front } = pressed({ held, over, thickness, own, pressing: held, joint });
  const corners = [0, own.length].flatMap((x) =>
    [0, -own.deep].map((y) => ({
      ...{ x: x * u.x + y * front.x, y: x * u.y + y * front.y, z: x * u.z + y * front.z },
    })),
  );
  return Math.max(...corners.map((corner) => dot(between(origin, corner), out)));
}

/** The longest stretch of a joint beside which the rim stands out by what is wanted, short of the joint's ends. */
function standing(
  rim: readonly { x: number; out: number }[],
  wanted: number,
  length: number,
): Stretch | null {
  const runs: Stretch[] = [];
  let from: number | null = null;
  const close = (to: number) => {
    if (from === null) return;
    const run = { from: Math.max(from, caul.ends), to: Math.min(to, length - caul.ends) };
    if (run.to > run.from) runs.push(run);
    from = null;
  };
  for (const [i, { x, out }] of rim.entries()) {
    const before = rim[i - 1];
    const crossing = before === undefined ? x : crossingAt(before, { x, out }, wanted);
    if (out >= wanted) from ??= crossing;
    else close(crossing);
  }
  close(rim.at(-1)?.x ?? 0);
  return runs.reduce<Stretch | null>(
    (best, run) => (best === null || run.to - run.from > best.to - best.from ? run : best),
    null,
  );
}

function crossingAt(a: { x: number; out: number }, b: { x: number; out: number }, wanted: number): number {
  return a.out >= wanted === b.out >= wanted ? b.x : a.x + ((b.x - a.x) * (wanted - a.out)) / (b.out - a.out);
}

/** What the floor takes up across: both lips where they stand on it, and what a clamp bears on round the middle of the joint's depth. */
function floorAcross(
  { thickness, joint }: CaulPlaceInput,
  press: Pressed,
  along: Stretch,
  far: number,
): Stretch {
  const { u, front, out, origin } = press;
  const beyond = printed.clearance.loose + caul.lip;
  const heights = [beyond, -thickness - beyond].flatMap((over) =>
    [along.from, along.to].flatMap((x) =>
      [far, far - caul.floor].map((n) => (over - origin.z - n * out.z - x * u.z) / front.z),
    ),
  );
  const middle = -joint.deep / 2;
  return {
    from: Math.min(Math.min(...heights) - caul.rim, middle - caul.pad),
    to: Math.max(Math.max(...heights) + caul.rim, middle + caul.pad),
  };
}
