import { z } from "zod";
import type { Paper } from "../shop.ts";
import { quantity } from "./quantity.ts";
import { record } from "./record.ts";
import { word } from "./word.ts";

const length = (about: string) =>
  quantity("length", about).refine((value) => value > 0 && value <= 20_000, {
    error: "more than 0 mm, up to 20 m",
  });

/** How far a printer may be off before it wants mending, not correcting: 2 in 100. */
const mostOff = 0.02;

const factor = quantity("number", "how long what should measure 1 came out").refine(
  (value) => Math.abs(value - 1) <= mostOff + 1e-9,
  { error: "0.98 to 1.02: a printer that is off by more than 2 in 100 wants mending, not correcting" },
);

/** A paper that the shop prints on: a sheet, or a roll, which has a width and no height. */
export const paper = record({
  id: word("the name that the shop calls it by"),
  width: length("across the paper"),
  height: length("along the paper; none for a roll").optional(),
  margin: length("that the printer can't reach"),
  scale: z.tuple([factor, factor], { error: "two numbers, across and along" }).optional().meta({
    description:
      "how long what should measure 1 came out, across and along; full-size sheets are corrected by it",
  }),
});

/** The least width and height inside the margins, mm, in which a full-size sheet has room for its square and its words. */
export const leastInside = { width: 180, height: 258 } as const;

/** What is wrong with a paper, and where in the list. */
type Fault = {
  readonly path: PropertyKey[];
  readonly input: unknown;
  readonly code: "range" | "unknown-name";
  readonly allowed: string;
  readonly hint: string;
};

/** Papers that nothing can be laid out on, since they are smaller than their margins or nearly so, and names given twice. */
export function paperFaults(papers: readonly Paper[]): Fault[] {
  return papers.flatMap(({ id, width, height, margin }, i): Fault[] => {
    const twice = papers.findIndex((other) => other.id === id) !== i;
    const [short, long] =
      height === undefined ? [width, Number.POSITIVE_INFINITY] : [width, height].sort((a, b) => a - b);
    const inside = { short: short! - 2 * margin, long: long! - 2 * margin };
    const faults: Fault[] = [];
    if (twice) {
      const allowed = "a name that no other paper of this shop has";
      faults.push({
        path: ["paper", i, "id"],
        input: id,
        code: "unknown-name",
        allowed,
        hint: "rename one of them",
      });
    }
    const needed = leastInside.width;
    if (inside.short < needed || inside.long < leastInside.height) {
      const smaller = inside.short <= 0 ? "smaller than its margins" : "too small inside its margins";
      faults.push({
        ...{ path: ["paper", i, "margin"], input: margin, code: "range" },
        allowed:
          height === undefined
            ? `margins that leave ${needed} mm of the roll's width; ${id} is ${smaller}`
            : `margins that leave ${leastInside.width} by ${leastInside.height} mm; ${id} is ${smaller}`,
        hint: "look at the margin and at the paper's size, or take a larger paper",
      });
    }
    return faults;
  });
}
