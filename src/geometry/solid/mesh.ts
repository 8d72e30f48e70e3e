import type { Kernel } from "../kernel.ts";
import { tolerance } from "../tolerance.ts";
import { build } from "./build.ts";
import { isChord } from "./facet.ts";
import { meshProblem } from "./mesh-problem.ts";
import type { Solid, SolidFault } from "./solid.ts";
import type { TriangleMesh } from "./triangle-mesh.ts";
import { weld } from "./weld.ts";

/** The mesh of a solid; or that nothing is left of it; or what is wrong with its recipe and where. */
export type MeshOutcome =
  | { readonly kind: "ok"; readonly mesh: TriangleMesh }
  | { readonly kind: "empty" }
  | SolidFault;

/**
 * The mesh of a solid: closed, each edge run once each way, of positive volume, straying from the solid by no more than
 * `chord` (mm) where that is curved. Vertices are
 * float32; two stand at one place only where the surface touches itself.
 *
 * Pieces thinner than `tolerance.contact` are left out: they are what rounding leaves where faces fall together. A loft
 * whose walls run through each other between its sections is not found out.
 */
export function mesh(kernel: Kernel, solid: Solid, chord: number = tolerance.chord): MeshOutcome {
  if (!isChord(chord)) return { kind: "invalid", problem: "chord", at: solid.kind };
  return kernel.work((bench): MeshOutcome => {
    const built = build(bench, solid, chord);
    if (built.kind !== "ok") return built;
    if (!bench.isSound(built.shape)) return { kind: "invalid", problem: "refused", at: solid.kind };
    const shape = bench.withoutSheets(built.shape, tolerance.contact);
    if (bench.isEmpty(shape)) return { kind: "empty" };
    const welded = weld(bench.mesh(shape));
    const problem = meshProblem(welded);
    return problem ? { kind: "invalid", problem, at: solid.kind } : { kind: "ok", mesh: welded };
  });
}
