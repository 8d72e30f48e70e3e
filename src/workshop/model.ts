import { type Instrument, instrument } from "../instrument/instrument.ts";
import type { Spec } from "../order/spec.ts";
import { type Forces, forces } from "../physics/forces.ts";
import { type Masses, masses } from "../physics/mass/masses.ts";
import type { Store } from "../step/store.ts";
import { type Blanks, blanks } from "./blanks.ts";
import type { Fixture } from "./guided/fixture.ts";
import { fixturesOf } from "./guided/fixtures.ts";
import type { Inside } from "./inside/inside.ts";
import { insidesOf } from "./inside/insides.ts";
import { type PartSawing, partSawing } from "./part-sawing.ts";
import { type Sawing, sawing } from "./sawing.ts";
import { woodTaken } from "./stock/wood-taken.ts";

/** All that dimensions, checks and drawings may ask: the spec, the instrument, what acts on it, and how it is made. */
export type Model = {
  readonly spec: Spec;
  readonly instrument: Instrument;
  readonly forces: Forces;
  readonly sawing: Sawing;
  readonly blanks: Blanks;
  /** How wings, body and fingerboard are sawn, each worked out when it is asked for. */
  readonly partSawing: () => readonly PartSawing[];
  readonly masses: Masses;
  /** The fixtures that parts are cut against, each worked out when it is asked for. */
  readonly fixtures: () => readonly Fixture[];
  /** The inside templates that recesses are cut through, each worked out when it is asked for. */
  readonly insides: () => readonly Inside[];
};

/** The model of one spec; nothing is worked out until something asks for it. */
export function modelOf(spec: Spec, store: Store): Model {
  const made = instrument(spec, store);
  const saw = sawing(spec, made, store);
  const boards = blanks(spec, made, saw, store);
  let fixtures: readonly Fixture[] | undefined;
  let sawn: readonly PartSawing[] | undefined;
  let insides: readonly Inside[] | undefined;
  return {
    fixtures: () => (fixtures ??= fixturesOf(spec, made, store)),
    insides: () => (insides ??= insidesOf(spec, made, store)),
    partSawing: () => (sawn ??= partSawing(spec, made, boards, store)),
    ...{ spec, instrument: made, forces: forces(spec, made, store), sawing: saw, blanks: boards },
    masses: masses(spec, made, store, () => ({
      neck: woodTaken(saw.stock, spec.neckWoods),
      fingerboard: woodTaken(boards.fingerboard, spec.boardWoods),
    })),
  };
}
