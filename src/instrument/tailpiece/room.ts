import { type CoreFrame, intoCore } from "../core/frame.ts";

/** Where a tailpiece's plate lies and what is round it, mm and degrees; `foremost` and `end` are x of its ends along the core. */
export type RoomInput = {
  readonly core: CoreFrame;
  readonly coreEnd: number;
  readonly plate: {
    readonly foremost: number;
    readonly end: number;
    readonly height: number;
    readonly thickness: number;
  };
  readonly bridge: {
    readonly stringLength: number;
    readonly top: number;
    readonly tilt: number;
    readonly thickness: number;
  };
};

/** What is free round a tailpiece, mm, negative where it overlaps: to the bridge, to the core's end, and to its front underneath. */
export type TailpieceRoom = { readonly bridge: number; readonly tail: number; readonly under: number };

/**
 * The room round a tailpiece. The bridge's tail-side face passes half its top's thickness behind the strings' contacts at the top
 * of the crown and leans by its tilt; the core ends square to z = 0. Both are asked at the top and at the underside of the plate.
 */
export function tailpieceRoom({ core, coreEnd, plate, bridge }: RoomInput): TailpieceRoom {
  const angle = (core.slope * Math.PI) / 180;
  const lean = Math.tan((bridge.tilt * Math.PI) / 180);
  const crown = intoCore(core, { x: bridge.stringLength, z: bridge.top });
  const heights = [plate.height, plate.height - plate.thickness];
  const faces = heights.map((z) => crown.x + bridge.thickness / 2 - (crown.z - z) * lean);
  const ends = heights.map((z) => core.start + plate.end * Math.cos(angle) + z * Math.sin(angle));
  return {
    bridge: plate.foremost - Math.max(...faces),
    tail: coreEnd - Math.max(...ends),
    under: plate.height - plate.thickness,
  };
}
