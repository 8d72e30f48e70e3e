import { z } from "zod";
import { catalogue } from "../catalogue.ts";
import { namedFixtures } from "./fixtures.ts";
import { quantity, wholeNumber, writtenQuantity } from "./quantity.ts";
import { record } from "./record.ts";
import { ownString } from "./strings.ts";
import { lettering, oneOf, stringName, word } from "./word.ts";

const stringList = z.array(
  z.union([stringName("a string of the voice"), ownString], {
    error: "a string's name, or a map that describes one",
  }),
  { error: "a list of strings, highest first" },
);

/** One instrument to build. */
export const orderFile = record({
  order: z
    .string({ error: "an order's number" })
    .regex(/^[A-Za-z0-9](?:[A-Za-z0-9._-]{0,62}[A-Za-z0-9_-])?$/, {
      error:
        "1 to 64 letters, digits, dots, hyphens and underscores, beginning with a letter or digit, not ending in a dot",
    })
    .refine((id) => !/^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i.test(id), {
      error: "a name that every computer takes for a folder",
    })
    .meta({ description: "the order's number: names its folder, printed on every sheet" }),
  revision: word("the shop's own letter for this revision").optional(),
  design: word("a file in designs/, without its ending"),
  strings: z
    .union([wholeNumber(4, 7, "how many strings"), stringList], {
      error: "a count from 4 to 7, or a list of strings",
    })
    .meta({ description: "a count, or a list of strings, highest first" }),
  hand: oneOf(["right", "left"], "which hand holds the bow"),
  frets: z
    .union([oneOf(["none"], "no frets"), record({ count: wholeNumber(1, 36, "how many frets") })], {
      error: "none, or { count: 24 }",
    })
    .meta({ description: "none, or { count: 24 } where the design allows it" }),
  shop: word("a file in shops/, without its ending"),
  paper: word("the shop's paper that full-size sheets are laid out on; its first unless named").optional(),
  set: z
    .record(z.string(), writtenQuantity("a settable dimension, in place of the design's own"), {
      error: "a map of dimensions and their values",
    })
    .optional()
    .meta({ description: "any settable dimension, in place of the design's own" }),
  fixtures: namedFixtures.optional(),
  overrule: z
    .array(
      record({
        check: word("the check's id, as checks.json has it"),
        reason: lettering("why, as it will be printed on every sheet of that set-up"),
      }),
      { error: "a list of { check, reason }" },
    )
    .optional()
    .meta({ description: "checks that refuse and that a person takes upon themselves" }),
});

/** An order as it is written. */
export type OrderFile = z.output<typeof orderFile>;

/** An order as an editor completes and checks it: under `set` each settable dimension, described. */
export const orderForEditors = orderFile.extend({
  set: record(
    Object.fromEntries(catalogue.map(({ id, kind, label }) => [id, quantity(kind, label).optional()])),
  )
    .optional()
    .meta({ description: "any settable dimension, in place of the design's own" }),
});
