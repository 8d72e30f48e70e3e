import { outward } from "../instrument/at-odds/rests.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether the chin rest leaves strings and tailpiece the room that the design wants. */
export const restChinClear: Check = {
  id: "rest.chin.clear",
  applies: ({ rests }) => rests.chin !== null,
  of: ({ spec, instrument }) => {
    const of = (id: string) => dimensionOf(spec, id);
    const { strings, tailpiece, on } = instrument.chinRest!;
    const wanted = of("rest.chin.clear");
    const [found, beside] = strings < tailpiece ? [strings, "strings"] : [tailpiece, "tailpiece"];
    const refused = found < wanted - 1e-6;
    return {
      ...{ status: refused ? "refuse" : "pass", stake: "spoilage", subject: on, found, limit: wanted },
      unit: "mm",
      why: refused
        ? `the chin rest comes too near to the ${beside}: ${outward(of, wanted - found)}`
        : `the chin rest stays clear of strings and tailpiece, the nearest the ${beside}`,
      ...{ source: from(spec, "rest.chin.clear"), holds: [on] },
    };
  },
};

/** Whether the chin rest's clamp takes the edge that it grips. */
export const restChinGrip: Check = {
  id: "rest.chin.grip",
  applies: ({ rests }) => rests.chin?.hold === "clamp",
  of: ({ spec, instrument }) => {
    const of = (id: string) => dimensionOf(spec, id);
    const { on, edge } = instrument.chinRest!;
    const [least, most] = [of("rest.chin.grip.least"), of("rest.chin.grip.most")];
    const thin = edge < least - 1e-6;
    const refused = thin || edge > most + 1e-6;
    const id = `${on.replace("-", ".")}.thickness`;
    return {
      ...{ status: refused ? "refuse" : "pass", stake: "spoilage", subject: on, found: edge },
      ...{ limit: thin ? least : most, unit: "mm" },
      why: refused
        ? `the chin rest's clamp takes ${least} to ${most} mm: ${thin ? "raise" : "lower"} ${id}, or choose a rest with a ${thin ? "smaller" : "larger"} clamp`
        : "the chin rest's clamp takes the edge that it grips",
      ...{ source: from(spec, `rest.chin.grip.${thin ? "least" : "most"}`), holds: [on] },
    };
  },
};

function from({ design }: Spec, id: string): string {
  return `design ${design}, ${id} (general trade knowledge: default, confirm)`;
}
