import { solidChecks } from "../checks/assembly/solid-checks.ts";
import { findings } from "../checks/checks.ts";
import { flatsOf } from "../drawing/flat/flats.ts";
import type { Spec } from "../order/spec.ts";
import { type Report, reportOf } from "../report/report.ts";
import type { Store } from "../step/store.ts";
import { unasked } from "../step/unasked.ts";
import { type Model, modelOf } from "../workshop/model.ts";
import { solidFiles } from "../workshop/solids/solids.ts";
import { printsOf } from "./fingerprints.ts";

/** The report alone, with no file made, no drawing drawn and no solid built: what `check` asks for. It names the checks that need solids. */
export function reportFor(spec: Spec, store: Store): Report {
  const model = modelOf(spec, store);
  const notLookedAt = solidChecks.map(({ id }) => id);
  return reportOf(model, findings(model), partPrints(model, store), { parts: "all", notLookedAt });
}

/** The fingerprints of a model's parts by their files' names, with nothing drawn. */
export function partPrints(model: Model, store: Store): ReadonlyMap<string, string> {
  const keys = unasked(store);
  const drawn = flatsOf(model.spec).map((file) => ({ name: file.name, key: file.of(model, keys).key }));
  return printsOf(drawn, solidFiles(model));
}
