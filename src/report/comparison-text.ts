import type { Comparison, MovedCheck, MovedDimension } from "./compare.ts";
import { markdownTable, readable } from "./markdown.ts";

/** A comparison as plain text, one line for each thing that moved; `files` are lines that stand between whose the reports are and their numbers. */
export function comparisonText(comparison: Comparison, files = ""): string {
  const { head, dimensions, checks } = comparison;
  const width = Math.max(0, ...dimensions.map(({ id }) => id.length), ...checks.map(({ id }) => id.length));
  const lines = [
    ...dimensions.map((moved) => {
      return `${moved.id.padEnd(width)}  ${numbers(moved).join(" -> ")} ${moved.unit}${by(moved)}  ${judged(moved)}`;
    }),
    ...checks.map((moved) => `${moved.id.padEnd(width)}  ${answers(moved).join(" -> ")}  ${checked(moved)}`),
    verdict(comparison),
  ];
  return `${head.map((line) => `${line}\n`).join("")}${files}${lines.join("\n")}\n`;
}

/** A comparison as Markdown, for a pull request. */
export function comparisonMarkdown(comparison: Comparison): string {
  const { head, dimensions, checks } = comparison;
  const rows = dimensions.map((moved) => [
    ...[moved.id, ...numbers(moved), by(moved).trim().replace(/[()]/g, ""), moved.unit],
    ...[readable(moved.tolerance), judged(moved)],
  ]);
  const columns = ["dimension", "before", "after", "by", "unit", "tolerance", "judged"];
  const sections = [
    `**${verdict(comparison)}**`,
    ...head.map((line) => `- ${line}`),
    ...(rows.length > 0 ? [markdownTable(columns, rows, ["before", "after", "by", "tolerance"])] : []),
    ...(checks.length > 0
      ? [
          markdownTable(
            ["check", "before", "after", "judged"],
            checks.map((moved) => [moved.id, ...answers(moved), checked(moved)]),
          ),
        ]
      : []),
  ];
  return `${sections.join("\n\n")}\n`;
}

/** The one line that a comparison comes to, the same in every format. */
function verdict({ dimensions, checks, differs }: Comparison): string {
  if (differs) return "differs beyond tolerance";
  return dimensions.length + checks.length > 0 ? "within tolerance" : "nothing moved";
}

function answers({ before, after, overruled }: MovedCheck): [string, string] {
  const text = (status: MovedCheck["before"], reason: string | null) =>
    reason === null ? (status ?? "none") : `${status}, overruled: ${reason.replace(/\s+/g, " ").trim()}`;
  return [text(before, overruled.before), text(after, overruled.after)];
}

function checked({ kind }: MovedCheck): string {
  if (kind === "not-looked-at") return "not looked at on one side";
  return kind === "reason" ? "overruled for another reason" : `check ${kind}`;
}

function numbers({ before, after }: MovedDimension): [string, string] {
  const text = (value: number | null) => (value === null ? "none" : readable(value));
  return [text(before), text(after)];
}

function by({ before, after }: MovedDimension): string {
  if (before === null || after === null) return "";
  const moved = after - before;
  return ` (${moved > 0 ? "+" : ""}${readable(moved)})`;
}

function judged({ kind, beyond, tolerance, unit }: MovedDimension): string {
  if (kind !== "changed") return kind;
  return `${beyond ? "beyond" : "within"} ${readable(tolerance)} ${unit}`;
}
