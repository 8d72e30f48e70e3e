import { type Frame, upright } from "../../geometry/solid/frame.ts";

/** The other hand: y turned round. */
export const turnedOver: Frame = { ...upright, v: { x: 0, y: -1, z: 0 } };
