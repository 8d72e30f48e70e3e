import type { Path } from "../../geometry/path.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { type CoreWidth, coreHalf } from "../core/width.ts";

/**
 * What the room for a core in a body follows from, mm: `core.depth` is square from its front, `corner` the radius of its tail's two
 * corners. `start` is the body's head end along the core's front, `past` how far to lead the room on before that.
 */
export type BodyRecessInput = {
  readonly core: CoreFrame & CoreWidth & { readonly depth: number; readonly end: number };
  readonly corner: number;
  readonly drop: number;
  readonly clearance: number;
  readonly start: number;
  readonly past: number;
};

/**
 * The room for the core in a body's front, mm: x along the core's front from its start, y to the treble side, counter-clockwise.
 * Open at the body's head end, over which it is led on. `depth` is from the body's front to the core's back; `end` its tail
 * end; `side` its treble side and tail from the body's head end to the centreline. `no-depth` where the body's front lies under the core's
 * back, `too-short` where it would end before its corners begin.
 */
export type BodyRecess =
  | {
      readonly kind: "ok";
      readonly path: Path;
      readonly side: Path;
      readonly depth: number;
      readonly end: number;
      readonly half: { readonly head: number; readonly tail: number };
      readonly corner: number;
    }
  | { readonly kind: "no-depth" | "too-short" };

/**
 * The core's plan and the clearance all round, square to the body's front. The core stands square to z = 0 and so leans in the body by its
 * slope: its tail reaches furthest at one of the recess's two faces, and so does a side that tapers. There the clearance is as set; at the other
 * face it is more.
 */
export const bodyRecess = step("body.recess", 1, (given: BodyRecessInput): BodyRecess => {
  const { core, drop, clearance, start, past } = given;
  const depth = core.depth - drop;
  if (depth <= 0) return { kind: "no-depth" };
  const slope = (core.slope * Math.PI) / 180;
  const faces = [-drop, -core.depth];
  const end = Math.max(...faces.map((z) => tailAt(core, slope, z))) + clearance;
  const half = (along: number) => Math.max(...faces.map((z) => halfAt(core, slope, along, z))) + clearance;
  const corner = given.corner + clearance;
  const [head, tail] = [half(start - past), half(end)];
  if (end - corner <= start || corner >= tail) return { kind: "too-short" };
  const lean = Math.atan2(tail - head, end - start + past);
  // From the straight side through the rounded corner to the tail's middle; a side that tapers turns by a little more or less.
  const turn = Math.PI / 2 + lean;
  const cut = corner * Math.tan(turn / 2);
  const before = { x: end - cut * Math.cos(lean), y: tail - cut * Math.sin(lean), bulge: Math.tan(turn / 4) };
  const treble = (x: number, y: number) => [
    { x: end, y: 0, bulge: 0 },
    { x: end, y: tail - cut, bulge: Math.tan(turn / 4) },
    { x: before.x, y: before.y, bulge: 0 },
    { x, y, bulge: 0 },
  ];
  const bass = [
    { x: start - past, y: -head, bulge: 0 },
    { x: before.x, y: -before.y, bulge: Math.tan(turn / 4) },
    { x: end, y: -(tail - cut), bulge: 0 },
  ];
  return {
    kind: "ok",
    path: { closed: true, points: [...bass, ...treble(start - past, head).slice(1)] },
    side: { closed: false, points: treble(start, half(start)) },
    ...{ depth, end, half: { head: half(start), tail }, corner },
  };
});

/** Where the core's tail is along its front, at a height square from that. */
function tailAt(core: BodyRecessInput["core"], slope: number, z: number): number {
  return (core.end - core.start - z * Math.sin(slope)) / Math.cos(slope);
}

/** Half the core's width at a place along its front and a height square from that. */
function halfAt(core: BodyRecessInput["core"], slope: number, along: number, z: number): number {
  return coreHalf(core, core.start + along * Math.cos(slope) + z * Math.sin(slope));
}

/** Where the core is full along its front: its sides from `sides` on, its back from `back` on, both from the nut; mm. */
export function coreFullFrom(
  core: CoreFrame & { readonly depth: number },
  sides: number,
  back: number,
): number {
  const slope = (core.slope * Math.PI) / 180;
  const along = (x: number, z: number) => (x - core.start - z * Math.sin(slope)) / Math.cos(slope);
  return Math.max(along(sides, 0), along(sides, -core.depth), along(back, -core.depth));
}
