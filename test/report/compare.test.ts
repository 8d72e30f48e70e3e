import { describe, expect, it } from "vitest";
import { reportFor } from "../../src/pack/pack.ts";
import { compareReports } from "../../src/report/compare.ts";
import { comparisonMarkdown, comparisonText } from "../../src/report/comparison-text.ts";
import { jsonLines } from "../../src/report/json-lines.ts";
import { readReport } from "../../src/report/read-report.ts";
import type { Report } from "../../src/report/report.ts";
import { memoryStore } from "../../src/step/store.ts";
import { specOf } from "../samples.ts";

const five = reportFor(specOf("sedge", 5), memoryStore());

function moved(report: Report, id: string, by: number): Report {
  expect(report.dimensions.map((dimension) => dimension.id)).toContain(id);
  const dimensions = report.dimensions.map((d) => (d.id === id ? { ...d, value: d.value + by } : d));
  return { ...report, dimensions };
}

describe("a comparison", () => {
  it("of a report with itself shows nothing", () => {
    expect(compareReports(five, five)).toEqual({ head: [], dimensions: [], checks: [], differs: false });
  });

  it.each([
    [0.05, false],
    [0.1, false],
    [0.11, true],
    [-0.3, true],
  ])("of one dimension moved by %d shows just that one, beyond its 0.1: %s", (by, beyond) => {
    const { dimensions, checks, differs } = compareReports(five, moved(five, "bridge.height", by));
    expect(dimensions).toHaveLength(1);
    expect(dimensions[0]).toMatchObject({ id: "bridge.height", kind: "changed", tolerance: 0.1, beyond });
    expect(checks).toEqual([]);
    expect(differs).toBe(beyond);
  });

  it("of four against five strings lists what is new, gone and changed, and nothing that stayed", () => {
    const four = reportFor(specOf("sedge", 4), memoryStore());
    const { head, dimensions, differs } = compareReports(four, five);
    const kinds = new Map(dimensions.map(({ id, kind }) => [id, kind]));
    expect(head).toEqual(["strings: 4 before, 5 after"]);
    expect(kinds.get("string.C3.tension")).toBe("new");
    expect(kinds.get("nut.width")).toBe("changed");
    for (const id of [
      "string.length",
      "core.slope",
      "nut.margin.x",
      "string.A4.tension",
      "fingerboard.length",
    ]) {
      expect(kinds.has(id), id).toBe(false);
    }
    for (const { before, after } of dimensions) expect(before).not.toBe(after);
    expect(compareReports(five, four).dimensions.find(({ id }) => id === "string.C3.tension")?.kind).toBe(
      "gone",
    );
    expect(differs).toBe(true);
  });

  it("counts a check that got worse, and not one that got better", () => {
    const worse: Report = {
      ...five,
      checks: five.checks.map((c) => (c.id === "wall.nut" ? { ...c, status: "attend" } : c)),
    };
    expect(compareReports(five, worse)).toMatchObject({
      differs: true,
      checks: [{ id: "wall.nut", kind: "worse" }],
    });
    expect(compareReports(worse, five)).toMatchObject({
      differs: false,
      checks: [{ id: "wall.nut", kind: "better" }],
    });
  });

  it("reads well as text and as Markdown", () => {
    const comparison = compareReports(five, moved(five, "bridge.height", 0.25));
    expect(comparisonText(comparison)).toBe(
      "bridge.height  35.024 -> 35.274 mm (+0.25)  beyond 0.1 mm\ndiffers beyond tolerance\n",
    );
    expect(comparisonMarkdown(comparison).split("\n").at(-2)).toBe(
      "| bridge.height | 35.024 | 35.274 | +0.25 | mm | 0.1 | beyond 0.1 mm |",
    );
  });
});

describe("a report as a file", () => {
  it("is read as it was written, one entry a line, sorted by id", () => {
    const text = jsonLines(five);
    expect(readReport(text, "r.json")).toEqual({ ok: true, value: five });
    const ids = [...text.matchAll(/^ {4}\{"id":"([^"]+)"/gm)].map(([, id]) => id!);
    const dimensions = ids.slice(0, five.dimensions.length);
    expect(ids).toHaveLength(five.dimensions.length + five.checks.length);
    expect(dimensions).toEqual([...dimensions].sort());
  });

  it.each([
    ["", "no JSON"],
    ["{}", /./],
    ["[1]", /./],
    [jsonLines(five).replace('"value":35.024', '"value":"35.024'), "no JSON"],
    [jsonLines({ ...five, hand: "up" }), /./],
    [jsonLines({ ...five, dimensions: [{ id: "x" }] }), /./],
  ])("that is damaged is a problem (%#)", (text, found) => {
    const read = readReport(text, "r.json");
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problems[0]!.found).toMatch(found);
  });
});
