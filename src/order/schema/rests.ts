import { z } from "zod";
import { catalogue } from "../catalogue.ts";
import { restParts } from "../rest-part.ts";
import type { RestFeature } from "../settable.ts";
import { form } from "./dimension.ts";
import { face, places } from "./face.ts";
import { measure } from "./measure.ts";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { oneOf, word } from "./word.ts";

function own(feature: RestFeature) {
  const entries = catalogue.filter((entry) => entry.feature === feature);
  return record(Object.fromEntries(entries.map((entry) => [entry.id, form(entry)])));
}

const chin = record({
  on: oneOf(restParts, "the part whose front carries it"),
  hold: z.union(
    [
      record({ clamp: record({ dimensions: own("chin-clamp") }) }),
      record({ screws: record({ dimensions: own("chin-screws"), holes: places }) }),
    ],
    { error: "{ clamp: … } that grips the part's edge, or { screws: … } that go into its front" },
  ),
  face: face.meta({ description: "its footprint's outline, seen from the front" }),
  dimensions: own("chin-rest"),
});

function mounts(feature: RestFeature) {
  return record({
    list: z
      .array(
        record({
          id: word("the mount's name"),
          in: oneOf(restParts, "the part whose back it is sunk into"),
          at: z.tuple([measure, measure], { error: "two measures: [along, out]" }).meta({
            description:
              "its middle. In a wing along it and out from the joint line's head end; in a body along from its head end and across to the treble side; in the neck along the core's front from its start and across to the treble side",
          }),
          turn: quantity("angle", "which way its slot runs, from the part's axis").optional(),
        }),
        { error: "a list of mounts" },
      )
      .min(1, { error: "at least one mount" }),
    dimensions: own(feature),
  });
}

/** What holds the instrument up: rests for chin, shoulder or knees, and an endpin. */
export const rests = record({
  chin: chin.optional(),
  shoulder: mounts("shoulder-mounts").optional(),
  knee: mounts("knee-mounts").optional(),
  endpin: record({ dimensions: own("endpin") }).optional(),
});
