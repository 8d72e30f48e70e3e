import { findings } from "../checks/checks.ts";
import { flatsOf } from "../drawing/flat/flats.ts";
import type { Spec } from "../order/spec.ts";
import { type Report, reportOf } from "../report/report.ts";
import type { Store } from "../step/store.ts";
import { unasked } from "../step/unasked.ts";
import { modelOf } from "../workshop/model.ts";
import { solidFiles } from "../workshop/solids/solids.ts";
import { fingerprints } from "./fingerprints.ts";

/** The report alone, with no file made and no drawing drawn: what `check` and `approve` ask for. */
export function reportFor(spec: Spec, store: Store): Report {
  const model = modelOf(spec, store);
  const keys = unasked(store);
  const drawn = flatsOf(spec).map((file) => ({ name: file.name, key: file.of(model, keys).key }));
  return reportOf(model, findings(model), fingerprints([...drawn, ...solidFiles(model)]));
}
