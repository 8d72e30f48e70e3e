import type { Spec } from "../order/spec.ts";
import { inchesText } from "./inches.ts";
import { markdownTable, readable } from "./markdown.ts";
import type { Report, ReportedCheck } from "./report.ts";

/** A picture of a pack, by its path there, the part that it shows, and what of it. */
export type Picture = { readonly path: string; readonly part: string; readonly what: string };

/**
 * A report for people: checks by gravity, then the numbers by part under the names of its pictures, each number with where it came from, and
 * in inches too where the shop asks for them.
 */
export function reportMarkdown(
  report: Report,
  spec: Spec,
  held: readonly string[],
  pictures: readonly Picture[] = [],
): string {
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
    ...parts.flatMap((part) => [
      `## ${capital(part)}`,
      ...picturesLine(pictures.filter((picture) => picture.part === part)),
      partTable(report, spec, part),
    ]),
  ];
  return `${sections.join("\n\n")}\n`;
}

const gravity = { refuse: 0, attend: 1, pass: 2 } as const;

/** Checks by how grave their answers are: what refuses first. */
export function byGravity(checks: readonly ReportedCheck[]): readonly ReportedCheck[] {
  return checks.toSorted((a, b) => gravity[a.status] - gravity[b.status]);
}

function checksTable(checks: readonly ReportedCheck[]): string {
  const rows = byGravity(checks).map(({ id, status, stake, found, limit, unit, why, source, overruled }) => [
    overruled === undefined ? status : `${status}, overruled: ${overruled}`,
    ...[id, stake, `${readable(found)} ${unit}`, `${readable(limit)} ${unit}`, why, source],
  ]);
  return markdownTable(["status", "check", "at stake", "found", "limit", "why", "source"], rows, [
    "found",
    "limit",
  ]);
}

function picturesLine(pictures: readonly Picture[]): string[] {
  if (pictures.length === 0) return [];
  return [`Pictures: ${pictures.map(({ path }) => `[${path}](${path})`).join(", ")}`];
}

/** Where a number came from: worked out, the design or the order, or what it follows from. */
export function sourceOf({ values }: Pick<Spec, "values">, id: string): string {
  const entry = values[id];
  return entry === undefined ? "worked out" : (entry.follows ?? entry.source);
}

function partTable(report: Report, spec: Spec, part: string): string {
  const inch = spec.shop.units === "inch";
  const rows = report.dimensions
    .filter((dimension) => dimension.part === part)
    .map(({ id, label, value, unit, tolerance }) => {
      const inches = inch ? [unit === "mm" ? inchesText(value) : ""] : [];
      return [id, readable(value), unit, ...inches, readable(tolerance), sourceOf(spec, id), label];
    });
  const head = [
    "dimension",
    "value",
    "unit",
    ...(inch ? ["inches (off by mm)"] : []),
    "tolerance",
    "from",
    "what it is",
  ];
  return markdownTable(head, rows, ["value", "tolerance", "inches (off by mm)"]);
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
