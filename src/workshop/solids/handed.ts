import { type Frame, upright } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { hashOf } from "../../step/key.ts";
import type { SolidFile } from "./solid-file.ts";

/** The other hand: y turned round. */
const turnedOver: Frame = { ...upright, v: { x: 0, y: -1, z: 0 } };

/** A right-handed solid's key and recipe for an order of some hand: of a left-hand one the other way round. */
export function handed(
  hand: "right" | "left",
  key: string,
  right: () => Solid,
): Pick<SolidFile, "key" | "solid"> {
  if (hand === "right") return { key, solid: right };
  return {
    key: hashOf(`left\n${key}`),
    solid: () => ({ kind: "place", solid: right(), frame: turnedOver }),
  };
}
