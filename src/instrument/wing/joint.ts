import { type Frame, fromFrame } from "../../geometry/solid/frame.ts";
import { cross, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import type { FramePoint } from "../../order/spec.ts";
import { step } from "../../step/step.ts";
import { sign } from "./frame.ts";
import { placeOfWing, type WingPlace, type WingPlaceInput } from "./place.ts";

/**
 * A wing's joint, mm: its place, the joint line's length and which way the outline runs from its two ends (along the wing and out), the
 * wing's thickness, the core's depth, and the pins: along the joint from its head end and down from the wing's front.
 */
export type WingJointInput = {
  readonly place: WingPlaceInput;
  readonly length: number;
  readonly beside: { readonly head: FramePoint; readonly tail: FramePoint };
  readonly thickness: number;
  readonly coreDepth: number;
  readonly pins: readonly { readonly id: string; readonly at: FramePoint }[];
  readonly pin: { readonly diameter: number; readonly depth: number };
};

/** A pin: its middle on the joint face, along the joint line and down that face from it; `wing` and `core` are the wood left round its hole in front and behind, mm. */
export type JointPin = {
  readonly id: string;
  readonly along: number;
  readonly down: number;
  readonly at: Vec3;
  readonly wing: { readonly front: number; readonly back: number };
  readonly core: { readonly front: number; readonly back: number };
};

/**
 * A joint: `face` lies on the mating face in the core frame, u along the joint line, v down it, w out of the core; `deep` is the
 * face's height along v, `back` where its back arris begins and ends along u, `area` what is glued, mm and mm². `inside` is the core's wood in front of the joint strip and behind it, at its head end and its
 * tail end: negative where the strip reaches out of the core.
 */
export type WingJoint = {
  readonly face: Frame;
  readonly length: number;
  readonly deep: number;
  readonly back: { readonly head: number; readonly tail: number };
  readonly area: number;
  readonly pins: readonly JointPin[];
  readonly inside: {
    readonly head: { readonly front: number; readonly back: number };
    readonly tail: { readonly front: number; readonly back: number };
  };
};

/** The joint face as wing and core share it, with its pins square to it. */
export const wingJoint = step("wing.joint", 1, (given: WingJointInput): WingJoint => {
  const { length, thickness, coreDepth, pin } = given;
  const place = placeOfWing(given.place);
  const { frame, joint, cut } = place;
  const face: Frame = {
    origin: frame.origin,
    u: cut.edge,
    v: downFace(cut.edge, joint.normal),
    w: joint.normal,
  };
  const lean = dot(frame.w, joint.normal);
  const perDeep = -dot(face.v, frame.w);
  const deep = thickness / perDeep;
  const round = pin.diameter / 2;
  const pins = given.pins.map(({ id, at: [along, down] }): JointPin => {
    const at = fromFrame(face, along, down / perDeep, 0);
    // A pin square to the joint climbs toward the wing's front by the lean of that, or sinks.
    const nearest = {
      front: down - Math.max(0, lean) * pin.depth,
      back: thickness - down + Math.min(0, lean) * pin.depth,
    };
    const thick = round * perDeep;
    const inCore = (z: number) => z - round * Math.hypot(joint.normal.x, joint.normal.y);
    return {
      ...{ id, along, down: down / perDeep, at },
      wing: { front: nearest.front - thick, back: nearest.back - thick },
      core: {
        front: inCore(-at.z - Math.max(0, -joint.normal.z) * pin.depth),
        back: inCore(coreDepth + at.z - Math.max(0, joint.normal.z) * pin.depth),
      },
    };
  });
  const back = {
    head: alongBack(given, place, face, given.beside.head),
    tail: length + alongBack(given, place, face, given.beside.tail),
  };
  const inside = (along: number, behind: number) => ({
    front: -fromFrame(face, along, 0, 0).z,
    back: coreDepth + fromFrame(face, behind, deep, 0).z,
  });
  const area = ((length + back.tail - back.head) / 2) * deep - pins.length * Math.PI * round ** 2;
  return {
    ...{ face, length, deep, back, area, pins },
    inside: { head: inside(0, back.head), tail: inside(length, back.tail) },
  };
});

/** How far along the joint line the back arris ends past the front one: there the wall beside the joint meets it. */
function alongBack(
  { place: { side }, thickness }: WingJointInput,
  place: WingPlace,
  face: Frame,
  [along, out]: FramePoint,
): number {
  const { frame, joint } = place;
  const way = fromFrame({ ...frame, origin: nowhere }, along, sign(side) * out, 0);
  const down = cross(cross(way, frame.w), joint.normal);
  const reach = -thickness / dot(down, frame.w);
  return reach * dot(down, face.u);
}

const nowhere: Vec3 = { x: 0, y: 0, z: 0 };

/** The way down a joint face, square to the joint line: toward the core's back. */
function downFace(edge: Vec3, normal: Vec3): Vec3 {
  const across = cross(edge, normal);
  const s = across.z > 0 ? -1 : 1;
  return { x: s * across.x, y: s * across.y, z: s * across.z };
}
