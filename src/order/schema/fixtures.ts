import { z } from "zod";
import { record } from "./record.ts";
import { word } from "./word.ts";

/** What an order names for its fixtures in place of the program's own choice, by the fixture's file. */
export const namedFixtures = z
  .record(
    z.string(),
    record({
      machine: word("a machine of the shop").optional(),
      cutter: word("a cutter of the shop that fits it").optional(),
      guide: word("a guide of the shop that rides with it").optional(),
    }),
    { error: "a map of fixtures and what each is made with" },
  )
  .meta({
    description: "machine, cutter and guide of a fixture, in place of those that the program chooses",
  });
