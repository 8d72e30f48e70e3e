import { rectangle } from "../../geometry/rectangle.ts";
import type { Foot } from "../../instrument/bridge/feet.ts";
import type { BridgeStand } from "../../instrument/bridge/stand.ts";
import type { Sunk } from "../../instrument/bridge/sunk.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, type Note, type Shape, turnedOver } from "./flat.ts";

/**
 * What the drawing of the bridge's place shows, in the core's front (x' and y); mm. `core` is the stretch of the front whose sides are
 * straight: from and to, and half its width at either. `start` is where x' begins, from the nut along x.
 */
export type BridgePlaceInput = {
  readonly hand: "right" | "left";
  readonly stand: Pick<BridgeStand, "nut" | "middle" | "tail">;
  readonly feet: readonly Foot[];
  readonly sunk: readonly Pick<Sunk, "kind" | "id" | "path" | "depth" | "at" | "size">[];
  readonly core: { readonly from: Side; readonly to: Side };
  readonly start: number;
};

type Side = { readonly x: number; readonly half: number };

/** How far the line of the foot's middle is scribed past the feet, so that it shows when the bridge stands on it, mm. */
const past = 2;

/**
 * The bridge's place on the core's front, square from that and head at the left: the core's straight sides for reference, its
 * centreline, the feet and the line through their middle to scribe, and what is sunk there to bore or rout.
 */
export const bridgePlaceFlat = step("outline.bridge-place", 1, (given: BridgePlaceInput): Flat => {
  const { hand, stand, feet, sunk, core, start } = given;
  const { from, to } = core;
  const [bass, treble] = [feet[0]!.from, feet.at(-1)!.to];
  const flat: Flat = {
    shapes: [
      {
        layer: layers.part,
        path: {
          closed: true,
          points: [
            { x: from.x, y: -from.half, bulge: 0 },
            { x: to.x, y: -to.half, bulge: 0 },
            { x: to.x, y: to.half, bulge: 0 },
            { x: from.x, y: from.half, bulge: 0 },
          ],
        },
      },
      { layer: layers.scribe, path: lineBetween(from.x, 0, to.x, 0), chain: true },
      { layer: layers.scribe, path: lineBetween(stand.middle, bass - past, stand.middle, treble + past) },
      ...feet.map((foot): Shape => {
        return { layer: layers.scribe, path: rectangle(stand.nut, foot.from, stand.tail, foot.to) };
      }),
      ...sunk.map(({ kind, path, depth, size }): Shape => {
        return { layer: kind === "screw" ? layers.bore(size) : layers.recess(depth), path };
      }),
    ],
    notes: [
      ...notesOf(given, Math.max(from.half, to.half)),
      axisNote(from.x, Math.max(from.half, to.half), start),
    ],
  };
  return hand === "left" ? turnedOver(flat, "y") : flat;
});

function axisNote(x: number, half: number, start: number): Note {
  return {
    text: `X 0 WHERE THE CORE'S FRONT BEGINS, ${start.toFixed(2)} FROM THE NUT`,
    ...{ x, y: -half - 2 - letterHeight, height: letterHeight, turn: 0, align: "left" },
  };
}

/** Beside what each is about: over the treble side, one line a thing, from the foot's middle on. */
function notesOf({ stand, sunk }: BridgePlaceInput, half: number): Note[] {
  const lines = [
    `FOOT X ${stand.nut.toFixed(2)} TO ${stand.tail.toFixed(2)} MIDDLE ${stand.middle.toFixed(2)}`,
    ...sunk.map(({ kind, id, depth, at, size }) =>
      kind === "screw"
        ? `SCREW ${id.toUpperCase()} ${size.toFixed(2)} DEEP ${depth.toFixed(2)} AT X ${at.x.toFixed(2)} Y ${at.y.toFixed(2)}`
        : `CRADLE DEEP ${depth.toFixed(2)} MIDDLE AT X ${at.x.toFixed(2)}`,
    ),
  ];
  return lines.map((text, i) => ({
    ...{ text, x: stand.middle, y: half + 2 + (lines.length - 1 - i) * letterHeight * 1.7 },
    ...{ height: letterHeight, turn: 0, align: "center" },
  }));
}
