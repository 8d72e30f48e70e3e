import { describe, expect, it } from "vitest";
import { reportFor } from "../../src/pack/report-for.ts";
import { compareReports } from "../../src/report/compare.ts";
import { comparisonMarkdown, comparisonText } from "../../src/report/comparison-text.ts";
import { jsonLines } from "../../src/report/json-lines.ts";
import { readReport } from "../../src/report/read-report.ts";
import type { Report, ReportedCheck } from "../../src/report/report.ts";
import { memoryStore } from "../../src/step/store.ts";
import { specOf } from "../samples.ts";

const five = reportFor(specOf("sedge", 5), memoryStore());

function moved(report: Report, id: string, by: number): Report {
  expect(report.dimensions.map((dimension) => dimension.id)).toContain(id);
  const dimensions = report.dimensions.map((d) => (d.id === id ? { ...d, value: d.value + by } : d));
  return { ...report, dimensions };
}

/** A report whose check of the nut's wall answers otherwise. */
function checked(report: Report, answer: Partial<ReportedCheck>): Report {
  expect(report.checks.map(({ id }) => id)).toContain("wall.nut");
  const checks = report.checks.map((c) => (c.id === "wall.nut" ? { ...c, ...answer } : c));
  return { ...report, checks };
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
    expect(kinds.get("nut.margin")).toBe("changed");
    for (const id of [
      "string.length",
      "core.slope",
      "nut.wall",
      "bridge.tilt",
      "string.A4.tension",
      "fingerboard.length",
    ]) {
      for (const report of [four, five]) expect(report.dimensions.map((d) => d.id)).toContain(id);
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

  const standings: readonly [string, Partial<ReportedCheck>][] = [
    ["pass", { status: "pass" }],
    ["attend", { status: "attend" }],
    ["refuse, overruled: brass nut", { status: "refuse", overruled: "brass nut" }],
    ["refuse", { status: "refuse" }],
  ];
  const pairs = standings.flatMap(([before, from], i) =>
    standings.map(([after, to], j) => ({
      ...{ before, from, after, to },
      kind: i === j ? "the same" : i < j ? "worse" : "better",
    })),
  );

  it.each(pairs)(
    "finds a check that goes from $before to $after: $kind",
    ({ before, from, after, to, kind }) => {
      const comparison = compareReports(checked(five, from), checked(five, to));
      expect(comparison.checks.map((moved) => moved.kind)).toEqual(kind === "the same" ? [] : [kind]);
      expect(comparison.differs).toBe(kind === "worse");
      if (kind === "the same") return;
      const text = comparisonText(comparison);
      expect(text).toContain(`wall.nut  ${before} -> ${after}  check ${kind}\n`);
      expect(text).not.toContain("nothing moved");
      expect(comparisonMarkdown(comparison)).toContain(`| wall.nut | ${before} | ${after} | check ${kind} |`);
    },
  );

  it("tells another reason for overruling, but doesn't count it", () => {
    const [a, b] = ["brass nut", "bone,\n  glued"].map((overruled) =>
      checked(five, { status: "refuse", overruled }),
    );
    const comparison = compareReports(a!, b!);
    expect(comparison).toMatchObject({ differs: false, checks: [{ id: "wall.nut", kind: "reason" }] });
    expect(comparisonText(comparison)).toBe(
      "wall.nut  refuse, overruled: brass nut -> refuse, overruled: bone, glued  overruled for another reason\nwithin tolerance\n",
    );
  });

  it("counts a new check that doesn't pass, overruled or not", () => {
    const without = { ...five, checks: five.checks.filter(({ id }) => id !== "wall.nut") };
    const differs = standings.map(([, to]) => compareReports(without, checked(five, to)).differs);
    expect(differs).toEqual([false, true, true, true]);
  });

  it("says the same of equal reports as text and as Markdown", () => {
    const comparison = compareReports(five, five);
    expect(comparisonText(comparison)).toBe("nothing moved\n");
    expect(comparisonMarkdown(comparison)).toBe("**nothing moved**\n");
  });

  it("counts a check that is gone: what it guarded is no longer looked at", () => {
    const fewer: Report = { ...five, checks: five.checks.filter(({ id }) => id !== "wall.nut") };
    expect(compareReports(five, fewer)).toMatchObject({
      differs: true,
      checks: [{ id: "wall.nut", kind: "gone" }],
    });
    expect(compareReports(fewer, five)).toMatchObject({
      differs: false,
      checks: [{ id: "wall.nut", kind: "new" }],
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

describe("a check that only one report looked at", () => {
  const solid: ReportedCheck = {
    ...{ id: "assembly.gap", status: "pass", stake: "spoilage", subject: "assembly", found: 0, limit: 0.01 },
    ...{ unit: "mm", why: "parts that should touch do", source: "measured on the solids" },
  };
  const whole: Report = (({ notLookedAt: _, ...rest }) => ({
    ...rest,
    checks: [...rest.checks, solid],
  }))(five);

  it("is told as not looked at, whichever report left it out, and doesn't count", () => {
    expect(five.notLookedAt).toContain("assembly.gap");
    for (const [before, after] of [
      [whole, five],
      [five, whole],
    ] as const) {
      const { checks, differs } = compareReports(before, after);
      expect(checks).toMatchObject([{ id: "assembly.gap", kind: "not-looked-at" }]);
      expect(differs).toBe(false);
      expect(comparisonText(compareReports(before, after))).toMatch(
        /assembly.gap .*not looked at on one side/,
      );
      expect(comparisonMarkdown(compareReports(before, after))).toContain("not looked at on one side");
    }
  });

  it("that refuses where it was looked at is told no differently, but counts where both looked", () => {
    const refusing = { ...whole, checks: [...five.checks, { ...solid, status: "refuse" as const }] };
    expect(compareReports(five, refusing).differs).toBe(false);
    expect(compareReports(whole, refusing)).toMatchObject({ differs: true, checks: [{ kind: "worse" }] });
  });

  it("is gone where a report neither has it nor says that it wasn't looked at", () => {
    const { notLookedAt: _, ...silent } = five;
    expect(compareReports(whole, silent)).toMatchObject({ differs: true, checks: [{ kind: "gone" }] });
  });

  it("stays in the file, and is left out of one that looked at all", () => {
    expect(readReport(jsonLines(five), "x.json")).toEqual({ ok: true, value: five });
    expect(jsonLines(whole)).not.toContain("notLookedAt");
  });
});
