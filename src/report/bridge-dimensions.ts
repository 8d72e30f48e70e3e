import { type Dimension, length } from "./dimension.ts";

/** What is worked out of the bridge's place on the core and of its blank. */
export const bridgeDimensions: readonly Dimension[] = [
  length(
    "bridge",
    "bridge.foot.x",
    "Middle of the bridge's foot, along the core's front from where that begins",
    ({ instrument }) => instrument.bridgeStand.middle,
  ),
  length(
    "bridge",
    "bridge.blank.length",
    "Blank: length across the instrument",
    ({ instrument }) => instrument.bridgeBlank.length,
  ),
  length(
    "bridge",
    "bridge.blank.width",
    "Blank: width up the flat face",
    ({ instrument }) => instrument.bridgeBlank.width,
  ),
  length(
    "bridge",
    "bridge.blank.thickness",
    "Blank: thickness, square to the flat face",
    ({ instrument }) => instrument.bridgeBlank.thickness,
  ),
];
