import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { type Frame, upright } from "../../geometry/solid/frame.ts";
import type { Section, Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import { drilling } from "./drill-plate.ts";
import { letteredBelow, letteringSize, pieceLines } from "./lettered.ts";
import { type Key, type Piece, pieceOf } from "./piece.ts";

/**
 * A drill guide for a wing's pins, in the joint's own frame, mm and degrees: the pins along the joint line and down the joint face; how deep that face is;
 * the wing's bevel; how far over the joint line the core's front lies at the head end, and how much higher it lies for each mm on; how the wing's edge leaves the
 * joint's head end, as its run along the joint line for each mm out, null where it runs too flat for a stop. `pilot` is with what is added to a hole's diameter.
 */
export type JointGuideInput = {
  readonly pins: readonly { readonly along: number; readonly down: number }[];
  readonly deep: number;
  readonly bevel: number;
  readonly core: { readonly front: number; readonly rise: number };
  readonly stop: number | null;
  readonly pilot: number;
  readonly mirrored: boolean;
  readonly lines: readonly string[];
  readonly piece: Piece;
};

/** How far fences and stop reach over the wood, what the plate has before the joint and past its last pin, and over the higher fence's face; mm (G). */
const guide = { fence: 6, stop: 4, before: 8, past: 15, foot: 4, below: 12 } as const;

/** The plate's own box, mm: along the joint line, over it and under it. */
export function jointGuideBox({ pins, deep, core }: Pick<JointGuideInput, "pins" | "deep" | "core">): {
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly low: number;
} {
  const to = Math.max(...pins.map(({ along }) => along)) + guide.past;
  const lowest = Math.max(...pins.map(({ down }) => down));
  const front = (x: number) => core.front + core.rise * x;
  const top = Math.max(0, front(-guide.before), front(to)) + guide.foot;
  return { from: -guide.before, to, top, low: Math.min(deep - 1, lowest + guide.below) };
}

/** How wide the plate's foot is on the bed, mm, and where across its middle lies. */
export const jointGuideFoot = { wide: drilling.thick + 2 * guide.fence, middle: -drilling.thick / 2 };

/** The dovetail of two pieces: in the foot alone. */
export const jointGuideKey: Key = { y: jointGuideFoot.middle, root: 8, end: 12, reach: 8, top: guide.foot };

/**
 * One plate for wing and core alike. Its one face lies on the wing's joint face, a fence on the wing's front along the arris and a stop at the joint's head
 * end; its other face on the core's side, another fence on the core's front, with a notch in the plate's edge at the joint's head end. The holes go
 * through it square to both, so each pin's two holes are of one line.
 *
 * It stands on its front edge as it is printed, so that neither fence hangs over: along the joint line on x, the wing on the side where y is negative, down the
 * joint face from z = `top` up. Of the other hand, y is turned round.
 */
export const jointGuide = step("jig.joint-guide", 1, (given: JointGuideInput): Solid => {
  const { pins, pilot, mirrored, piece } = given;
  const { from, to, top, low } = jointGuideBox(given);
  const parts: Solid[] = [wingSide(given), coreFence(given)];
  if (given.stop !== null) parts.push(stopWall(given, given.stop));
  const through = (outer: Path): Solid => ({
    ...{ kind: "place", frame: { ...alongPlate, origin: { x: 0, y: -wide, z: top } } },
    solid: { kind: "extrude", outlines: [{ outer, holes: [] }], height: 2 * wide },
  });
  const at = (x: number, y: number) => ({ x, y, bulge: 0 });
  const vee = { closed: true, points: [at(-1.2, -low), at(0, 2 - low), at(1.2, -low), at(0, -low - 1)] };
  const holes = pins.map(({ along, down }) => through(circle({ x: along, y: -down }, pilot / 2)));
  const plate: Solid = {
    ...{ kind: "cut", from: { kind: "union", solids: parts } },
    by: [through(vee), ...holes],
  };
  const cut = pieceOf(plate, piece, jointGuideKey);
  const handed: Solid = mirrored ? { kind: "place", solid: cut, frame: turned } : cut;
  const lines = pieceLines(given.lines, piece);
  const middle = mirrored ? -jointGuideFoot.middle : jointGuideFoot.middle;
  const x = ((piece.from ?? from) + (piece.to ?? to)) / 2;
  return letteredBelow(handed, { lines, x, y: middle + letteringSize(lines).height / 2 });
});

/** More than the plate and its fences are thick, mm. */
const wide = 40;

/** The other hand: y turned round. */
const turned: Frame = { ...upright, v: { x: 0, y: -1, z: 0 } };

/** Outlines across the plate: over the plate's core face along u, toward the front along v, raised along the joint line. */
const acrossPlate: Frame = {
  ...upright,
  u: { x: 0, y: -1, z: 0 },
  v: { x: 0, y: 0, z: -1 },
  w: { x: 1, y: 0, z: 0 },
};

/** Outlines on the plate's face: along the joint line along u, toward the front along v, raised through the plate. */
const alongPlate: Frame = {
  ...upright,
  u: { x: 1, y: 0, z: 0 },
  v: { x: 0, y: 0, z: -1 },
  w: { x: 0, y: 1, z: 0 },
};

/** The plate and the fence on the wing's front: that leaves the arris back toward the wing by the bevel. */
function wingSide(given: JointGuideInput): Solid {
  const { from, to, top, low } = jointGuideBox(given);
  const { thick } = drilling;
  const fall = guide.fence * Math.tan((given.bevel * Math.PI) / 180);
  const at = (x: number, y: number) => ({ x, y, bulge: 0 });
  const tip = thick + guide.fence;
  const points = [at(0, -low), at(thick, -low), at(thick, 0), at(tip, -fall), at(tip, top), at(0, top)];
  return {
    ...{ kind: "place", frame: { ...acrossPlate, origin: { x: from, y: 0, z: top } } },
    solid: { kind: "extrude", outlines: [{ outer: { closed: true, points }, holes: [] }], height: to - from },
  };
}

/** The fence on the core's front, whose face follows that along the joint; it reaches a little into the plate. */
function coreFence(given: JointGuideInput): Solid {
  const { from, to, top } = jointGuideBox(given);
  const section = (x: number): Section => ({
    ...{ kind: "path", frame: { ...acrossPlate, origin: { x, y: 0, z: top } } },
    path: rectangle(-guide.fence, given.core.front + given.core.rise * x, 1, top),
  });
  return { kind: "loft", sections: [section(from), section(to)] };
}

/** The wall at the joint's head end, which follows the wing's edge there: straight in either direction, so a loft down the joint face is exact. */
function stopWall(given: JointGuideInput, run: number): Solid {
  const { from, top, low } = jointGuideBox(given);
  const { thick } = drilling;
  const turn = (given.bevel * Math.PI) / 180;
  const face = (out: number, over: number) => run * (out * Math.cos(turn) - over * Math.sin(turn));
  const at = (x: number, y: number) => ({ x, y, bulge: 0 });
  const section = (z: number): Section => {
    const over = top - z;
    const points = [
      ...[at(from, -thick - guide.stop), at(face(guide.stop, over), -thick - guide.stop)],
      ...[at(face(0, over), -thick), at(face(0, over), -thick + 1), at(from, -thick + 1)],
    ];
    return { kind: "path", path: { closed: true, points }, frame: { ...upright, origin: { x: 0, y: 0, z } } };
  };
  return { kind: "loft", sections: [section(0), section(top + low)] };
}
