import { z } from "zod";
import { catalogue } from "../catalogue.ts";
import { recessParts } from "../recess-part.ts";
import { form } from "./dimension.ts";
import { face } from "./face.ts";
import { measure } from "./measure.ts";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { oneOf, word } from "./word.ts";

const dimensions = record(
  Object.fromEntries(
    catalogue.filter(({ feature }) => feature === "recesses").map((entry) => [entry.id, form(entry)]),
  ),
);

const held = z.union(
  [
    word("an item of hardware.yaml, whose sizes it takes"),
    record({ face, depth: measure.meta({ description: "how deep it is, without its cover's ledge" }) }),
  ],
  { error: "an item of hardware.yaml, or { face: …, depth: … }" },
);

const recess = record({
  id: word("the recess's name"),
  in: oneOf(recessParts, "the part that it is sunk into"),
  from: oneOf(["front", "back"], "the face that it is sunk from"),
  at: z.tuple([measure, measure], { error: "two measures: [along, across]" }).meta({
    description:
      "its middle. In a wing along it and out from the joint line's head end; in a body along from its head end and across to the treble side; in the neck along the core's front from its start and across to the treble side",
  }),
  holds: held,
  turn: quantity(
    "angle",
    "how its length is turned from the part's own axis, outward or to the treble side",
  ).optional(),
  out: quantity(
    "angle",
    "which way what goes through a wall leads out of it, from the part's own axis, outward or to the treble side",
  ).optional(),
  cover: oneOf(["yes", "no"], "whether a cover closes it"),
});

const bore = record({
  id: word("the bore's name"),
  from: word("the recess that it leads from, or bridge"),
  to: word("the recess that it leads to"),
  size: measure.meta({ description: "its diameter" }),
  height: measure.meta({
    description:
      "its middle over the floor of the recess that it leads to; from part to part over the floor of the one that it leads from too",
  }),
  begins: measure
    .optional()
    .meta({ description: "its middle over the floor that it leads from, where that is another height" }),
});

/** What is sunk into neck, wings or body for the electronics, its covers, and the wires' bores between. */
export const recesses = record({
  dimensions,
  list: z.array(recess, { error: "a list of recesses" }),
  bores: z.array(bore, { error: "a list of bores" }),
});
