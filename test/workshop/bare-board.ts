import type { Kernel } from "../../src/geometry/kernel.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import { boardSolid } from "../../src/instrument/fingerboard/board-solid.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import type { Model } from "../../src/workshop/model.ts";
import { meshed } from "../meshed.ts";

/** Finer than a pack's, so that what is measured is the recipe. */
export const fine = 0.001;

/** Every number of a model's report by its name. */
export function numbers(model: Model): Record<string, number> {
  return Object.fromEntries(dimensionsOf(model.spec).map(({ id, of }) => [id, of(model)]));
}

/** The board before anything is cut out of it. */
export function bareBoard(
  kernel: Kernel,
  { instrument }: Model,
  changed: Partial<Model["instrument"]["surface"]> = {},
): TriangleMesh {
  const { board, outline } = instrument.boardSolidInput;
  const solid = boardSolid.work({ board: { ...board, ...changed }, outline, cutters: [] });
  return meshed(kernel, solid, fine);
}
