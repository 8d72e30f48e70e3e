import { z } from "zod";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { line, oneOf, stringName } from "./word.ts";

/** How far a number can be trusted. */
export const mark = oneOf(
  ["S", "G", "C", "M"],
  "how far it can be trusted: S a published source, G general trade knowledge, C computed, M the string maker's own figure",
);

function marked<Value extends z.ZodType>(value: Value) {
  return record({ is: value, mark, source: line("where it is from").optional() });
}

/** The tension that a string's maker gives, at which string length and pitch standard. */
export const makersTension = {
  at: quantity("length", "the string length that it holds for"),
  a4: quantity("frequency", "the frequency of A4 that it holds for; 440 Hz where it is left out").optional(),
};

const string = record({
  name: stringName("the name that orders and dimensions use"),
  pitch: stringName("its pitch, such as A4 or Bb1"),
  diameter: marked(quantity("length", "over the winding")),
  mass: marked(quantity("mass-per-length", "mass per length of the whole string")).optional(),
  tension: record({
    is: quantity("force", "its tension at pitch, in place of its mass"),
    ...makersTension,
    mark,
    source: line("where it is from").optional(),
  }).optional(),
  strength: marked(quantity("stress", "of a plain wire; left out where a winding hides the core")).optional(),
}).superRefine((string, context) => {
  if ((string.mass === undefined) !== (string.tension === undefined)) return;
  const message = "either mass, or the maker's tension at a string length";
  context.addIssue({ code: "custom", input: string, message, params: { code: "type", allowed: message } });
});

/** The file of strings: for each voice those that it can have, highest first. */
export const stringsFile = record({
  violin: z.array(string, { error: "a list of strings" }),
  viola: z.array(string, { error: "a list of strings" }),
  cello: z.array(string, { error: "a list of strings" }),
});

/** The strings of all voices as they are written. */
export type StringsFile = z.output<typeof stringsFile>;

/** A string that an order describes itself, in place of the voice's own of that name. */
export const ownString = record({
  name: stringName("its name"),
  pitch: stringName("its pitch, such as A4 or Bb1").optional(),
  diameter: quantity("length", "over the winding").optional(),
  mass: quantity("mass-per-length", "mass per length").optional(),
  tension: record({ is: quantity("force", "its maker's tension, in place of its mass"), ...makersTension })
    .optional()
    .meta({ description: "the tension that its maker gives, at which string length" }),
}).superRefine((string, context) => {
  if (string.mass === undefined || string.tension === undefined) return;
  const message = "either mass or tension";
  context.addIssue({ code: "custom", input: string, message, params: { code: "type", allowed: message } });
});
