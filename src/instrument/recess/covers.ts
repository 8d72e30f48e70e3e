import type { Solid } from "../../geometry/solid/solid.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreWidthOf } from "../core/width.ts";
import type { WingPlaceInput } from "../wing/place.ts";
import { type CoverInput, coverSolid } from "./cover.ts";
import type { MadeRecess } from "./recess.ts";

/** A cover of an instrument: the recess that it closes, what its solid follows from, and that. */
export type CoverMade = {
  readonly recess: MadeRecess;
  readonly input: CoverInput;
  readonly solid: () => Solid;
};

/** The covers of an instrument's recesses. */
export function coversOf(
  recesses: readonly MadeRecess[],
  thicknessOf: (part: MadeRecess["part"]) => number,
  core: CoreFrame,
  spec: Spec,
  store: Store,
): CoverMade[] {
  const of = (id: string) => dimensionOf(spec, id);
  return recesses.flatMap((recess): CoverMade[] => {
    const { cover, part, from } = recess;
    if (cover === null) return [];
    const side = part === "wing-bass" ? "bass" : part === "wing-treble" ? "treble" : null;
    const wing: WingPlaceInput | null = side === null ? null : wingPlaceInput(side, spec, core);
    const input: CoverInput = {
      ...{ core, wing, drop: part === "body" ? of("body.drop") : 0, from, part: thicknessOf(part) },
      ...{ cover, screw: of("cover.screw") },
    };
    return [{ recess, input, solid: () => store.answer(coverSolid, input).value }];
  });
}

function wingPlaceInput(side: "bass" | "treble", spec: Spec, core: CoreFrame): WingPlaceInput {
  const own = (name: string) => dimensionOf(spec, `wing.${side}.${name}`);
  return {
    ...{ side, start: own("start"), drop: own("drop") },
    angles: { splay: own("splay"), cant: own("cant"), rake: own("rake") },
    core: { ...core, ...coreWidthOf((id) => dimensionOf(spec, id)) },
  };
}
