import { z } from "zod";
import type { Checked, Problem } from "../order/problem.ts";
import type { Report } from "./report.ts";

const report = z.object({
  order: z.string(),
  design: z.string(),
  strings: z.number(),
  hand: z.enum(["right", "left"]),
  fingerprint: z.string(),
  dimensions: z.array(
    z.object({
      ...{ id: z.string(), label: z.string(), value: z.number(), unit: z.string(), tolerance: z.number() },
      part: z.string(),
    }),
  ),
  checks: z.array(
    z.object({
      ...{
        id: z.string(),
        status: z.enum(["pass", "attend", "refuse"]),
        stake: z.enum(["injury", "spoilage"]),
      },
      ...{ subject: z.string(), found: z.number(), limit: z.number(), unit: z.string(), why: z.string() },
      ...{ source: z.string(), overruled: z.string().exactOptional() },
    }),
  ),
  notLookedAt: z.array(z.string()).exactOptional(),
});

/** How many faults are told of one report: a damaged one has the same fault on every line. */
const mostTold = 20;

/** Ids that stand in a list more than once. */
function named(list: readonly { readonly id: string }[]): string[] {
  const ids = list.map(({ id }) => id);
  return [...new Set(ids.filter((id, i) => ids.indexOf(id) !== i))];
}

/** Reports as they are now bear no version; one that does comes from another program or from a later one. */
function otherVersion(version: unknown, problem: (found: string, name: string) => Problem): Problem {
  return {
    ...problem(`a report of version ${JSON.stringify(version)}`, "version"),
    allowed: "a report of the version that this program writes, which states none",
    hint: "compare it with the program that wrote it, or make the pack again with this one",
  };
}

/** A report's text as data, or why it is none; `file` is what to call it. */
export function readReport(text: string, file: string): Checked<Report> {
  const problem = (found: string, name = "the report"): Problem => ({
    ...{ code: "syntax", position: { file, line: 1, column: 1 }, name, found },
    allowed: "a report as make, check --json or approve writes it",
    hint: "make the pack again and compare its dimensions.json",
  });
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { ok: false, problems: [problem("no JSON")] };
  }
  const { version } = typeof data === "object" && data !== null ? (data as { version?: unknown }) : {};
  if (version !== undefined) return { ok: false, problems: [otherVersion(version, problem)] };
  const result = report.safeParse(data, { reportInput: true });
  if (result.success) {
    const twice = [result.data.dimensions, result.data.checks].flatMap(named);
    if (twice.length === 0) return { ok: true, value: result.data };
    return { ok: false, problems: twice.map((id) => problem("an id that stands here twice", id)) };
  }
  const problems = result.error.issues
    .slice(0, mostTold)
    .map(({ path, message }) => problem(message, path.map(String).join(".")));
  return { ok: false, problems };
}
