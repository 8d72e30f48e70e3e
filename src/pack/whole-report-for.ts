import { solidFindings } from "../checks/assembly/solid-checks.ts";
import { findings } from "../checks/checks.ts";
import type { Kernel } from "../geometry/kernel.ts";
import type { Spec } from "../order/spec.ts";
import { type Report, reportOf } from "../report/report.ts";
import type { Store } from "../step/store.ts";
import { assembled } from "../workshop/assembly/assembled.ts";
import { modelOf } from "../workshop/model.ts";
import { assembledMeshes, meshedOnce } from "./meshed-once.ts";
import { partPrints } from "./report-for.ts";

/** The report with what was found in the assembled solids: what `approve` asks for. */
export function wholeReportFor(spec: Spec, store: Store, kernel: Kernel): Report {
  const model = modelOf(spec, store);
  const meshes = assembledMeshes(model, meshedOnce(kernel, store));
  const solid = solidFindings(model, assembled(model, meshes, kernel, store));
  const found = [...findings(model), ...solid].sort((a, b) => (a.id < b.id ? -1 : 1));
  return reportOf(model, found, partPrints(model, store), { parts: "all", notLookedAt: [] });
}
