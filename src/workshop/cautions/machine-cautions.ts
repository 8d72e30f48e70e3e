import type { GuidedMachine } from "../guided/set-up.ts";
import type { Caution } from "./caution.ts";
import { routerCautions } from "./router.ts";
import { shaperCautions } from "./shaper.ts";

/** The cautions for whatever is cut along an outside guided edge at a machine, its template over or under the work; the gravest first. */
export function machineCautions(machine: GuidedMachine, template: "over" | "under"): readonly Caution[] {
  return machine.kind === "shaper" ? shaperCautions(template) : routerCautions(machine.moves);
}
