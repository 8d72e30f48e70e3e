import { type Frame, upright } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { hashOf } from "../../step/key.ts";
import type { Store } from "../../step/store.ts";
import type { SolidFile } from "./solid-file.ts";

/** The other hand: y turned round. */
const otherHand: Frame = { ...upright, v: { x: 0, y: -1, z: 0 } };

/** A part's recipe and its key for a hand: as they are of a right-hand order, and of a left-hand one turned over, as the last thing. */
export function turnedOver(
  hand: "right" | "left",
  key: string,
  solid: (store: Store) => Solid,
): Pick<SolidFile, "key" | "solid"> {
  if (hand === "right") return { key, solid };
  return {
    key: hashOf(`left\n${key}`),
    solid: (store) => ({ kind: "place", solid: solid(store), frame: otherHand }),
  };
}
