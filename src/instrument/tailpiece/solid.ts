import type { Path } from "../../geometry/path.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreAxes } from "../core/from-core.ts";

/** A tailpiece's outline and holes as they lie over the core, the height of its top over the core's front, its thickness; mm. */
export type TailpieceSolidInput = {
  readonly core: CoreFrame;
  readonly path: Path;
  readonly holes: readonly Path[];
  readonly height: number;
  readonly thickness: number;
};

/** The tailpiece's plate where it stands over the core, with its holes. The strings' grooves, which are filed, are not in it. */
export const tailpieceSolid = step("tailpiece.solid", 1, (given: TailpieceSolidInput): Solid => {
  const { core, path, holes, height, thickness } = given;
  const outlines = [{ outer: path, holes }];
  return {
    kind: "place",
    solid: { kind: "extrude", outlines, base: height - thickness, height: thickness },
    frame: coreAxes(core),
  };
});
