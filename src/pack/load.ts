import { solidChecks } from "../checks/assembly/solid-checks.ts";
import { checks } from "../checks/checks.ts";
import { diskLibrary } from "../files/library.ts";
import { readText } from "../files/read-text.ts";
import { shownPath } from "../files/shown-path.ts";
import { contradictions } from "../instrument/contradictions.ts";
import { instrument } from "../instrument/instrument.ts";
import { didYouMean } from "../order/nearest.ts";
import { type Checked, type Problem, quoted } from "../order/problem.ts";
import type { Readings } from "../order/readings.ts";
import { type Options, resolve } from "../order/resolve.ts";
import type { Spec } from "../order/spec.ts";
import type { Store } from "../step/store.ts";

/**
 * An order file with its designs and shop as a spec that can be built, or every problem that stands in the way. Several
 * orders read what they share once when they are given the same kept readings.
 */
export function loadOrder(
  file: string,
  store: Store,
  options: Options = {},
  readings?: Readings,
): Checked<Spec> {
  const shown = shownPath(file);
  const text = readText(file, shown);
  if (!text.ok) return text;
  const spec = resolve(text.value, shown, diskLibrary(file), options, readings);
  if (!spec.ok) return spec;
  const problems = [
    ...contradictions(spec.value, instrument(spec.value, store)),
    ...unknownChecks(spec.value),
  ];
  return problems.length > 0 ? { ok: false, problems } : spec;
}

function unknownChecks({ overrule }: Spec): Problem[] {
  const known = [...checks, ...solidChecks].map(({ id }) => id);
  return overrule
    .filter(({ check }) => !known.includes(check))
    .map(({ check, position }) => ({
      ...{ code: "overrule", position, name: "overrule", found: `the check ${quoted(check)}` },
      ...{ allowed: known.join(", "), hint: didYouMean(check, known, "checks.json of the pack names them") },
    }));
}
