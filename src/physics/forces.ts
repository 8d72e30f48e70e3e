import type { Instrument } from "../instrument/instrument.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import { lazy } from "../step/lazy.ts";
import type { Store } from "../step/store.ts";
import { type BridgeForces, bridgeForceGetters } from "./bridge-forces.ts";
import { type SideAngles, sideAngles } from "./side-angles.ts";
import { stringTensions, type Tensions } from "./tension.ts";

/** What the strings do to the instrument, worked out when asked for. */
export type Forces = BridgeForces & { readonly strings: Tensions; readonly angles: SideAngles };

/** The forces of a spec's strings on its instrument. Each getter is one step, answered by the store. */
export function forces(spec: Spec, instrument: Instrument, store: Store): Forces {
  const own: Forces = lazy<Forces>({
    strings: () =>
      store.answer(stringTensions, {
        stringLength: dimensionOf(spec, "string.length"),
        a4: dimensionOf(spec, "pitch.standard"),
        strings: spec.strings.map(({ semitones, mass }) => ({ semitones, mass })),
      }).value,
    angles: () =>
      store.answer(sideAngles, {
        tensions: own.strings.tensions,
        rises: instrument.runs.angles,
        falls: instrument.exits.angles,
      }).value,
    ...bridgeForceGetters(spec, instrument, store, () => own),
  });
  return own;
}
