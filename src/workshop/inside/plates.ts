import type { Path } from "../../geometry/path.ts";
import { pathsApart } from "../../geometry/path-measures/paths-apart.ts";
import { step } from "../../step/step.ts";

/** How much of a template is left between two openings at least, mm: thinner webs give way under the guide (G: default, confirm). */
export const leastWeb = 8;

/**
 * Which plate each opening of a face goes on, counted from 0: the first one on which it keeps a web to all that are there already, in their order, so
 * that a cover's ledge and the recess in its floor are on two plates.
 */
export const platesFor = step("inside.plates", 1, (edges: readonly Path[]): readonly number[] => {
  const taken: number[] = [];
  for (const [i, edge] of edges.entries()) {
    const clashes = edges
      .slice(0, i)
      .flatMap((other, k) => (pathsApart(other, edge, leastWeb) < leastWeb - 1e-6 ? [taken[k]!] : []));
    let plate = 0;
    while (clashes.includes(plate)) plate++;
    taken.push(plate);
  }
  return taken;
});
