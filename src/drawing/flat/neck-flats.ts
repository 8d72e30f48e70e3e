import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { CoreFrame } from "../../instrument/core/frame.ts";
import { fromCore } from "../../instrument/core/from-core.ts";
import { boardWidth } from "../../instrument/fingerboard/taper.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../../workshop/model.ts";
import type { FlatFile } from "./flat-file.ts";
import { type HeadFaceInput, headFaceFlat } from "./head-face.ts";
import { neckPlanFlat } from "./neck-plan.ts";
import { neckSawFlats } from "./neck-saw-flats.ts";
import { neckSectionsFlat } from "./neck-sections.ts";
import { neckSideFlat } from "./neck-side.ts";

/** The machine files of the neck: plan, side, the head's face, and what the blank is sawn to. */
export const neckFlats: readonly FlatFile[] = [
  {
    ...{ name: "neck-plan", folder: "outlines", part: "neck", seenFrom: "front" },
    what: "neck outline from the front, with its rods' channels, its index pins, and what is sunk into the core and the tuners' places as they project",
    of: ({ spec, instrument }, store) => {
      const { neckProfile, neckRods, neckPins, tunerPlaces, corePockets, core } = instrument;
      const of = (id: string) => dimensionOf(spec, id);
      const marks = [
        { name: "NUT", x: 0 },
        { name: "BOARD END", x: of("fingerboard.length") },
        { name: "CORE", x: of("core.start") },
        { name: "BRIDGE", x: of("string.length") },
      ];
      return store.answer(neckPlanFlat, {
        ...{ hand: spec.hand, path: neckProfile.plan, holes: tunerPlaces, marks },
        rods: neckRods.map(({ y, start, length, depth, path }) => ({ y, start, length, depth, path })),
        pins: neckPins,
        pockets: corePockets.map(({ id, path, depth, bore }) => {
          return { id, path: inPlan(core, path, bore), depth, bore };
        }),
      });
    },
  },
  {
    ...{ name: "neck-side", folder: "outlines", part: "neck" },
    seenFrom: { right: "bass side", left: "treble side" },
    what: "neck outline from the side, with the wood at its stations and its rods' depth",
    of: ({ spec, instrument: { neckProfile, neckRods, neckWood } }, store) => {
      const of = (id: string) => dimensionOf(spec, id);
      return store.answer(neckSideFlat, {
        hand: spec.hand,
        path: neckProfile.side,
        stations: [
          { name: "NUT STATION", ...neckWood.nut },
          { name: "HEEL STATION", ...neckWood.heel },
        ],
        channels: neckRods.slice(0, 1).map(({ start, length, depth }) => ({ start, length, depth })),
        marks: [
          { name: "NUT", x: 0 },
          { name: "CORE", x: of("core.start") },
          { name: "BRIDGE", x: of("string.length") },
        ],
      });
    },
  },
  {
    ...{ name: "neck-sections", folder: "outlines", part: "neck", seenFrom: "tail" },
    what: "the neck's sections at its stations",
    of: ({ spec: { hand }, instrument: { neckSections } }, store) => {
      const sections = neckSections.map(({ name, x, depth, path }) => ({ name, x, depth, path }));
      return store.answer(neckSectionsFlat, { hand, sections });
    },
  },
  {
    ...{ name: "head-face", folder: "outlines", part: "head", seenFrom: "head's front" },
    what: "the head's face with the tuners' holes, which are bored square to it",
    of: (model, store) => store.answer(headFaceFlat, { hand: model.spec.hand, ...headFaceOf(model) }),
  },
  ...neckSawFlats,
];

/** A pocket's outline where it projects into the plan; of what is drilled the bore keeps its diameter. */
function inPlan(core: CoreFrame, path: Path, bore: number | null): Path {
  const along = (x: number) => fromCore(core, { x, z: 0 }).x;
  if (bore === null)
    return { ...path, points: path.points.map((point) => ({ ...point, x: along(point.x) })) };
  const { minX, maxX, minY, maxY } = extentsOf([path])!;
  return circle({ x: along((minX + maxX) / 2), y: (minY + maxY) / 2 }, bore / 2);
}

/** The head's face of a model, right-handed. */
export function headFaceOf({ spec, instrument }: Model): Omit<HeadFaceInput, "hand"> {
  const { tuners, tunerHole, taper } = instrument;
  const of = (id: string) => dimensionOf(spec, id);
  const fall = Math.cos((of("head.angle") * Math.PI) / 180);
  const slope = (taper.end - taper.nut) / 2 / taper.length;
  return {
    ...{ length: tuners.length, half: tuners.half },
    nutHalf: boardWidth(taper, -of("nut.thickness")) / 2,
    edge: (Math.atan(slope * fall) * 180) / Math.PI,
    ...{ shoulder: of("head.shoulder") / fall, corner: of("head.corner") },
    ...{ hole: tunerHole, bare: tuners.kind === "tail" },
    tuners: tuners.tuners.map(({ along, y }, i) => ({ name: spec.strings[i]!.name, along, y })),
  };
}
