import type { Solid } from "../../geometry/solid/solid.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { type Blank, blankHolding } from "../blank.ts";
import { boardWidth, type Taper } from "../fingerboard/taper.ts";
import { onHead } from "../head/frame.ts";
import type { Tuners } from "../head/tuners.ts";
import type { StringHeights } from "../strings/heights.ts";
import type { StringLayout } from "../strings/layout.ts";
import type { StringRuns } from "../strings/runs.ts";
import { type NutBlank, nutCrown } from "./blank.ts";
import { type NutSolidInput, nutSolid } from "./solid.ts";

/** What is worked out of the nut beside its outlines; mm and degrees. */
export type NutMade = {
  /** By which angle to z = 0 each string falls behind the nut, seen from the side, degrees. */
  readonly nutFalls: readonly number[];
  /** The blank that the nut is made of: along its length, its height and its thickness. */
  readonly nutStock: Blank;
  readonly nutSolidInput: NutSolidInput;
  readonly nutSolid: Solid;
};

/** What the nut rests on. */
type Rests = NutMade & {
  readonly nut: NutBlank;
  readonly taper: Taper;
  readonly tuners: Tuners;
  readonly runs: StringRuns;
  readonly layout: StringLayout;
  readonly heights: StringHeights;
};

/** How each answer about the nut is worked out; `own` is asked only then. */
export function nutGetters(spec: Spec, store: Store, own: () => Rests): Getters<NutMade> {
  const of = (id: string) => dimensionOf(spec, id);
  const thickness = () => of("nut.thickness");
  return {
    nutFalls: () => own().tuners.tuners.map(({ bend }, i) => bend + own().runs.angles[i]!),
    nutStock: () =>
      blankHolding({ length: own().taper.nut, width: own().nut.height, thickness: thickness() }),
    nutSolidInput: () => {
      const { taper, tuners, layout, heights } = own();
      const face = { nutThickness: thickness(), angle: of("head.angle") };
      const passing = spec.strings.map(({ diameter }, i) => {
        return { diameter, y: layout.nut[i]!, z: heights.nut[i]! };
      });
      return {
        ...{ crown: nutCrown(passing), thickness: thickness() },
        width: { board: taper.nut, head: boardWidth(taper, -thickness()) },
        strings: passing.map(({ diameter, y, z }, i) => {
          const { along, end } = tuners.tuners[i]!;
          const { z: falls } = onHead(face, along, of("tuner.height"));
          return { diameter, at: { x: 0, y, z }, to: { ...end, z: falls } };
        }),
      };
    },
    nutSolid: () => store.answer(nutSolid, own().nutSolidInput).value,
  };
}
