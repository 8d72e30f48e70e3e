import { dimensionOf, type Spec } from "../order/spec.ts";
import { lazy } from "../step/lazy.ts";
import type { Store } from "../step/store.ts";
import { type Bodies, bodyGetters } from "./body/body.ts";
import { type Bow, bowGetters } from "./bow/bow.ts";
import { type BridgeOnCore, bridgeGetters } from "./bridge/bridge.ts";
import { type BridgeOutline, bridgeInput, bridgeOutline } from "./bridge/outline.ts";
import { type Clear, clearGetters } from "./clear/clear.ts";
import type { CoreFrame } from "./core/frame.ts";
import { type Board, boardGetters } from "./fingerboard/board.ts";
import { type Frets, fretGetters } from "./fingerboard/frets.ts";
import { type Inlays, inlayGetters } from "./fingerboard/inlays.ts";
import { type BoardOutline, boardOutline } from "./fingerboard/outline.ts";
import { type Head, headGetters } from "./head/head.ts";
import { type Joinery, joineryGetters } from "./neck/joinery.ts";
import { type Neck, neckGetters } from "./neck/neck.ts";
import { type RodsAndPins, rodAndPinGetters } from "./neck/rods-and-pins.ts";
import { type NutBlank, nutBlank } from "./nut/blank.ts";
import { type NutMade, nutGetters } from "./nut/nut.ts";
import { type Recesses, recessGetters } from "./recess/recesses.ts";
import { type Rests, restGetters } from "./rest/rests.ts";
import { passing } from "./strings/passing.ts";
import { type StringSide, stringSideGetters } from "./strings/string-side.ts";
import { type Wires, wireGetters } from "./strings/wires.ts";
import { type Tailpiece, tailpieceGetters } from "./tailpiece/tailpiece.ts";
import { type Wings, wingGetters } from "./wing/wings.ts";

/** One instrument, right-handed, every part of it worked out when asked for; mm and degrees. */
export type Instrument = Head &
  StringSide &
  Neck &
  Wings &
  Bodies &
  Board &
  Frets &
  Inlays &
  Tailpiece &
  BridgeOnCore &
  NutMade &
  Wires &
  Bow &
  Joinery &
  Clear &
  Rests &
  RodsAndPins &
  Recesses & {
    readonly core: CoreFrame;
    readonly board: BoardOutline;
    readonly nut: NutBlank;
    readonly bridge: BridgeOutline;
  };

/**
 * The instrument of a spec. Each getter is one step, answered by the store.
 *
 * A spec whose dimensions contradict each other gives numbers that are none; contradictions.ts finds those beforehand.
 */
export function instrument(spec: Spec, store: Store): Instrument {
  const of = (id: string) => dimensionOf(spec, id);
  const own: Instrument = lazy<Instrument>({
    ...stringSideGetters(spec, store, () => own),
    ...neckGetters(spec, store, () => own),
    core: () => ({ start: of("core.start"), drop: of("core.drop"), slope: of("core.slope") }),
    board: () => store.answer(boardOutline, { taper: own.taper, corner: of("fingerboard.corner") }).value,
    nut: () =>
      store.answer(nutBlank, {
        width: own.taper.nut,
        allowance: of("nut.allowance"),
        strings: passing(spec, own, "nut"),
      }).value,
    ...headGetters(
      spec,
      store,
      () => ({ rise: own.runs.angles, nut: passing(spec, own, "nut") }),
      () => own,
    ),
    ...boardGetters(spec, store, () => own),
    ...fretGetters(spec, store, () => own),
    ...inlayGetters(spec, store, () => own),
    ...wingGetters(spec, store, () => own),
    ...bodyGetters(spec, store, () => own),
    ...tailpieceGetters(spec, store, () => own),
    ...bridgeGetters(spec, store, () => own),
    ...nutGetters(spec, store, () => own),
    ...recessGetters(spec, store, () => own),
    ...wireGetters(spec, store),
    ...bowGetters(spec, store, () => own),
    ...clearGetters(spec, store, () => own),
    ...restGetters(spec, store, () => own),
    ...rodAndPinGetters(spec, store, () => own),
    bridge: () => store.answer(bridgeOutline, bridgeInput(store, spec.bridgeFace, own.crownFace)).value,
    ...joineryGetters(spec, store, () => own),
  });
  return own;
}
