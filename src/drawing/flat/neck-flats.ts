import { boardWidth } from "../../instrument/fingerboard/taper.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { FlatFile } from "./flat-file.ts";
import { headFaceFlat } from "./head-face.ts";
import { neckPlanFlat } from "./neck-plan.ts";
import { neckSawFlats } from "./neck-saw-flats.ts";
import { neckSideFlat } from "./neck-side.ts";

/** The machine files of the neck: plan, side, the head's face, and what the blank is sawn to. */
export const neckFlats: readonly FlatFile[] = [
  {
    ...{ name: "neck-plan", folder: "outlines", part: "neck", seenFrom: "front" },
    what: "neck outline from the front, with the tuners' places as they project",
    of: ({ spec, instrument: { neckPlan, tuners } }, store) => {
      if (neckPlan.kind !== "ok") throw new RangeError(`the neck has no plan: ${neckPlan.kind}`);
      const of = (id: string) => dimensionOf(spec, id);
      const tilt = Math.cos((of("head.angle") * Math.PI) / 180);
      const holes = tuners.tuners.map(({ along, y }) => ({ x: -of("nut.thickness") - along * tilt, y }));
      const marks = [
        { name: "NUT", x: 0 },
        { name: "BOARD END", x: of("fingerboard.length") },
        { name: "CORE", x: of("core.start") },
        { name: "BRIDGE", x: of("string.length") },
      ];
      return store.answer(neckPlanFlat, { hand: spec.hand, path: neckPlan.path, holes, marks });
    },
  },
  {
    ...{ name: "neck-side", folder: "outlines", part: "neck" },
    seenFrom: { right: "bass side", left: "treble side" },
    what: "neck outline from the side, with the wood at its stations",
    of: ({ spec, instrument: { neckSide, neckWood } }, store) => {
      if (neckSide.kind !== "ok") throw new RangeError(`the neck has no side: ${neckSide.kind}`);
      const of = (id: string) => dimensionOf(spec, id);
      return store.answer(neckSideFlat, {
        hand: spec.hand,
        path: neckSide.path,
        stations: [
          { name: "NUT STATION", ...neckWood.nut },
          { name: "HEEL STATION", ...neckWood.heel },
        ],
        marks: [
          { name: "NUT", x: 0 },
          { name: "CORE", x: of("core.start") },
          { name: "BRIDGE", x: of("string.length") },
        ],
      });
    },
  },
  {
    ...{ name: "head-face", folder: "outlines", part: "head", seenFrom: "head's front" },
    what: "the head's face with the tuners' holes, which are bored square to it",
    of: ({ spec, instrument: { tuners, taper } }, store) => {
      const of = (id: string) => dimensionOf(spec, id);
      const fall = Math.cos((of("head.angle") * Math.PI) / 180);
      const slope = (taper.end - taper.nut) / 2 / taper.length;
      return store.answer(headFaceFlat, {
        ...{ hand: spec.hand, length: tuners.length, half: of("head.column") + of("head.edge") },
        nutHalf: boardWidth(taper, -of("nut.thickness")) / 2,
        edge: (Math.atan(slope * fall) * 180) / Math.PI,
        ...{ shoulder: of("head.shoulder") / fall, corner: of("head.corner"), hole: of("tuner.hole") },
        tuners: tuners.tuners.map(({ along, y }, i) => ({ name: spec.strings[i]!.name, along, y })),
      });
    },
  },
  ...neckSawFlats,
];
