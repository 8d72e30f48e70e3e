import type { Spec } from "../order/spec.ts";
import { inchesOf } from "./inches.ts";
import type { Report } from "./report.ts";

/**
 * A report's dimensions as CSV (RFC 4180): a head line, then one line each, sorted by id, numbers with a point. A shop that asks for inches has
 * two more columns: the nearest 1/64, and what that is off by in mm; both are empty for what is no length.
 */
export function reportCsv({ dimensions }: Report, { shop }: Pick<Spec, "shop">): string {
  const inch = shop.units === "inch";
  const head = [
    "dimension",
    "value",
    "unit",
    "tolerance",
    "part",
    "what it is",
    ...(inch ? ["inches", "off by mm"] : []),
  ];
  const rows = dimensions.map(({ id, value, unit, tolerance, part, label }) => {
    const cells = [id, String(value), unit, String(tolerance), part, label];
    if (!inch) return cells;
    if (unit !== "mm") return [...cells, "", ""];
    const { text, error } = inchesOf(value);
    return [...cells, text, String(Math.round(error * 1e4) / 1e4 + 0)];
  });
  return [head, ...rows].map((cells) => `${cells.map(cell).join(",")}\r\n`).join("");
}

/** A cell; one that a table would take for a formula gets an apostrophe before it, but for numbers. */
function cell(text: string): string {
  const safe = /^[=+@]|^-(?![\d.])/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
