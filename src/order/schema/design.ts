import { z } from "zod";
import { catalogue } from "../catalogue.ts";
import type { Settable } from "../settable.ts";
import { tunerKinds } from "../tuner-kind.ts";
import { voices } from "../voice.ts";
import { perCount, valueOrPerCount } from "./counts.ts";
import { face } from "./face.ts";
import { reference } from "./measure.ts";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { line, oneOf, stringName, word } from "./word.ts";

function dimension(kind: Settable["kind"]) {
  const one = quantity(kind);
  const limit = valueOrPerCount(one);
  const value = z.union([one, perCount(one), ...reference.options], {
    error: "a value, one a string count, { dim: NAME } or { part: 0.5, of: NAME, plus: 3 mm }",
  });
  return record({
    value: value.meta({ description: "the value, or one a string count" }),
    least: limit.meta({ description: "the least that an order may set" }),
    most: limit.meta({ description: "the most that an order may set" }),
    tolerance: one
      .refine((value) => value > 0, { error: "more than 0" })
      .meta({ description: "how far a finished piece may be off" }),
    for: line("what this dimension is for, in this design"),
  });
}

const forms = {
  length: dimension("length"),
  angle: dimension("angle"),
  number: dimension("number"),
  count: dimension("count"),
};

/** A design's dimension as it is written. */
export type WrittenDimension = z.output<typeof forms.length>;

const dimensions = record(
  Object.fromEntries(catalogue.map(({ id, kind, label }) => [id, forms[kind].meta({ description: label })])),
);

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
  }),
  woods: record({
    neck: z
      .array(word("a wood of the shop's boards"), { error: "a list of woods, the best first" })
      .min(1, { error: "at least one wood" })
      .meta({ description: "what the neck may be made of, the best first" }),
  }),
  stations: record({
    fingerboard: z
      .array(quantity("length"), { error: "a list of lengths" })
      .meta({ description: "where the board's width is reported, from the nut" }),
    neck: z.array(quantity("length"), { error: "a list of lengths" }).meta({
      description: "where the neck has sections and gauges between its two named stations, from the nut",
    }),
  }),
  bridge: record({ face }),
});

/** A design as it is written. */
export type DesignFile = z.output<typeof designFile>;
