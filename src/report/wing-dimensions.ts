import type { JointPin, WingJoint } from "../instrument/wing/joint.ts";
import type { Wing } from "../instrument/wing/wings.ts";
import { type Side, sides } from "../order/side.ts";
import type { Spec } from "../order/spec.ts";
import type { Model } from "../workshop/model.ts";
import { angle, type Dimension, length } from "./dimension.ts";

/** How far a joint's angle may be off before its faces gape, degrees: 0.1 mm over 22 (trade notes, gap in a joint). */
const jointAngle = 0.25;

/** What is worked out of the wings; nothing on an instrument without. */
export function wingDimensions({ wings }: Spec): Dimension[] {
  return wings === null
    ? []
    : sides.flatMap((side) =>
        ofSide(
          side,
          wings[side].pins.map(({ id }) => id),
        ),
      );
}

function ofSide(side: Side, pins: readonly string[]): Dimension[] {
  const part = `wing-${side}`;
  const id = (name: string) => `wing.${side}.${name}`;
  const wing = ({ instrument }: Model): Wing => instrument.wings![side];
  const joint = (name: string, label: string, of: (joint: WingJoint) => number) =>
    length(part, id(name), label, (model) => of(wing(model).joint));
  const turn = (name: string, label: string, of: (wing: Wing) => number) => ({
    ...angle(part, id(name), label, (model) => of(wing(model))),
    tolerance: jointAngle,
  });
  return [
    turn(
      "bevel",
      `Tilt of the ${side} wing's joint face from square to its front, positive where the front arris is sharp`,
      ({ place }) => place.cut.bevel,
    ),
    turn(
      "mitre",
      `Turn of the ${side} wing's joint line from its own axis, positive opening to the tail`,
      ({ place }) => place.cut.mitre,
    ),
    turn(
      "table",
      `Tilt of the saw's table or of the cutter for the ${side} wing's joint, from square`,
      ({ place }) => Math.abs(place.cut.bevel),
    ),
    length(
      part,
      id("x"),
      `Head end of the ${side} wing's joint line, from the nut`,
      (model) => wing(model).place.x,
    ),
    joint("joint.length", `Length of the ${side} wing's joint line`, ({ length: long }) => long),
    joint(
      "joint.depth",
      `Depth of the ${side} wing's joint face, square to the joint line`,
      ({ deep }) => deep,
    ),
    {
      ...{ id: id("joint.area"), label: `Area that is glued in the ${side} wing's joint`, unit: "mm²", part },
      ...{ tolerance: 20, of: (model) => wing(model).joint.area },
    },
    length(
      part,
      id("pin.hole"),
      `Diameter of a pin's hole in the ${side} wing's joint, in wing and core`,
      (model) => wing(model).pinHole.diameter,
    ),
    ...(["head", "tail"] as const).flatMap((end) =>
      (["front", "back"] as const).map((face) =>
        joint(
          `inside.${end}.${face}`,
          `Core's ${face} to the ${side} wing's joint strip, at its ${end} end`,
          ({ inside }) => inside[end][face],
        ),
      ),
    ),
    ...pins.flatMap((pin, i) => ofPin(joint, side, pin, ({ pins: all }) => all[i]!)),
  ];
}

function ofPin(
  joint: (name: string, label: string, of: (joint: WingJoint) => number) => Dimension,
  side: Side,
  pin: string,
  at: (joint: WingJoint) => JointPin,
): Dimension[] {
  const named = (name: string, label: string, of: (pin: JointPin) => number) =>
    joint(`pin.${pin}.${name}`, `Pin ${pin} of the ${side} wing: ${label}`, (made) => of(at(made)));
  return [
    named("along", "its middle along the joint line from its head end", ({ along }) => along),
    named("down", "its middle down the joint face from the wing's front arris", ({ down }) => down),
    named("wall", "least wood of the wing between its hole and front or back", ({ wing }) =>
      Math.min(wing.front, wing.back),
    ),
    named("wall.core", "least wood of the core between its hole and front or back", ({ core }) =>
      Math.min(core.front, core.back),
    ),
  ];
}
