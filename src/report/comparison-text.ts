import type { Comparison, MovedDimension } from "./compare.ts";
import { markdownTable, readable } from "./markdown.ts";

/** A comparison as plain text, one line for each thing that moved. */
export function comparisonText({ head, dimensions, checks, differs }: Comparison): string {
  const width = Math.max(0, ...dimensions.map(({ id }) => id.length), ...checks.map(({ id }) => id.length));
  const lines = [
    ...head,
    ...dimensions.map((moved) => {
      return `${moved.id.padEnd(width)}  ${numbers(moved).join(" -> ")} ${moved.unit}${by(moved)}  ${judged(moved)}`;
    }),
    ...checks.map(({ id, kind, before, after }) => {
      return `${id.padEnd(width)}  ${before ?? "none"} -> ${after ?? "none"}  check ${kind}`;
    }),
    differs ? "differs beyond tolerance" : dimensions.length > 0 ? "within tolerance" : "nothing moved",
  ];
  return `${lines.join("\n")}\n`;
}

/** A comparison as Markdown, for a pull request. */
export function comparisonMarkdown({ head, dimensions, checks, differs }: Comparison): string {
  const rows = dimensions.map((moved) => [
    ...[moved.id, ...numbers(moved), by(moved).trim().replace(/[()]/g, ""), moved.unit],
    ...[readable(moved.tolerance), judged(moved)],
  ]);
  const columns = ["dimension", "before", "after", "by", "unit", "tolerance", "judged"];
  const sections = [
    `**${differs ? "Differs beyond tolerance" : "Within tolerance"}**`,
    ...head.map((line) => `- ${line}`),
    ...(rows.length > 0 ? [markdownTable(columns, rows, ["before", "after", "by", "tolerance"])] : []),
    ...(checks.length > 0
      ? [
          markdownTable(
            ["check", "before", "after", "judged"],
            checks.map(({ id, kind, before, after }) => [id, before ?? "none", after ?? "none", kind]),
          ),
        ]
      : []),
  ];
  return `${sections.join("\n\n")}\n`;
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
