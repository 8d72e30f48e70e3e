import { extentsOf } from "../geometry/measure.ts";
import type { Solid } from "../geometry/solid/solid.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import { lazy } from "../step/lazy.ts";
import type { Store } from "../step/store.ts";
import type { Blank } from "./blank.ts";
import { type Bodies, bodyGetters } from "./body/body.ts";
import { type Bow, bowGetters } from "./bow/bow.ts";
import { type BridgeOnCore, bridgeGetters } from "./bridge/bridge.ts";
import { bridgeCrown, type Crown } from "./bridge/crown.ts";
import { type CrownFace, crownFace } from "./bridge/face.ts";
import { type BridgeOutline, bridgeInput, bridgeOutline } from "./bridge/outline.ts";
import { type Clear, clearGetters } from "./clear/clear.ts";
import type { CoreFrame } from "./core/frame.ts";
import { type Board, boardGetters } from "./fingerboard/board.ts";
import { type Frets, fretGetters } from "./fingerboard/frets.ts";
import { type Inlays, inlayGetters } from "./fingerboard/inlays.ts";
import { type BoardOutline, boardOutline } from "./fingerboard/outline.ts";
import { type BoardSurface, boardTop } from "./fingerboard/surface.ts";
import { boardTaper, type Taper } from "./fingerboard/taper.ts";
import { type Head, headGetters } from "./head/head.ts";
import { neckBlank } from "./neck/blank.ts";
import { type Joinery, joineryGetters } from "./neck/joinery.ts";
import { type NeckPlan, neckPlan, type PlanInput } from "./neck/plan.ts";
import type { ProfileInput } from "./neck/profile.ts";
import { neckStations, profileInput } from "./neck/profile-input.ts";
import { type RodsAndPins, rodAndPinGetters } from "./neck/rods-and-pins.ts";
import { type NeckSection, neckSections } from "./neck/sections.ts";
import { type NeckSide, neckSide, type WoodAt } from "./neck/side.ts";
import { type NeckSolidInput, neckSolid } from "./neck/solid.ts";
import { solidInput } from "./neck/solid-input.ts";
import { type NutBlank, nutBlank } from "./nut/blank.ts";
import { type NutMade, nutGetters } from "./nut/nut.ts";
import { type Recesses, recessGetters } from "./recess/recesses.ts";
import { type Rests, restGetters } from "./rest/rests.ts";
import { type StringHeights, stringHeights } from "./strings/heights.ts";
import { type StringLayout, stringLayout } from "./strings/layout.ts";
import { type StringRuns, stringRuns } from "./strings/runs.ts";
import { type Wires, wireGetters } from "./strings/wires.ts";
import { sunkenOf } from "./sunken.ts";
import { type TailpieceExits, tailpieceExits } from "./tailpiece/exits.ts";
import { type Tailpiece, tailpieceGetters } from "./tailpiece/tailpiece.ts";
import { type Wings, wingGetters } from "./wing/wings.ts";

/** One instrument, right-handed, every part of it worked out when asked for; mm and degrees. */
export type Instrument = Head &
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
    readonly layout: StringLayout;
    readonly taper: Taper;
    readonly surface: BoardSurface;
    readonly heights: StringHeights;
    readonly runs: StringRuns;
    readonly crown: Crown;
    readonly crownFace: CrownFace;
    readonly exits: TailpieceExits;
    readonly board: BoardOutline;
    readonly nut: NutBlank;
    readonly bridge: BridgeOutline;
    readonly neckPlan: NeckPlan;
    readonly neckSide: NeckSide;
    readonly neckBlank: Blank;
    readonly neckProfile: ProfileInput;
    readonly neckSections: readonly NeckSection[];
    readonly neckSolidInput: NeckSolidInput;
    readonly neckSolid: Solid;
    /** The wood of the neck at its two named stations. */
    readonly neckWood: { readonly nut: WoodAt; readonly heel: WoodAt };
  };

/** The thickness at one of the neck's named stations, with the board, and what of it is wood of the neck; mm. */
function woodAt(spec: Spec, surface: BoardSurface, where: "nut" | "heel"): WoodAt {
  const x = dimensionOf(spec, `neck.station.${where}`);
  return { x, wood: dimensionOf(spec, `neck.thickness.${where}`) - boardTop(surface, x, 0) };
}

function planInput(spec: Spec, { taper, tuners }: Pick<Instrument, "taper" | "tuners">): PlanInput {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    ...{ taper, nutThickness: of("nut.thickness") },
    head: {
      ...{ length: tuners.length, angle: of("head.angle"), shoulder: of("head.shoulder") },
      half: tuners.half,
    },
    transition: { start: of("neck.transition.start"), end: of("neck.transition.end") },
    core: {
      ...{ width: of("core.width"), at: of("string.length"), taper: of("core.taper"), end: of("core.end") },
    },
    corners: { head: of("head.corner"), tail: of("neck.corner") },
  };
}

/**
 * The instrument of a spec. Each getter is one step, answered by the store.
 *
 * A spec whose dimensions contradict each other gives numbers that are none; contradictions.ts finds those beforehand.
 */
export function instrument(spec: Spec, store: Store): Instrument {
  const of = (id: string) => dimensionOf(spec, id);
  const diameters = spec.strings.map(({ diameter }) => diameter);
  const stringLength = of("string.length");
  const passing = (where: "nut" | "bridge") =>
    diameters.map((diameter, i) => ({ y: own.layout[where][i]!, z: own.heights[where][i]!, diameter }));
  const own: Instrument = lazy<Instrument>({
    core: () => ({ start: of("core.start"), drop: of("core.drop"), slope: of("core.slope") }),
    layout: () =>
      store.answer(stringLayout, { nutGap: of("nut.gap"), bridgeSpread: of("bridge.spread"), diameters })
        .value,
    taper: () =>
      store.answer(boardTaper, {
        ...{ stringLength, boardLength: of("fingerboard.length") },
        ...{ nutSpread: own.layout.nutSpread, bridgeSpread: own.layout.bridgeSpread },
        ...{ nutMargin: of("nut.margin"), endMargin: of("fingerboard.margin.end") },
      }).value,
    surface: () => {
      const { taper, layout } = own;
      const share = taper.length / stringLength;
      const end = layout.nutSpread + (layout.bridgeSpread - layout.nutSpread) * share;
      return {
        ...{ kind: spec.surface, taper, radius: of("fingerboard.radius"), edge: of("fingerboard.edge") },
        spread: { nut: layout.nutSpread, end },
        scoop: { high: of("fingerboard.scoop.high"), low: of("fingerboard.scoop.low") },
      };
    },
    heights: () =>
      store.answer(stringHeights, {
        ...{ stringLength, nut: own.layout.nut, bridge: own.layout.bridge, diameters, board: own.surface },
        frets: spec.frets === null ? 0 : of("fret.crown.height"),
        clearance: {
          nut: { high: of("string.clearance.nut.high"), low: of("string.clearance.nut.low") },
          end: { high: of("string.clearance.end.high"), low: of("string.clearance.end.low") },
        },
      }).value,
    runs: () => {
      const place = ({ y, z }: { y: number; z: number }) => ({ y, z });
      const [nut, bridge] = [passing("nut").map(place), passing("bridge").map(place)];
      return store.answer(stringRuns, { stringLength, nut, bridge }).value;
    },
    crown: () => {
      const { bridge: across } = own.layout;
      return store.answer(bridgeCrown, { stringLength, across, heights: own.heights.bridge, core: own.core })
        .value;
    },
    crownFace: () => {
      const { centre, radius } = own.crown;
      return store.answer(crownFace, {
        ...{ stringLength, core: own.core, tilt: of("bridge.tilt"), margin: of("bridge.margin") },
        ...{ crown: { centre, radius }, strings: passing("bridge") },
      }).value;
    },
    exits: () =>
      store.answer(tailpieceExits, {
        ...{ stringLength, heights: own.heights.bridge, core: own.core },
        ...{ diameters, tailpieceHeight: of("tailpiece.height"), afterlength: of("afterlength") },
        ...{ spread: of("tailpiece.spread"), slant: of("tailpiece.slant") },
      }).value,
    board: () => store.answer(boardOutline, { taper: own.taper, corner: of("fingerboard.corner") }).value,
    nut: () =>
      store.answer(nutBlank, {
        width: own.taper.nut,
        allowance: of("nut.allowance"),
        strings: passing("nut"),
      }).value,
    ...headGetters(
      spec,
      store,
      () => ({ rise: own.runs.angles, nut: passing("nut") }),
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
    neckPlan: () => store.answer(neckPlan, planInput(spec, own)).value,
    neckSide: () =>
      store.answer(neckSide, {
        nutThickness: of("nut.thickness"),
        head: {
          ...{ length: own.tuners.length, angle: of("head.angle") },
          ...{ thickness: of("head.thickness"), volute: of("head.volute") },
        },
        ...own.neckWood,
        heelEnd: of("neck.heel.end"),
        core: { ...own.core, end: of("core.end"), depth: of("core.depth") },
      }).value,
    neckProfile: () => profileInput(spec, own.neckPlan, own.neckSide),
    neckSections: () =>
      store.answer(neckSections, { profile: own.neckProfile, stations: neckStations(spec) }).value,
    neckSolidInput: () =>
      solidInput(spec, {
        ...{ profile: own.neckProfile, core: own.core, tuners: own.tuners.tuners },
        ...{ rods: own.neckRods, pins: own.neckPins },
        ...{ wingPins: own.wingPinHoles, pockets: own.corePockets },
        sunken: sunkenOf(own.sunken.neck),
      }),
    neckSolid: () => store.answer(neckSolid, own.neckSolidInput).value,
    neckWood: () => ({ nut: woodAt(spec, own.surface, "nut"), heel: woodAt(spec, own.surface, "heel") }),
    neckBlank: () => {
      const { plan, side } = own.neckProfile;
      const [inPlan, inSide] = [extentsOf([plan])!, extentsOf([side])!];
      return store.answer(neckBlank, {
        ...{
          length: inPlan.maxX - inPlan.minX,
          width: inPlan.maxY - inPlan.minY,
          thickness: inSide.maxY - inSide.minY,
        },
        allowance: {
          end: of("neck.allowance.end"),
          side: of("neck.allowance.side"),
          face: of("neck.allowance.face"),
        },
      }).value;
    },
    ...rodAndPinGetters(spec, store, () => own),
    bridge: () => store.answer(bridgeOutline, bridgeInput(store, spec.bridgeFace, own.crownFace)).value,
    ...joineryGetters(spec, store, () => own),
  });
  return own;
}
