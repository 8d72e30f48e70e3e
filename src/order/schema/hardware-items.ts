import { z } from "zod";
import { hardwareKinds } from "../hardware-item.ts";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { mark } from "./strings.ts";
import { line, oneOf, word } from "./word.ts";

const size = (about: string) =>
  quantity("length", about).refine((value) => value > 0 && value <= 500, {
    error: "more than 0 mm, up to 500 mm",
  });

const through = (about: string) =>
  record({
    hole: size("the hole that it goes through, its diameter"),
    reach: size("the most wood that it reaches through"),
  })
    .optional()
    .meta({ description: about });

const item = record({
  item: word("the name that designs call it by"),
  kind: oneOf(hardwareKinds, "what it does"),
  length: size("its body's length, in the plane of the face that it goes in by").optional(),
  width: size("its body's width in that plane").optional(),
  diameter: size("a round body's diameter, in place of length and width").optional(),
  depth: size("its body's depth, square to that face"),
  mass: quantity("mass", "of one").refine((value) => value > 0 && value <= 5000, {
    error: "more than 0 g, up to 5 kg",
  }),
  shaft: through("what of it goes square through the face opposite, as a control's shaft"),
  thread: through("what of it goes through a wall in the plane of the part, as a jack's thread"),
  mark,
  source: line("where it is from").optional(),
}).superRefine(({ length, width, diameter, shaft, thread, item: name }, context) => {
  const fault = (message: string) =>
    context.addIssue({ code: "custom", input: name, message, params: { code: "type", allowed: message } });
  const box = length !== undefined && width !== undefined;
  if (box === (diameter !== undefined) || (length === undefined) !== (width === undefined))
    fault("either length and width, or a diameter");
  if (shaft !== undefined && thread !== undefined) fault("either a shaft or a thread");
});

/** The file of hardware: what is bought and let in or screwed on. */
export const hardwareFile = record({
  hardware: z.array(item, { error: "a list of items" }),
}).superRefine(({ hardware }, context) => {
  const names = hardware.map(({ item: name }) => name);
  for (const [i, name] of names.entries()) {
    if (names.indexOf(name) === i) continue;
    const allowed = "each item once";
    const fault = { code: "custom", input: name, message: allowed } as const;
    context.addIssue({ ...fault, path: ["hardware", i, "item"], params: { code: "contradiction", allowed } });
  }
});

/** Hardware as it is written. */
export type HardwareFile = z.output<typeof hardwareFile>;
