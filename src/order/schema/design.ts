import { z } from "zod";
import { catalogue } from "../catalogue.ts";
import { tunerKinds } from "../tuner-kind.ts";
import { voices } from "../voice.ts";
import { perCount } from "./counts.ts";
import { form } from "./dimension.ts";
import { face } from "./face.ts";
import { body, dots, foot, frets, inlays, wings } from "./features.ts";
import { hardware } from "./hardware.ts";
import { quantity } from "./quantity.ts";
import { recesses } from "./recesses.ts";
import { record } from "./record.ts";
import { rests } from "./rests.ts";
import { veneers } from "./veneers.ts";
import { line, oneOf, stringName, word } from "./word.ts";

const dimensions = record(
  Object.fromEntries(
    catalogue.filter(({ feature }) => feature === null).map((entry) => [entry.id, form(entry)]),
  ),
);

const woods = (part: string) =>
  z
    .array(word("a wood of the shop's boards"), { error: "a list of woods, the best first" })
    .min(1, { error: "at least one wood" })
    .meta({ description: `what the ${part} may be made of, the best first` });

const madeOf = (part: string) => word(`what the ${part} is made of: a name of woods.yaml`);

/** Fits that the design's own clearances follow; it declares those that something of it follows. */
const fits = record({
  dimensions: record(
    Object.fromEntries(
      catalogue
        .filter(({ feature }) => feature === "fits")
        .map((entry) => [entry.id, form(entry).optional()]),
    ),
  ),
});

/** One kind of instrument, all string counts. */
export const designFile = record({
  design: word("the design's name, that of its file"),
  title: line("what it is, in one line"),
  voice: oneOf(voices, "which strings, which string length"),
  build: oneOf(
    ["winged", "one-piece"],
    "a through-neck with wings joined to its core, or a body in one piece",
  ),
  strings: perCount(
    z.array(stringName("a string of the voice"), { error: "a list of strings, highest first" }),
  ),
  dimensions,
  head: record({
    tuners: oneOf(
      tunerKinds,
      "machine heads in the head's face, pegs with a taper of 1:30, or tuners at the tail and a bare head",
    ),
    finish: oneOf(
      ["hand"],
      "what a cutter can't bring out of the head's edges, to the neck's first station, is finished by hand",
    ).optional(),
  }),
  woods: record({
    ...{ neck: woods("neck"), fingerboard: woods("fingerboard") },
    ...{ bridge: madeOf("bridge"), nut: madeOf("nut"), tailpiece: madeOf("tailpiece") },
    rod: madeOf("reinforcing rods"),
    wings: madeOf("wings").optional(),
    body: madeOf("body").optional(),
    cover: madeOf("covers over recesses").optional(),
  }),
  hardware: hardware.optional(),
  stations: record({
    fingerboard: z
      .array(quantity("length"), { error: "a list of lengths" })
      .meta({ description: "where the board's width and the strings' gaps are reported, from the nut" }),
    neck: z.array(quantity("length"), { error: "a list of lengths" }).meta({
      description: "where the neck has sections and gauges between its two named stations, from the nut",
    }),
  }),
  fingerboard: record({
    surface: oneOf(
      ["cylinder", "cone"],
      "one radius from end to end, or one that grows as the strings spread so that each lies over a straight line",
    ),
  }),
  frets: frets.optional(),
  dots: dots("dots").optional(),
  "side-dots": dots("side-dots").optional(),
  inlays: inlays.optional(),
  bridge: record({ face, foot }),
  tailpiece: record({ face }),
  wings: wings.optional(),
  body: body.optional(),
  recesses: recesses.optional(),
  rests: rests.optional(),
  fits: fits.optional(),
  veneers: veneers.optional(),
});

/** A design as it is written. */
export type DesignFile = z.output<typeof designFile>;
