import type { Dimension } from "./dimension.ts";
import { angle, length } from "./dimension.ts";

const pinAt = (id: "head" | "tail", label: string) =>
  length("neck", `pin.${id}.x`, label, ({ instrument }) => {
    return instrument.neckPins.find((pin) => pin.id === id)!.x;
  });

/** What is worked out of the neck and its head. */
export const neckDimensions: readonly Dimension[] = [
  length(
    "neck",
    "neck.wood.nut",
    "Wood under the board at the nut's station, on the centreline",
    ({ instrument }) => {
      return instrument.neckWood.nut.wood;
    },
  ),
  length(
    "neck",
    "neck.wood.heel",
    "Wood under the board at the heel's station, on the centreline",
    ({ instrument }) => {
      return instrument.neckWood.heel.wood;
    },
  ),
  length("neck", "neck.lowest", "Lowest wood, under z = 0", ({ instrument: { neckSide } }) => {
    return neckSide.kind === "ok" ? neckSide.lowest : Number.NaN;
  }),
  length(
    "neck",
    "neck.blank.length",
    "Blank: length along the grain",
    ({ instrument }) => instrument.neckBlank.length,
  ),
  length("neck", "neck.blank.width", "Blank: width", ({ instrument }) => instrument.neckBlank.width),
  length(
    "neck",
    "neck.blank.thickness",
    "Blank: thickness",
    ({ instrument }) => instrument.neckBlank.thickness,
  ),
  pinAt("head", "Index pin in the waste past the head, from the nut: negative, toward the head"),
  pinAt("tail", "Index pin in the waste past the tail, from the nut"),
  {
    ...{ id: "neck.blank.plies", label: "Blank: boards that it is glued up from, 0 where no board holds it" },
    ...{ unit: "", part: "neck", tolerance: 0 },
    of: ({ sawing: { stock } }) => (stock.kind === "ok" ? stock.way.plies : 0),
  },
  length(
    "neck",
    "neck.ply.thickness",
    "Blank: width that each board makes, planed, 0 where no board holds it",
    ({ sawing: { stock } }) => (stock.kind === "ok" ? stock.way.ply : 0),
  ),
  length(
    "head",
    "head.length",
    "Length of the head along its face",
    ({ instrument }) => instrument.tuners.length,
  ),
  length("head", "head.width", "Width of the head", ({ instrument }) => 2 * instrument.tuners.half),
  length(
    "head",
    "tuner.hole.back",
    "Diameter of a tuner's hole at the head's back, where a peg goes in",
    ({ instrument }) => instrument.tunerHole.back,
  ),
  angle(
    "head",
    "nut.bend.least",
    "Least turn of a string over the nut, seen from the side",
    ({ instrument }) => {
      return Math.min(...instrument.tuners.tuners.map(({ bend }) => bend));
    },
  ),
  angle(
    "head",
    "nut.bend.most",
    "Most turn of a string over the nut, seen from the side",
    ({ instrument }) => {
      return Math.max(...instrument.tuners.tuners.map(({ bend }) => bend));
    },
  ),
  angle(
    "head",
    "nut.splay.most",
    "Most turn of a string over the nut in plan, to either side",
    ({ instrument }) => {
      return Math.max(...instrument.tuners.tuners.map(({ splay }) => Math.abs(splay)));
    },
  ),
];
