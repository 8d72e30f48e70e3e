import { extentsOf } from "../../geometry/measure.ts";
import { type BridgeStand, sideBetween } from "../../instrument/bridge/stand.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween } from "./flat.ts";

/** What the bridge's side shows; mm and degrees. */
export type BridgeSideInput = {
  /** Nothing of it is turned over, but from which side it is seen stands on the drawing. */
  readonly hand: "right" | "left";
  readonly stand: Pick<BridgeStand, "tilt" | "height" | "foot" | "top">;
};

/**
 * The bridge from the side, head at the left: a template of its taper and of its lean. It stands on the core's front from the foot's tail
 * edge (0) toward the nut, as high as the crown's top; its tail side is the flat face. The same for either hand: only the side that it is
 * seen from differs.
 */
export const bridgeSideFlat = step("outline.bridge-side", 1, ({ stand }: BridgeSideInput): Flat => {
  const { tilt, height, foot, top } = stand;
  const path = sideBetween({ ...stand, contact: 0, tail: 0, middle: -foot / 2, nut: -foot }, 0, height);
  const { minX, maxX } = extentsOf([path])!;
  const lines = [
    `HEIGHT ${height.toFixed(2)}`,
    `TILT ${tilt.toFixed(2)}`,
    `FOOT ${foot.toFixed(2)} TOP ${top.toFixed(2)}`,
  ];
  return {
    shapes: [
      { layer: layers.outer, path },
      { layer: layers.part, path },
      { layer: layers.note, path: lineBetween(minX - 6, 0, maxX + 6, 0), chain: true },
      { layer: layers.note, path: lineBetween(0, 0, 0, height), chain: true },
    ],
    notes: lines.map((text, i) => ({
      ...{ text, x: maxX + 3, y: 3 + (lines.length - 1 - i) * letterHeight * 1.7 },
      ...{ height: letterHeight, turn: 0, align: "left" },
    })),
  };
});
