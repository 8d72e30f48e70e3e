import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import type { JointPin, WingJoint } from "../../instrument/wing/joint.ts";
import type { Side } from "../../order/side.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, turnedOver } from "./flat.ts";

/** A joint's face, mm: along the joint line from its head end, and down from the wing's front arris. */
export type WingJointFlatInput = {
  readonly hand: "right" | "left";
  readonly side: Side;
  readonly length: number;
  readonly deep: number;
  readonly back: WingJoint["back"];
  readonly inside: WingJoint["inside"];
  readonly pins: readonly Pick<JointPin, "id" | "along" | "down">[];
  readonly pin: { readonly diameter: number; readonly size: number; readonly depth: number };
};

/**
 * The mating face that wing and core share, seen from the wing's side: its outline, the pins' holes, and the core's front and back
 * edges there. On the core it is laid with the front arris where the joint line is scribed.
 */
export const wingJointFlat = step("outline.wing-joint", 1, (given: WingJointFlatInput): Flat => {
  const { hand, side, length, deep, back, inside, pins, pin } = given;
  // Seen from outside, the head lies at the left on the treble side's right: along stays along on the bass side and turns round on the other.
  const along = (x: number) => (side === "bass" ? x : -x);
  const corner = (x: number, y: number) => ({ x: along(x), y, bulge: 0 });
  const face: Path = {
    closed: true,
    points: [corner(0, 0), corner(back.head, -deep), corner(back.tail, -deep), corner(length, 0)],
  };
  const core = (headEnd: number, tailEnd: number): Path => ({
    closed: false,
    points: [corner(0, headEnd), corner(length, tailEnd)],
  });
  const flat: Flat = {
    shapes: [
      { layer: layers.part, path: side === "bass" ? face : { ...face, points: face.points.toReversed() } },
      ...pins.map(({ along: at, down }) => ({
        layer: layers.bore(pin.diameter),
        path: circle({ x: along(at), y: -down }, pin.diameter / 2),
      })),
      { layer: layers.scribe, path: core(inside.head.front, inside.tail.front) },
      { layer: layers.scribe, path: core(-deep - inside.head.back, -deep - inside.tail.back) },
    ],
    notes: [
      ...pins.map(({ id, along: at, down }) => ({
        ...{ text: id, x: along(at) + pin.diameter / 2 + 1, y: -down - letterHeight / 2 },
        ...{ height: letterHeight, turn: 0, align: "left" as const },
      })),
      ...[
        `joint of the ${side} wing: pins ${pin.size.toFixed(2)} in holes ${pin.diameter.toFixed(2)}, ${pin.depth.toFixed(2)} deep, square to the face, in wing and core`,
        "lines above and below: the core's front and back",
      ].map((text, i) => ({
        ...{
          text,
          x: Math.min(0, along(length)),
          y: Math.max(inside.head.front, inside.tail.front) + 4 + 4 * (1 - i),
        },
        ...{ height: letterHeight, turn: 0, align: "left" as const },
      })),
    ],
  };
  return hand === "left" ? turnedOver(flat, "x") : flat;
});
