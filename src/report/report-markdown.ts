import type { Spec } from "../order/spec.ts";
import { markdownTable, readable } from "./markdown.ts";
import type { Report, ReportedCheck } from "./report.ts";

/** A report for people: checks by gravity, then the numbers by part, each with where it came from. */
export function reportMarkdown(report: Report, spec: Spec, held: readonly string[]): string {
  const { order, design, strings, hand, fingerprint } = report;
  const parts = [...new Set(report.dimensions.map(({ part }) => part))].sort();
  const sections = [
    `# ${order}: dimensions`,
    `Design ${design}, ${strings} strings (${spec.strings.map(({ name }) => name).join(" ")}), ${hand} hand${
      spec.revision === null ? "" : `, revision ${spec.revision}`
    }. Fingerprint ${fingerprint}. Millimetres, degrees, newtons, hertz.`,
    "Nothing here says that a set-up or a cut is without danger: local codes, the machine's manual and a competent person come first.",
    ...(held.length === 0 ? [] : [`Held back, because a check refuses: ${held.join(", ")}.`]),
    "## Checks",
    checksTable(report.checks),
    ...(report.notLookedAt === undefined ? [] : [`Not looked at: ${report.notLookedAt.join(", ")}.`]),
    ...parts.flatMap((part) => [`## ${capital(part)}`, partTable(report, spec, part)]),
  ];
  return `${sections.join("\n\n")}\n`;
}

const gravity = { refuse: 0, attend: 1, pass: 2 } as const;

function checksTable(checks: readonly ReportedCheck[]): string {
  const sorted = checks.toSorted((a, b) => gravity[a.status] - gravity[b.status]);
  const rows = sorted.map(({ id, status, stake, found, limit, unit, why, source, overruled }) => [
    overruled === undefined ? status : `${status}, overruled: ${overruled}`,
    ...[id, stake, `${readable(found)} ${unit}`, `${readable(limit)} ${unit}`, why, source],
  ]);
  return markdownTable(["status", "check", "at stake", "found", "limit", "why", "source"], rows, [
    "found",
    "limit",
  ]);
}

function partTable(report: Report, spec: Spec, part: string): string {
  const rows = report.dimensions
    .filter((dimension) => dimension.part === part)
    .map(({ id, label, value, unit, tolerance }) => {
      const entry = spec.values[id];
      const source =
        entry === undefined ? "worked out" : entry.follows === null ? entry.source : entry.follows;
      return [id, readable(value), unit, readable(tolerance), source, label];
    });
  return markdownTable(["dimension", "value", "unit", "tolerance", "from", "what it is"], rows, [
    "value",
    "tolerance",
  ]);
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
