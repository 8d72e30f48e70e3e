import { z } from "zod";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { oneOf, word } from "./word.ts";

const length = quantity("length");

/** What is bought and screwed on, each piece weighed as if all of it were at one place. */
export const hardware = z
  .array(
    record({
      id: word("what it is"),
      item: word("an item of hardware.yaml, which says its mass").optional(),
      mass: quantity("mass", "of one that hardware.yaml doesn't know")
        .refine((value) => value > 0 && value <= 5000, { error: "more than 0 g, up to 5 kg" })
        .optional(),
      at: z
        .union(
          [
            oneOf(
              ["tuners", "exits", "bridge"],
              "one at each tuner on the head, or at each string's exit, or one under the bridge",
            ),
            z.tuple([length, length, length], { error: "[x, y, z] from the nut's edge" }),
          ],
          { error: "tuners, exits, bridge or [x, y, z]" },
        )
        .meta({
          description:
            "tuners (one at each on the head), exits (one at each string's exit from the tailpiece), bridge (where it stands), or a place from the nut, to the treble side and out of z = 0",
        }),
    }).superRefine(({ item, mass }, context) => {
      if ((item === undefined) !== (mass === undefined)) return;
      const message = "either an item of hardware.yaml or a mass";
      context.addIssue({ code: "custom", input: item, message, params: { code: "type", allowed: message } });
    }),
    { error: "a list of what is screwed on" },
  )
  .meta({ description: "what the instrument carries that is no part of it, for its mass and balance" });
