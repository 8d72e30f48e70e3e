import { z } from "zod";
import { quantity, writtenQuantity } from "./quantity.ts";
import { record } from "./record.ts";
import { word } from "./word.ts";

/** A measure taken from another dimension: its value, or a part of it plus a length. */
export const reference = z.union([
  record({ dim: word("the dimension whose value is taken") }),
  record({
    part: quantity("number", "how much of it: 0.5 or 1/6"),
    of: word("the dimension that a part is taken of"),
    plus: quantity("length", "a length to add, negative to take away").optional(),
  }),
]);

/** A written reference to another dimension. */
export type Reference = z.output<typeof reference>;

/**
 * A measure along a side of a frame: a length with its unit, a plain number as a fraction of that side, or a reference to a
 * dimension. Nothing nests.
 */
export const measure = z.union(
  [writtenQuantity("12 mm, or 0.62 for a fraction of the frame's side"), ...reference.options],
  { error: "12 mm, 0.62, { dim: NAME } or { part: 0.5, of: NAME, plus: 3 mm }" },
);

/** A written measure. */
export type Measure = z.output<typeof measure>;
