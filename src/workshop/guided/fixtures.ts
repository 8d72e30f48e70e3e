import type { Instrument } from "../../instrument/instrument.ts";
import { sides } from "../../order/side.ts";
import type { Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import type { Fixture } from "./fixture.ts";
import { wingFixture } from "./wing-fixture.ts";

/** The fixtures of a spec's parts, in the order in which a pack lists them; each is worked out when it is asked for. */
export function fixturesOf(spec: Spec, made: Instrument, store: Store): readonly Fixture[] {
  const { wings } = made;
  return wings === null ? [] : sides.map((side) => wingFixture(side, spec, wings[side], store));
}

/** One of some fixtures by its file's name. Throws where there is none: ask what the design has. */
export function fixtureNamed(fixtures: readonly Fixture[], file: string): Fixture {
  const found = fixtures.find((one) => one.file === file);
  if (found === undefined) throw new RangeError(`no fixture ${file}`);
  return found;
}
