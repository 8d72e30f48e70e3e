import { type Instrument, instrument } from "../instrument/instrument.ts";
import type { Spec } from "../order/spec.ts";
import { type Forces, forces } from "../physics/forces.ts";
import type { Store } from "../step/store.ts";
import { type Blanks, blanks } from "./blanks.ts";
import { type Sawing, sawing } from "./sawing.ts";

/** All that dimensions, checks and drawings may ask: the spec, the instrument, what acts on it, and how it is made. */
export type Model = {
  readonly spec: Spec;
  readonly instrument: Instrument;
  readonly forces: Forces;
  readonly sawing: Sawing;
  readonly blanks: Blanks;
};

/** The model of one spec; nothing is worked out until something asks for it. */
export function modelOf(spec: Spec, store: Store): Model {
  const made = instrument(spec, store);
  return {
    ...{ spec, instrument: made, forces: forces(spec, made, store) },
    ...{ sawing: sawing(spec, made, store), blanks: blanks(spec, made, store) },
  };
}
