import { refuses } from "../checks/checks.ts";
import { InputError } from "../order/problem.ts";
import { keptReadings } from "../order/readings.ts";
import { loadOrder } from "../pack/load.ts";
import { reportFor } from "../pack/report-for.ts";
import { jsonLines } from "../report/json-lines.ts";
import { readable } from "../report/markdown.ts";
import type { Report } from "../report/report.ts";
import { memoryStore } from "../step/store.ts";
import type { Common, Console } from "./console.ts";
import { type Variant, variantOptions } from "./options.ts";
import { exit, run } from "./run.ts";

/** What `patternloft check` is given. */
export type CheckGiven = Common & Variant & { readonly orders: readonly string[] };

/** Print the numbers and checks of orders and write nothing: exit 1 when a check refuses. */
export function check(given: CheckGiven): Promise<void> {
  return run(given, (console) => {
    const store = memoryStore();
    const [options, readings] = [variantOptions(given), keptReadings()];
    const loaded = given.orders.map((file) => loadOrder(file, store, options, readings));
    const problems = loaded.flatMap((spec) => (spec.ok ? [] : spec.problems));
    if (problems.length > 0) throw new InputError(problems);
    const reports = loaded.flatMap((spec) => (spec.ok ? [reportFor(spec.value, store)] : []));
    if (console.json) console.print(jsonText(reports));
    else for (const report of reports) tell(console, report);
    return reports.some(({ checks }) => checks.some(refuses)) ? exit.differs : exit.done;
  });
}

/** One order gives its report just as dimensions.json holds it, several a list of them. */
function jsonText(reports: readonly Report[]): string {
  const [only] = reports;
  return reports.length === 1 && only !== undefined
    ? jsonLines(only)
    : `${JSON.stringify(reports, undefined, 2)}\n`;
}

function tell(
  { print, ink }: Console,
  { order, design, strings, hand, fingerprint, dimensions, checks, notLookedAt = [] }: Report,
): void {
  const width = Math.max(...dimensions.map(({ id }) => id.length));
  const lines = [
    ink.bold(`${order}  design ${design}, ${strings} strings, ${hand} hand, fingerprint ${fingerprint}`),
    ...dimensions.map(({ id, value, unit, label }) => {
      return `  ${id.padEnd(width)} ${readable(value).padStart(9)} ${unit.padEnd(3)}  ${label}`;
    }),
    ...checks.map(({ id, status, found, limit, unit, why, source, overruled }) => {
      const paint = { pass: ink.green, attend: ink.yellow, refuse: ink.red }[status];
      const answer = overruled === undefined ? status.padEnd(6) : `${status}, overruled: ${overruled};`;
      return `  ${paint(answer)} ${id}: ${readable(found)} ${unit} (limit ${readable(limit)}); ${why}. ${source}`;
    }),
    ...notLookedAt.map(
      (id) =>
        `  ${ink.yellow("not looked at")} ${id}: it needs the assembled solids, which make puts together`,
    ),
  ];
  print(`${lines.join("\n")}\n`);
}
