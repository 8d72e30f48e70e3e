import { z } from "zod";
import type { Settable } from "../settable.ts";
import { perCount, valueOrPerCount } from "./counts.ts";
import { reference } from "./measure.ts";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { line } from "./word.ts";

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
  frequency: dimension("frequency"),
  number: dimension("number"),
  count: dimension("count"),
};

/** A design's dimension as it is written. */
export type WrittenDimension = z.output<typeof forms.length>;

/** What a design writes of one dimension. */
export function form({ kind, label }: Settable) {
  return forms[kind].meta({ description: label });
}
