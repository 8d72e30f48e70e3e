import type { Instrument } from "../../instrument/instrument.ts";
import { allInsides, insideApplies } from "../../order/inside-names.ts";
import type { Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import type { Inside } from "./inside.ts";
import { insideTemplate } from "./inside-template.ts";

/** The inside templates of a spec's parts, in the order in which a pack lists them; each is worked out when it is asked for. */
export function insidesOf(spec: Spec, made: Instrument, store: Store): readonly Inside[] {
  return allInsides
    .filter((name) => insideApplies(name, spec))
    .map((name) => insideTemplate(name, spec, made, store));
}

/** One of some inside templates by its file's name. Throws where there is none: ask what the spec has. */
export function insideNamed(insides: readonly Inside[], file: string): Inside {
  const found = insides.find((one) => one.file === file);
  if (found === undefined) throw new RangeError(`no inside template ${file}`);
  return found;
}
