import { marked } from "marked";
import { beforeAll, describe, expect, it } from "vitest";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { packOf } from "../../src/pack/pack.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { compareReports } from "../../src/report/compare.ts";
import { comparisonMarkdown } from "../../src/report/comparison-text.ts";
import { memoryStore } from "../../src/step/store.ts";
import { specOf } from "../samples.ts";

/** What a renderer makes of Markdown: the rows of its tables, and the text outside them. */
function rendered(text: string): {
  readonly rows: number;
  readonly tables: number;
  readonly outside: string;
} {
  const html = marked.parse(text, { async: false, gfm: true });
  const tables = html.match(/<table>[\s\S]*?<\/table>/g) ?? [];
  const rows = tables.flatMap((table) => table.match(/<tr>/g) ?? []).length;
  return { tables: tables.length, rows, outside: html.replace(/<table>[\s\S]*?<\/table>/g, "") };
}

/** Every line that is meant as a row of a table but for the lines of dashes. */
const rowsIn = (text: string) =>
  text.split("\n").filter((line) => line.startsWith("|") && !/^\|[ :|-]+\|$/.test(line)).length;

describe("Markdown, rendered by another program", () => {
  let texts: readonly (readonly [string, string])[];
  beforeAll(async () => {
    const store = memoryStore();
    const [four, five] = [4, 5].map((count) => reportFor(specOf("sedge", count), store));
    const pack = await packOf(specOf("sedge", 5), { store, solids: solidsHere(kernelOnce()), only: ["nut"] });
    const report = pack.files.find(({ path }) => path === "dimensions.md")!;
    texts = [
      ["a comparison of four strings with five", comparisonMarkdown(compareReports(four!, five!))],
      ["a dimension report", String(report.content)],
    ];
  });

  it("has a table's row for each of its own, and no row or rule left as text", () => {
    for (const [what, text] of texts) {
      const { tables, rows, outside } = rendered(text);
      expect(tables, what).toBeGreaterThan(0);
      expect(rowsIn(text), what).toBeGreaterThan(5);
      expect(rows, what).toBe(rowsIn(text));
      expect(outside, what).not.toMatch(/\|/);
    }
  });

  it("is found not to render where a table's line of dashes is lost", () => {
    const [, text] = texts[0]!;
    const planted = text.replace(/^\|[ :|-]+\|\n/m, "");
    expect(planted).not.toBe(text);
    const { rows, outside } = rendered(planted);
    expect(rows).toBeLessThan(rowsIn(planted));
    expect(outside).toMatch(/\|/);
  });
});
