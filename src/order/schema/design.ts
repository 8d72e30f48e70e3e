import { z } from "zod";
import { catalogue } from "../catalogue.ts";
import { perCount, valueOrPerCount } from "./counts.ts";
import { face } from "./face.ts";
import { reference } from "./measure.ts";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { voices } from "./strings.ts";
import { line, oneOf, word } from "./word.ts";

function dimension(kind: "length" | "angle", label: string) {
  const one = quantity(kind);
  return record({
    value: z.union([one, perCount(one), ...reference.options]).meta({ description: "the value, or one a string count" }),
    least: valueOrPerCount(one).meta({ description: "the least that an order may set" }),
    most: valueOrPerCount(one).meta({ description: "the most that an order may set" }),
    tolerance: quantity(kind, "how far a finished piece may be off"),
    for: line("what this dimension is for, in this design"),
  }).meta({ description: label });
}

/** A design's dimension as it is written. */
export type WrittenDimension = z.output<ReturnType<typeof dimension>>;

const dimensions = record(
  Object.fromEntries(catalogue.map(({ id, kind, label }) => [id, dimension(kind, label)])),
);

/** One kind of instrument, all string counts. */
export const designFile = record({
  design: word("the design's name, that of its file"),
  title: line("what it is, in one line"),
  voice: oneOf(voices, "which strings, which string length"),
  build: oneOf(["winged", "one-piece"], "a through-neck with wings joined to its core, or a body in one piece"),
  strings: perCount(z.array(word("a string of the voice"), { error: "a list of strings, highest first" })),
  dimensions,
  stations: record({
    fingerboard: z
      .array(quantity("length"), { error: "a list of lengths" })
      .meta({ description: "where the board's width is reported, from the nut" }),
  }),
  bridge: record({ face }),
});

/** A design as it is written. */
export type DesignFile = z.output<typeof designFile>;
