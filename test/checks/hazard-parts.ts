import type { Spec } from "../../src/order/spec.ts";
import type { Fixture } from "../../src/workshop/guided/fixture.ts";
import { specOf } from "../samples.ts";
import { fixtureIn, spoilt, told } from "./spoilt-fixture.ts";

export const five = specOf("sedge", 5);
export const file = "wing-treble-router";
export const treble = fixtureIn(five, file);

/** What a check finds in a fixture of which something is other than it was. */
export function found(
  name: string,
  change: (fixture: Fixture) => Partial<Fixture> = () => ({}),
  spec: Spec = five,
) {
  return told(spoilt(spec, file, change), name, file);
}
