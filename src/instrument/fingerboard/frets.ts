import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { StringHeights } from "../strings/heights.ts";
import type { StringLayout } from "../strings/layout.ts";
import { type FretEnds, fretEnds } from "./fret-ends.ts";
import { type FretGaps, fretGaps } from "./fret-gaps.ts";
import { type FretSlots, fretSlots } from "./fret-slots.ts";
import type { BoardSurface } from "./surface.ts";

/** What is worked out of the frets, mm; null, each of them, on a fretless board. */
export type Frets = {
  readonly fretSlots: FretSlots | null;
  readonly fretEnds: FretEnds | null;
  readonly fretGaps: readonly FretGaps[] | null;
};

/** What the frets rest on. */
type Board = {
  readonly surface: BoardSurface;
  readonly layout: StringLayout;
  readonly heights: StringHeights;
} & Frets;

/** How each answer of the frets is worked out; the board and the strings are asked only then. */
export function fretGetters(spec: Spec, store: Store, made: () => Board): Getters<Frets> {
  const of = (id: string) => dimensionOf(spec, id);
  const places = () => made().fretSlots!.slots.map(({ x }) => x);
  const { frets, strings } = spec;
  return {
    fretSlots: () =>
      frets &&
      store.answer(fretSlots, {
        ...{ count: frets.count, slots: frets.slots, stringLength: of("string.length") },
        ...{ board: made().surface, fit: of("fret.slot.fit"), under: of("fret.slot.under") },
        tang: { width: of("fret.tang.width"), depth: of("fret.tang.depth") },
        edge: of("fret.slot.edge"),
      }).value,
    fretEnds: () =>
      frets &&
      store.answer(fretEnds, {
        ...{ places: places(), taper: made().surface.taper, inset: of("fret.inset") },
        ...{ crown: of("fret.crown.height"), bevel: of("fret.bevel") },
        ...{ dressing: of("fret.dressing"), thin: of("fret.dressing.under") },
        outer: { treble: strings[0]!.diameter, bass: strings.at(-1)!.diameter },
      }).value,
    fretGaps: () => {
      const { layout, heights, surface } = made();
      const at = (where: "nut" | "bridge", i: number) => {
        return { y: layout[where][i]!, z: heights[where][i]! };
      };
      return (
        frets &&
        store.answer(fretGaps, {
          ...{ places: places(), crown: of("fret.crown.height"), board: surface },
          stringLength: of("string.length"),
          strings: strings.map(({ diameter }, i) => ({
            nut: at("nut", i),
            bridge: at("bridge", i),
            diameter,
          })),
        }).value
      );
    },
  };
}
