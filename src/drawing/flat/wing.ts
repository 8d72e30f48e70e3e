import { extentsOf } from "../../geometry/measure.ts";
import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import type { Pocket } from "../../instrument/pocket.ts";
import type { Side } from "../../order/side.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, turnedOver } from "./flat.ts";
import { sunkenShapes, sunkenWords } from "./sunken-shapes.ts";

/** A wing's own plane, mm and degrees: outline along it and out from the core, the joint line's tail end, and how far the back arris of the joint lies further out. */
export type WingFlatInput = {
  readonly hand: "right" | "left";
  readonly side: Side;
  readonly path: Path;
  readonly joint: readonly [number, number];
  readonly bevel: number;
  readonly mitre: number;
  readonly thickness: number;
  readonly arris: number;
  readonly profile: { readonly front: string; readonly back: string };
  /** What is sunk from its front, in its own axes. */
  readonly pockets: readonly Pocket[];
};

/**
 * A wing from the front, flat: its outline with the joint's front arris, where the joint's back arris lies, and what a person sets for
 * cutting the joint.
 */
export const wingFlat = step("outline.wing", 3, (given: WingFlatInput): Flat => {
  const { hand, side, path, joint, bevel, mitre, thickness, arris, profile, pockets } = given;
  const length = Math.hypot(...joint);
  const back = (thickness * Math.tan((bevel * Math.PI) / 180)) / length;
  const [dx, dy] = [-joint[1] * back, joint[0] * back];
  const { maxX, maxY } = extentsOf([path])!;
  const words = [
    `${side} wing, ${thickness.toFixed(2)} thick, seen from its front`,
    `joint: bevel ${bevel.toFixed(2)} deg, ${sharp(bevel)}`,
    `mitre ${mitre.toFixed(2)} deg from the wing's own axis`,
    `table falling ${Math.abs(bevel).toFixed(2)} deg to the wing's side: ${bevel < 0 ? "front" : "back"} down`,
    `table falling to the waste's side: ${bevel < 0 ? "back" : "front"} down`,
    `arrises ${arris.toFixed(2)}: front ${profile.front}, back ${profile.back}; none at the joint`,
    ...sunkenWords(pockets, [], "front"),
  ];
  const drawn: Flat = {
    shapes: [
      { layer: layers.outer, path },
      ...(back === 0
        ? []
        : [{ layer: layers.scribe, path: lineBetween(dx, dy, joint[0] + dx, joint[1] + dy) }]),
    ],
    notes: [],
  };
  const turned = side === "bass" ? flipped(drawn) : drawn;
  const sunk = sunkenShapes(pockets, [], thickness);
  const placed: Flat = { shapes: [...turned.shapes, ...sunk.shapes], notes: sunk.notes };
  const top = side === "bass" ? 0 : maxY;
  const flat: Flat = {
    ...placed,
    // Turning a left-hand drawing over would set the last line first.
    notes: [
      ...placed.notes,
      ...(hand === "left" ? words.toReversed() : words).map((text, i) => ({
        ...{ text, x: maxX + 8, y: top - (i + 1) * 2 * letterHeight },
        ...{ height: letterHeight, turn: 0, align: "left" as const },
      })),
    ],
  };
  return hand === "left" ? turnedOver(flat, "y") : flat;
});

function flipped({ shapes, notes }: Flat): Flat {
  return { shapes: shapes.map((shape) => ({ ...shape, path: mirrored(shape.path, "y") })), notes };
}

function sharp(bevel: number): string {
  if (bevel === 0) return "square";
  return bevel > 0 ? "front arris sharp" : "back arris sharp";
}
