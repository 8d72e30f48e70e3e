import { z } from "zod";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { oneOf, word } from "./word.ts";

const at = z.tuple([quantity("length"), quantity("length")], { error: "two lengths: [along, away]" }).meta({
  description:
    "along the line that the base begins at, from its head end, and away from that line onto the base",
});

/** What an order names for its fixtures in place of the program's own choice, by the fixture's file. */
export const namedFixtures = z
  .record(
    z.string(),
    record({
      machine: word("a machine of the shop").optional(),
      cutter: word("a cutter of the shop that fits it").optional(),
      guide: word("a guide of the shop that rides with it").optional(),
      clamps: z
        .array(record({ clamp: word("a clamp of the shop"), at }), { error: "a list of { clamp, at }" })
        .optional()
        .meta({
          description: "clamps at a person's own places: the middle of the footprint's side toward the work",
        }),
      handholds: z
        .array(at, { error: "a list of places" })
        .optional()
        .meta({ description: "the middles of handholds at a person's own places" }),
      template: oneOf(
        ["over", "under"],
        "of a shaper's fixture: on top of the work, with the collar over the cutter, or under it",
      ).optional(),
    }),
    { error: "a map of fixtures and what each is made with" },
  )
  .meta({
    description:
      "machine, cutter and guide of a fixture, its clamps and handholds, in place of those that the program chooses",
  });
