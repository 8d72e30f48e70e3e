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
  const result = report.safeParse(data, { reportInput: true });
  if (result.success) return { ok: true, value: result.data };
  const problems = result.error.issues.map(({ path, message }) =>
    problem(message, path.map(String).join(".")),
  );
  return { ok: false, problems };
}
