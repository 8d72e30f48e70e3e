import { z } from "zod";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { mark } from "./strings.ts";
import { line, word } from "./word.ts";

/** The file of woods, and of what else a part may be made of. */
export const woodsFile = record({
  woods: z.array(
    record({
      wood: word("the name that designs and a shop's boards call it by"),
      density: quantity("density", "at 12 % moisture").refine((value) => value >= 100 && value <= 20_000, {
        error: "100 kg/m3 to 20000 kg/m3",
      }),
      stiffness: quantity("stress", "modulus of elasticity along the grain"),
      strength: quantity("stress", "modulus of rupture; of a rod in tension"),
      mark,
      source: line("where it is from").optional(),
    }),
    { error: "a list of woods" },
  ),
}).superRefine(({ woods }, context) => {
  const names = woods.map(({ wood }) => wood);
  for (const [i, wood] of names.entries()) {
    if (names.indexOf(wood) === i) continue;
    const allowed = "each wood once";
    const fault = { code: "custom", input: wood, message: allowed } as const;
    context.addIssue({ ...fault, path: ["woods", i, "wood"], params: { code: "contradiction", allowed } });
  }
});

/** The woods as they are written. */
export type WoodsFile = z.output<typeof woodsFile>;
