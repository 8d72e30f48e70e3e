import { z } from "zod";
import { catalogue } from "../catalogue.ts";
import { form } from "./dimension.ts";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { oneOf, word } from "./word.ts";

/** The veneers that faces of parts get. */
export const veneers = record({
  dimensions: record(
    Object.fromEntries(
      catalogue.filter(({ feature }) => feature === "veneers").map((entry) => [entry.id, form(entry)]),
    ),
  ),
  list: z
    .array(
      record({
        id: word("the veneer's name"),
        on: oneOf(["body", "wing-bass", "wing-treble"], "the part that it is glued to"),
        face: oneOf(["front", "back"], "the face that it covers"),
        grain: quantity("angle", "its grain from the part's axis, outward or to the treble side"),
        pair: oneOf(["mirrored", "none"], "two leaves that mirror each other along a body's middle, or one"),
      }),
      { error: "a list of veneers" },
    )
    .min(1, { error: "at least one veneer" }),
});
