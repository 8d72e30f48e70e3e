import { closedForm } from "../../geometry/solid/closed-form.ts";
import { type TailpieceSolidInput, tailpieceSolid } from "../../instrument/tailpiece/solid.ts";
import { step } from "../../step/step.ts";
import type { Measured } from "./moments.ts";

/** A tailpiece's volume and middle: its plate with its holes is one straight extrusion, so in closed form. */
export const tailpieceMeasured = step("mass.tailpiece", 1, (given: TailpieceSolidInput): Measured => {
  const exact = closedForm(tailpieceSolid.work(given));
  if (exact.kind === "none") throw new RangeError("a tailpiece that is no plate");
  return { volume: exact.measures.volume, centre: exact.measures.centre };
});
