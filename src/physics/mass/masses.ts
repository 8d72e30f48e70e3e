import { madeInlays } from "../../instrument/fingerboard/inlays.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { bodyMeasured } from "./body.ts";
import { bridgeMeasured } from "./bridge.ts";
import { coverMeasured } from "./cover.ts";
import { boardMeasured } from "./fingerboard.ts";
import { hardwarePieces } from "./hardware.ts";
import type { Measured } from "./moments.ts";
import { neckMeasured } from "./neck.ts";
import { nutMeasured } from "./nut.ts";
import { momentAbout, type Piece, wholeOf } from "./piece.ts";
import { stringPieces } from "./strings.ts";
import { tailpieceMeasured } from "./tailpiece.ts";
import { wingMeasured } from "./wing.ts";

/** A part that is weighed: what it takes of space, of what, g. */
export type Weighed = Measured & { readonly name: string; readonly wood: string; readonly mass: number };

/** The instrument's mass and balance, right-handed; g, mm and N mm. */
export type Masses = {
  /** Every part that is made of wood or the like, and the rods, as finished. */
  readonly parts: readonly Weighed[];
  readonly strings: readonly Piece[];
  /** What is screwed on. */
  readonly hardware: readonly Piece[];
  /** The parts, the strings, and what is screwed on. */
  readonly pieces: readonly Piece[];
  readonly whole: Pick<Piece, "mass" | "centre">;
  /** What the weight turns about the place where the instrument is held, positive toward the head. */
  readonly moment: number;
};

/** What neck and fingerboard are made of: the wood of the board that the shop takes for them. */
export type WoodsTaken = { readonly neck: string; readonly fingerboard: string };

/** The mass of a spec's instrument. Each part's volume is one step, answered by the store. */
export function masses(spec: Spec, instrument: Instrument, store: Store, taken: () => WoodsTaken): Masses {
  const own: Masses = lazy<Masses>({
    parts: () => weighed(spec, instrument, store, taken()),
    strings: () => stringPieces(spec, instrument),
    hardware: () => hardwarePieces(spec, instrument),
    pieces: () => [
      ...own.parts.map(({ name, mass, centre }): Piece => ({ name, kind: "part", mass, centre })),
      ...own.strings,
      ...own.hardware,
    ],
    whole: () => wholeOf(own.pieces),
    moment: () => momentAbout(dimensionOf(spec, "hold.x"), own.whole),
  });
  return own;
}

/** Every part, each measured when its own numbers are asked for. */
function weighed(spec: Spec, instrument: Instrument, store: Store, taken: WoodsTaken): Weighed[] {
  const { bridge, nut, tailpiece, rod, wings, body, cover } = spec.partWoods;
  const of = (name: string, wood: string, measured: () => Measured): Weighed => {
    const own: Weighed = lazy<Weighed>({
      ...{ name: () => name, wood: () => wood },
      ...{ volume: () => measured().volume, centre: () => measured().centre },
      mass: () => own.volume * densityOf(spec, wood) * 1e-6,
    });
    return own;
  };
  const neck = () => store.answer(neckMeasured, instrument.neckSolidInput).value;
  const side = (which: Side) => () => store.answer(wingMeasured, instrument.wings![which].solidInput).value;
  return [
    of("neck", taken.neck, () => neck().neck),
    of(
      "fingerboard",
      taken.fingerboard,
      () => store.answer(boardMeasured, boardInput(spec, instrument)).value,
    ),
    of("bridge", bridge, () => store.answer(bridgeMeasured, instrument.bridgeSolidInput).value),
    of("nut", nut, () => store.answer(nutMeasured, instrument.nutSolidInput).value),
    of("tailpiece", tailpiece, () => store.answer(tailpieceMeasured, instrument.tailpieceSolidInput).value),
    ...(instrument.wings === null
      ? []
      : sides.map((which) => of(`wing-${which}`, wings ?? taken.neck, side(which)))),
    ...(instrument.body === null
      ? []
      : [
          of("body", body ?? taken.neck, () => store.answer(bodyMeasured, instrument.body!.solidInput).value),
        ]),
    ...spec.recesses.flatMap(({ id, cover: covered }) => {
      const input = () => instrument.covers.find(({ recess }) => recess.id === id)!.input;
      const measured = () => store.answer(coverMeasured, input()).value;
      return covered ? [of(`cover-${id}`, cover ?? tailpiece, measured)] : [];
    }),
    ...(dimensionOf(spec, "rod.count") > 0 ? [of("rods", rod, () => neck().rods!)] : []),
  ];
}

/** A wood's density, kg/m³; throws at one that the spec doesn't know. */
function densityOf({ densities }: Spec, wood: string): number {
  const density = densities[wood];
  if (density === undefined) throw new RangeError(`${wood} has no density`);
  return density;
}

function boardInput(spec: Spec, instrument: Instrument) {
  const { surface, fretSlots, boardDots, boardSideDots } = instrument;
  return {
    ...{ board: surface, corner: dimensionOf(spec, "fingerboard.corner"), slots: fretSlots },
    ...{ dots: boardDots, sideDots: boardSideDots },
    recesses: madeInlays(instrument).map(({ recess, floor }) => ({ path: recess, floor })),
  };
}
