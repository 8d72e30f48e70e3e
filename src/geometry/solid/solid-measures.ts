import type { Kernel } from "../kernel.ts";
import { closedForm } from "./closed-form.ts";
import { mesh } from "./mesh.ts";
import { meshMeasures, type SolidMeasures } from "./mesh-measures.ts";
import type { Solid, SolidFault } from "./solid.ts";

/** The measures of a solid and how they were found; or that nothing is left of it; or what is wrong with its recipe. */
export type SolidMeasured =
  | { readonly kind: "ok"; readonly by: "closed-form" | "mesh"; readonly measures: SolidMeasures }
  | { readonly kind: "empty" }
  | SolidFault;

/**
 * Volume, centre and extents of a solid: exact where the recipe allows, else of its mesh at a chord error (mm). A recipe
 * measured in closed form is not looked through for crossings.
 */
export function solidMeasures(kernel: Kernel, solid: Solid, chord?: number): SolidMeasured {
  const exact = closedForm(solid);
  if (exact.kind === "ok") return { kind: "ok", by: "closed-form", measures: exact.measures };
  const made = mesh(kernel, solid, chord);
  return made.kind === "ok" ? { kind: "ok", by: "mesh", measures: meshMeasures(made.mesh) } : made;
}
