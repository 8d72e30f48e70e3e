import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { inMm, type Need, type WorkStep } from "./work-step.ts";

/** From the raw instrument to one that plays: finish, what is screwed on, strings, the last measures. */
export function finishingSteps(model: Model): WorkStep[] {
  const { spec } = model;
  const of = (id: string) => dimensionOf(spec, id);
  const chin: Need[] =
    spec.rests.chin === null ? [] : [{ from: "rest.chin", what: "the chin rest's holes, bored" }];
  const covers: Need[] = spec.recesses.some(({ cover }) => cover)
    ? [{ from: "covers.make", what: "covers, fitted" }]
    : [];
  const raw = spec.frets === null ? "neck.carve" : "frets.set";
  const own = {
    ...({ part: "instrument", at: "bench", square: "nothing needs to be" } as const),
    ...{ thickness: null, setUp: null, files: [] as readonly string[] },
  };
  const clearances = ["nut", "end"].map((where) => {
    const [high, low] = ["high", "low"].map((end) => inMm(of(`string.clearance.${where}.${end}`)));
    return `${where} ${high} to ${low}`;
  });
  return [
    {
      ...{ ...own, id: "finish.coat", datum: "none" },
      what: "Sand, mask gluing surfaces and the board, finish, let it cure; extract, no flame: read the finish's own sheet",
      measure: "each recess and joint still fits, finish included",
      needs: [{ from: raw, what: "the instrument, raw" }, ...chin, ...covers],
    },
    {
      ...{ ...own, id: "hardware.fit", datum: "none" },
      what: "Fit tuners, tailpiece, electronics, covers, rests; glue the nut on lightly",
      ...{ measure: "every control, by ear", files: ["bridge-place"] },
      needs: [
        { from: "finish.coat", what: "the instrument, finished" },
        { from: "bought", what: "tuners, electronics, screws" },
        { from: "nut.make", what: "the nut" },
        { from: "tailpiece.make", what: "the tailpiece" },
      ],
    },
    {
      ...{ ...own, id: "strings.on", datum: "board's face" },
      what: `String it; cut slots and notches to their depth; bridge at ${inMm(of("string.length"))} from the nut's edge, leaning ${inMm(of("bridge.tilt"))} degrees to the tail`,
      measure: `clearance, high to low string: ${clearances.join("; ")}`,
      files: ["notches-nut", "notches-bridge", "bridge-place"],
      needs: [
        { from: "hardware.fit", what: "the instrument, fitted out" },
        { from: "bridge.make", what: "the bridge" },
        { from: "bought", what: "strings" },
      ],
    },
    {
      ...{ ...own, id: "last.measure", datum: "none" },
      what: "Weigh it; find where it balances; read the dimension report against it; sign it off",
      ...{ measure: "mass; balance from the nut; each number that is off", files: [] },
      needs: [{ from: "strings.on", what: "the instrument, playing" }],
    },
  ];
}
