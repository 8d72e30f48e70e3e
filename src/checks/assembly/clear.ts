import type { FitMeasured } from "../../workshop/assembly/assembled.ts";
import { heldBy, namesOf, type SolidCheck, worst } from "./solid-check.ts";

/** What is missing between two parts that should be clear, mm: over 0 where there is too little. */
function missing({ fit, gap, interference }: FitMeasured): number {
  if (fit.kind !== "clear") throw new RangeError("not a gap");
  return interference > 0 ? fit.least + 1 : fit.least - gap;
}

function clear(id: string, who: string, of: (fit: FitMeasured) => boolean): SolidCheck {
  return {
    id,
    of: (fits) => {
      const fit = worst(
        fits.filter((one) => one.fit.kind === "clear" && of(one)),
        missing,
      );
      if (fit === undefined || fit.fit.kind !== "clear") throw new RangeError("nothing that is clear");
      const { gap: found, interference } = fit;
      const { least: limit } = fit.fit;
      const refused = limit > 0 ? found < limit - 1e-4 : found <= 0;
      const shared = interference > 0 ? `, with ${interference.toPrecision(3)} mm3 in both` : "";
      return {
        ...{ status: refused ? "refuse" : "pass", stake: "spoilage", subject: "assembly", found, limit },
        unit: "mm",
        why: refused
          ? `${namesOf(fit)} meet or come too near each other${shared}`
          : `${who}, least between ${namesOf(fit)}`,
        source:
          "measured on the solids as they are written, no further than half a millimetre past the limit",
        holds: refused ? heldBy(fit) : ["assembly"],
      };
    },
  };
}

const isString = ({ fit }: FitMeasured) => fit.first.startsWith("string.");

/** Whether parts that should be clear of each other are, with as much between them as the design wants. */
export const partsClear = clear(
  "assembly.clear",
  "parts that should be clear of each other are",
  (fit) => !isString(fit),
);

/** Whether every string is clear of everything but nut, bridge and tailpiece. */
export const stringsClear = clear(
  "assembly.strings",
  "the strings are clear of everything but nut, bridge and tailpiece",
  isString,
);
