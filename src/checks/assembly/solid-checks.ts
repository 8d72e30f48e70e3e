import type { FitMeasured } from "../../workshop/assembly/assembled.ts";
import type { Model } from "../../workshop/model.ts";
import type { Finding } from "../check.ts";
import { overruled } from "../checks.ts";
import { partsClear, stringsClear } from "./clear.ts";
import { flush, gaping, overlapping, parallel } from "./joined.ts";
import type { SolidCheck } from "./solid-check.ts";

/** Every check that looks at the assembled instrument's solids, sorted by id. */
export const solidChecks: readonly SolidCheck[] = [
  ...[overlapping, gaping, flush, parallel, partsClear, stringsClear],
].sort((a, b) => (a.id < b.id ? -1 : 1));

/** What every such check finds, by id; a refusal that the order overrules carries the reason. */
export function solidFindings({ spec }: Model, fits: readonly FitMeasured[]): Finding[] {
  return solidChecks.map(({ id, of }): Finding => overruled({ id, ...of(fits) }, spec.overrule));
}
