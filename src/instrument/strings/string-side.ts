import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { bridgeCrown, type Crown } from "../bridge/crown.ts";
import { type CrownFace, crownFace } from "../bridge/face.ts";
import type { CoreFrame } from "../core/frame.ts";
import type { BoardSurface } from "../fingerboard/surface.ts";
import { boardTaper, type Taper } from "../fingerboard/taper.ts";
import { type TailpieceExits, tailpieceExits } from "../tailpiece/exits.ts";
import { type StringHeights, stringHeights } from "./heights.ts";
import { type StringLayout, stringLayout } from "./layout.ts";
import { passing } from "./passing.ts";
import { type StringRuns, stringRuns } from "./runs.ts";

/** Where the strings run, and what follows from that alone: the board's taper and surface, the bridge's crown, the exits from the tailpiece. */
export type StringSide = {
  readonly layout: StringLayout;
  readonly taper: Taper;
  readonly surface: BoardSurface;
  readonly heights: StringHeights;
  readonly runs: StringRuns;
  readonly crown: Crown;
  readonly crownFace: CrownFace;
  readonly exits: TailpieceExits;
};

function surfaceOf(spec: Spec, { taper, layout }: Pick<StringSide, "taper" | "layout">): BoardSurface {
  const of = (id: string) => dimensionOf(spec, id);
  const share = taper.length / of("string.length");
  const end = layout.nutSpread + (layout.bridgeSpread - layout.nutSpread) * share;
  return {
    ...{ kind: spec.surface, taper, radius: of("fingerboard.radius"), edge: of("fingerboard.edge") },
    spread: { nut: layout.nutSpread, end },
    scoop: { high: of("fingerboard.scoop.high"), low: of("fingerboard.scoop.low") },
  };
}

/** How each answer about the strings' side is worked out; `own` is asked only then. */
export function stringSideGetters(
  spec: Spec,
  store: Store,
  own: () => StringSide & { readonly core: CoreFrame },
): Getters<StringSide> {
  const of = (id: string) => dimensionOf(spec, id);
  const diameters = spec.strings.map(({ diameter }) => diameter);
  const stringLength = of("string.length");
  return {
    layout: () =>
      store.answer(stringLayout, { nutGap: of("nut.gap"), bridgeSpread: of("bridge.spread"), diameters })
        .value,
    taper: () =>
      store.answer(boardTaper, {
        ...{ stringLength, boardLength: of("fingerboard.length") },
        ...{ nutSpread: own().layout.nutSpread, bridgeSpread: own().layout.bridgeSpread },
        ...{ nutMargin: of("nut.margin"), endMargin: of("fingerboard.margin.end") },
      }).value,
    surface: () => surfaceOf(spec, own()),
    heights: () =>
      store.answer(stringHeights, {
        ...{ stringLength, nut: own().layout.nut, bridge: own().layout.bridge },
        ...{ diameters, board: own().surface },
        frets: spec.frets === null ? 0 : of("fret.crown.height"),
        clearance: {
          nut: { high: of("string.clearance.nut.high"), low: of("string.clearance.nut.low") },
          end: { high: of("string.clearance.end.high"), low: of("string.clearance.end.low") },
        },
      }).value,
    runs: () => {
      const at = (where: "nut" | "bridge") => passing(spec, own(), where).map(({ y, z }) => ({ y, z }));
      return store.answer(stringRuns, { stringLength, nut: at("nut"), bridge: at("bridge") }).value;
    },
    crown: () => {
      const { core, layout, heights } = own();
      const given = { stringLength, across: layout.bridge, heights: heights.bridge, core };
      return store.answer(bridgeCrown, given).value;
    },
    crownFace: () => {
      const { centre, radius } = own().crown;
      return store.answer(crownFace, {
        ...{ stringLength, core: own().core, tilt: of("bridge.tilt"), margin: of("bridge.margin") },
        ...{ crown: { centre, radius }, strings: passing(spec, own(), "bridge") },
      }).value;
    },
    exits: () =>
      store.answer(tailpieceExits, {
        ...{ stringLength, heights: own().heights.bridge, core: own().core },
        ...{ diameters, tailpieceHeight: of("tailpiece.height"), afterlength: of("afterlength") },
        ...{ spread: of("tailpiece.spread"), slant: of("tailpiece.slant") },
      }).value,
  };
}
