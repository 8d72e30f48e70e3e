import { type Side, sides } from "../../order/side.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { FlatFile } from "./flat-file.ts";
import { wingFlat } from "./wing.ts";
import { wingJointFlat } from "./wing-joint.ts";

/** The files of the wings: each in its own plane, and the face that it shares with the core. */
export const wingFlats: readonly FlatFile[] = sides.flatMap((side) => [outline(side), joint(side)]);

function outline(side: Side): FlatFile {
  return {
    ...{ name: `wing-${side}`, folder: "outlines", part: `wing-${side}`, seenFrom: "front" },
    applies: ({ wings }) => wings !== null,
    what: `${side} wing's outline in its own plane, with its joint line and what is set to cut the joint`,
    of: ({ spec, instrument }, store) => {
      const { outline: made, place } = instrument.wings![side];
      if (made.kind !== "ok") throw new RangeError(`the ${side} wing has no outline: ${made.kind}`);
      return store.answer(wingFlat, {
        ...{ hand: spec.hand, side, path: made.path, joint: made.joint },
        ...{ bevel: place.cut.bevel, mitre: place.cut.mitre, profile: spec.wings![side].profile },
        thickness: dimensionOf(spec, `wing.${side}.thickness`),
        arris: dimensionOf(spec, `wing.${side}.arris`),
        pockets: (instrument.sunken[`wing-${side}`]?.pockets ?? []).filter(({ from }) => from === "front"),
      });
    },
  };
}

function joint(side: Side): FlatFile {
  return {
    ...{ name: `joint-${side}`, folder: "outlines", part: `wing-${side}` },
    // Sides are named after the strings, whatever the hand.
    seenFrom: { right: `${side} side`, left: `${side} side` },
    applies: ({ wings }) => wings !== null,
    what: `face that the ${side} wing and the core share, with the pins' holes`,
    fromNumbers: () => ({ layers: /^BORE-/, what: "JOINT BORES" }),
    of: ({ spec, instrument }, store) => {
      const { length, deep, back, inside, pins } = instrument.wings![side].joint;
      return store.answer(wingJointFlat, {
        ...{ hand: spec.hand, side, length, deep, back, inside },
        pins: pins.map(({ id, along, down }) => ({ id, along, down })),
        pin: {
          diameter: dimensionOf(spec, `wing.${side}.pin`),
          depth: dimensionOf(spec, `wing.${side}.pin.depth`),
        },
      });
    },
  };
}
