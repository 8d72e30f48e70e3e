import type { Instrument } from "../../instrument/instrument.ts";
import { fixtureNames } from "../../order/fixture-names.ts";
import type { Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import { boardFixture } from "./board-fixture.ts";
import { bodyFixture } from "./body-fixture.ts";
import type { Fixture } from "./fixture.ts";
import { neckFixture } from "./neck-fixture.ts";
import { wingFixture } from "./wing-fixture.ts";

/** What makes each fixture, by its file's name; asked only where the spec has it. */
const makers: { readonly [file: string]: (spec: Spec, made: Instrument, store: Store) => Fixture } = {
  "wing-bass-router": (spec, { wings }, store) => wingFixture("bass", spec, wings!.bass, store),
  "body-bass-router": (spec, { body }, store) => bodyFixture("bass", spec, body!, store),
  "body-treble-router": (spec, { body }, store) => bodyFixture("treble", spec, body!, store),
  "fingerboard-router": boardFixture,
  "neck-shaper": neckFixture,
  "wing-treble-router": (spec, { wings }, store) => wingFixture("treble", spec, wings!.treble, store),
};

/** The fixtures of a spec's parts, in the order in which a pack lists them; each is worked out when it is asked for. */
export function fixturesOf(spec: Spec, made: Instrument, store: Store): readonly Fixture[] {
  return fixtureNames(spec).map((file) => makers[file]!(spec, made, store));
}

/** One of some fixtures by its file's name. Throws where there is none: ask what the design has. */
export function fixtureNamed(fixtures: readonly Fixture[], file: string): Fixture {
  const found = fixtures.find((one) => one.file === file);
  if (found === undefined) throw new RangeError(`no fixture ${file}`);
  return found;
}
