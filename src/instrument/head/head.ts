import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Wall } from "../wall.ts";
import { buttonGaps } from "./buttons.ts";
import { holeAt, holeWalls } from "./holes.ts";
import type { Standing } from "./parting.ts";
import { postGap, type StringPaths, stringPaths } from "./string-paths.ts";
import { headTuners, type Tuners, type TunersInput } from "./tuners.ts";

/** What is worked out of the head: its tuners, their holes and buttons, and the strings' paths to them; mm and degrees. */
export type Head = {
  readonly tunersInput: TunersInput;
  readonly tuners: Tuners;
  /** The diameters of a tuner's hole at the head's face and back. */
  readonly tunerHole: { readonly face: number; readonly back: number };
  readonly holeWalls: readonly Wall[];
  readonly buttonGaps: readonly Wall[];
  readonly stringPaths: StringPaths;
};

/** What the head rests on: the strings' rise to the bridge, degrees, and where they leave the nut, mm. */
type Strings = {
  readonly rise: readonly number[];
  readonly nut: readonly { readonly y: number; readonly z: number }[];
};

/** How each answer of the head is worked out; the strings, and the head's `own` answers, are asked only then. */
export function headGetters(
  spec: Spec,
  store: Store,
  strings: () => Strings,
  own: () => Head,
): Getters<Head> {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    tunersInput: () => ({
      ...{ kind: spec.tuners, count: spec.count, angle: of("head.angle"), margin: of("head.margin") },
      ...{ row: of("head.row"), column: of("head.column"), edge: of("head.edge"), post: of("tuner.post") },
      ...{ height: of("tuner.height"), nutThickness: of("nut.thickness"), rise: strings().rise },
      nut: strings().nut.map(({ y, z }) => ({ y, z })),
    }),
    tuners: () => store.answer(headTuners, own().tunersInput).value,
    tunerHole: () => holeAt(spec.tuners, of("tuner.hole"), of("head.thickness")),
    holeWalls: () =>
      store.answer(holeWalls, {
        ...{
          tuners: standing(own().tuners),
          hole: own().tunerHole.face,
          widest: own().tunerHole.back,
        },
        ...{ margin: of("head.margin"), row: of("head.row"), edge: of("head.edge") },
        ...{ corner: of("head.corner"), wall: of("head.wall") },
      }).value,
    buttonGaps: () =>
      store.answer(buttonGaps, {
        ...{ tuners: standing(own().tuners), row: of("head.row") },
        ...{ button: of("tuner.button"), clear: of("tuner.button.clear") },
      }).value,
    stringPaths: () =>
      store.answer(stringPaths, {
        ...{ asked: own().tunersInput, gap: postGap },
        obstacle: of(spec.tuners === "tail" ? "tuner.hole" : "tuner.post"),
      }).value,
  };
}

/** The tuners without their strings' turns, which no wood between them follows from. */
function standing({ kind, length, half, tuners }: Tuners): Standing {
  return { kind, length, half, tuners: tuners.map(({ row, along, y }) => ({ row, along, y })) };
}
