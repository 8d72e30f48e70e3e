import { join } from "node:path";
import { refuses } from "../checks/checks.ts";
import { approvedFolder } from "../files/library.ts";
import { replaceFile } from "../files/replace-file.ts";
import { shownPath } from "../files/shown-path.ts";
import { InputError } from "../order/problem.ts";
import { kernelOnce } from "../pack/kernel-once.ts";
import { loadOrder } from "../pack/load.ts";
import { wholeReportFor } from "../pack/whole-report-for.ts";
import { jsonLines } from "../report/json-lines.ts";
import { memoryStore } from "../step/store.ts";
import type { Common } from "./console.ts";
import { exit, run } from "./run.ts";

/** What `patternloft approve` is given. */
export type ApproveGiven = Common & { readonly order: string };

/** Keep an order's report for the next comparison: exit 1, and nothing kept, while a check refuses. */
export function approve(given: ApproveGiven): Promise<void> {
  return run(
    given,
    async ({ say, print, json }) => {
      const store = memoryStore();
      const spec = loadOrder(given.order, store);
      if (!spec.ok) throw new InputError(spec.problems);
      const report = wholeReportFor(spec.value, store, await kernelOnce()());
      const refusing = report.checks.filter(refuses);
      const file = join(approvedFolder(given.order), `${report.order}.json`);
      const kept = refusing.length === 0;
      if (kept) await replaceFile(file, jsonLines(report));
      if (json) print(`${JSON.stringify({ order: report.order, kept, file: shownPath(file) })}\n`);
      for (const { id, why } of refusing) say(`${id} refuses: ${why}`);
      say(kept ? `kept ${shownPath(file)}` : "not kept: a report with a refusing check can't be approved");
      return kept ? exit.done : exit.differs;
    },
    "order",
  );
}
