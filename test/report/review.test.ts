import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { approvedPath, loadComparable } from "../../src/pack/comparable.ts";
import { comparePair, compareSets } from "../../src/pack/compare-packs.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { compareFiles } from "../../src/report/compare-files.ts";
import { filesMarkdown, filesText } from "../../src/report/comparison-files.ts";
import { jsonLines } from "../../src/report/json-lines.ts";
import { junitXml } from "../../src/report/junit.ts";
import { movedFiles } from "../../src/report/moved-files.ts";
import { movedTable, setsDiffer } from "../../src/report/moved-table.ts";
import type { Report } from "../../src/report/report.ts";
import { memoryStore } from "../../src/step/store.ts";
import { describeWith } from "../readers/tool.ts";
import { specOf, top } from "../samples.ts";

const five = reportFor(specOf("sedge", 5), memoryStore());
const work = mkdtempSync(join(tmpdir(), "review-"));
afterAll(() => rmSync(work, { recursive: true, force: true }));

function moved(by: number, id = "bridge.height"): Report {
  expect(five.dimensions.map((dimension) => dimension.id)).toContain(id);
  return {
    ...five,
    dimensions: five.dimensions.map((d) => (d.id === id ? { ...d, value: d.value + by } : d)),
  };
}

/** A pack's folder with a report and a manifest that lists some files. */
function pack(path: string, report: Report, prints: Record<string, string> = {}): string {
  const folder = join(work, path);
  mkdirSync(folder, { recursive: true });
  const text = jsonLines(report);
  const own = {
    path: "dimensions.json",
    what: "",
    fingerprint: null,
    sha256: createHash("sha256").update(text).digest("hex"),
  };
  const files = Object.entries(prints).map(([path, fingerprint]) => ({
    path,
    what: "",
    sha256: "",
    fingerprint,
  }));
  writeFileSync(join(folder, "dimensions.json"), text);
  writeFileSync(join(folder, "manifest.json"), jsonLines({ order: report.order, files: [...files, own] }));
  return folder;
}

const ok = <T>(checked: { ok: true; value: T } | { ok: false; problems: readonly unknown[] }): T => {
  if (!checked.ok) throw new Error(JSON.stringify(checked.problems));
  return checked.value;
};

describe("packs that are compared", () => {
  const prints = {
    "outlines/nut.dxf": "a",
    "outlines/nut.svg": "a",
    "outlines/nut.stl": "b",
    "full-size/nut.pdf": "c",
  };
  const old = pack("old/T-1", five, prints);
  const now = pack("new/T-1", moved(0.3), {
    ...prints,
    "outlines/nut.dxf": "d",
    "outlines/nut.svg": "d",
    "plots/x.svg": "e",
  });

  it("say which files rest on something else, with the picture to look at", () => {
    const { files, comparison } = ok(comparePair(old, now));
    expect(files).toEqual([
      { name: "outlines/nut", endings: ["dxf", "svg"], kind: "changed", picture: "outlines/nut.svg" },
      { name: "plots/x", endings: ["svg"], kind: "new", picture: "plots/x.svg" },
    ]);
    expect(comparison.dimensions.map(({ id }) => id)).toEqual(["bridge.height"]);
    expect(filesMarkdown(files!)).toContain("| outlines/nut | dxf, svg | changed | `outlines/nut.svg` |");
    expect(filesText(files!)).toContain("outlines/nut  dxf, svg  changed\n");
    expect(ok(comparePair(now, old)).files!.map(({ kind }) => kind)).toEqual(["changed", "gone"]);
    expect(ok(comparePair(join(old, "dimensions.json"), now)).files).toBeNull();
    expect(compareFiles([], [])).toEqual([]);
  });

  it("are held against the approved report where only one is given", () => {
    mkdirSync(join(work, "models", "approved"), { recursive: true });
    writeFileSync(join(work, "models", "approved", "T-1.json"), jsonLines(five));
    expect(ok(comparePair(now, undefined)).comparison.differs).toBe(true);
    expect(ok(comparePair(old, undefined)).comparison.differs).toBe(false);
    const other = pack("new/T-2", { ...five, order: "T-2" });
    expect(comparePair(other, undefined)).toMatchObject({
      ok: false,
      problems: [{ found: "no approved report of T-2", hint: expect.stringContaining("approve") }],
    });
    expect(approvedPath(join(work, "models", "approved", "T-1.json"), "T-1").ok).toBe(false);
    rmSync(other, { recursive: true });
  });

  it("stand in one table over all orders, by what moved", () => {
    pack("old/T-3", { ...five, order: "T-3", hand: "left" });
    pack("new/T-3", { ...moved(0.3), order: "T-3", hand: "left" });
    pack("old/T-4", { ...five, order: "T-4" });
    pack("new/T-5", { ...five, order: "T-5" });
    const sets = ok(compareSets(join(work, "old"), join(work, "new")));
    expect({ fresh: sets.fresh, gone: sets.gone, differs: setsDiffer(sets) }).toEqual({
      fresh: ["T-5"],
      gone: ["T-4"],
      differs: true,
    });
    const table = movedTable(sets, "markdown");
    expect(table).toMatch(/\*\*2 of 2 orders moved, differs beyond tolerance\*\*/);
    expect(
      table.match(/\| bridge\.height \| T-[13] \| sedge 5 (right|left) \| [\d.]+ \| [\d.]+ mm \| beyond \|/g),
    ).toHaveLength(2);
    expect(movedTable(sets, "text")).toMatch(/^bridge\.height {2}T-1 {2}sedge 5 right/);
    const files = movedFiles(sets.all, "markdown");
    expect(files).toContain("| outlines/nut | T-1 | dxf, svg | changed | `T-1/outlines/nut.svg` |");
    expect(files.match(/^\| (outlines|plots)\//gm)).toHaveLength(
      sets.all.flatMap((one) => one.files ?? []).length,
    );
    expect(movedFiles(sets.all, "text")).toContain("outlines/nut  T-1  dxf, svg  changed\n");
    const alike = ok(compareSets(join(work, "old"), join(work, "old")));
    expect([movedFiles(alike.all, "markdown"), movedFiles(alike.all, "text")]).toEqual(["", ""]);
    expect(compareSets(join(work, "old"), join(work, "nowhere"))).toMatchObject({
      ok: false,
      problems: [{ found: "no such folder" }],
    });
    expect(compareSets(old, join(work, "old"))).toMatchObject({ ok: true });
    expect(compareSets(join(work, "new"), undefined)).toMatchObject({
      ok: true,
      value: { fresh: ["T-3", "T-5"], gone: [], all: [{ name: "T-1" }] },
    });
  });
});

describe("a report that can't be used", () => {
  const text = jsonLines(five);
  it.each([
    ["of another version", text.replace("{\n", '{\n  "version": 2,\n'), "version", "a report of version 2"],
    ["cut off", text.slice(0, 5000), "the report", "no JSON"],
    [
      "with a lost field",
      text.replace(/"design":"[^"]*"|"design": "[^"]*"/, '"desing": "x"'),
      "design",
      /expected string/,
    ],
    [
      "with a line twice",
      text.replace(/( {4}\{"id":"bridge\.height".*\n)/, "$1$1"),
      "bridge.height",
      "an id that stands here twice",
    ],
    ["that is another thing", '{ "files": [] }', "order", /expected string/],
  ])("%s is told with what to try", (_, damaged, name, found) => {
    expect(damaged).not.toBe(text);
    const file = join(work, "damaged.json");
    writeFileSync(file, damaged);
    const read = loadComparable(file);
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems[0]).toMatchObject({
      name,
      found: typeof found === "string" ? found : expect.stringMatching(found),
      hint: expect.stringMatching(/pack again/),
    });
    expect(read.problems.length).toBeLessThanOrEqual(20);
  });

  it("in a pack whose manifest says otherwise, or has none that can be read, is told too", () => {
    const folder = pack("changed/T-1", five);
    writeFileSync(join(folder, "dimensions.json"), jsonLines(moved(1)));
    expect(loadComparable(folder)).toMatchObject({
      ok: false,
      problems: [{ found: expect.stringContaining("manifest") }],
    });
    writeFileSync(join(folder, "manifest.json"), "{");
    expect(loadComparable(folder)).toMatchObject({
      ok: false,
      problems: [{ name: "the manifest", found: "no JSON" }],
    });
    writeFileSync(join(folder, "manifest.json"), "{}");
    expect(loadComparable(folder)).toMatchObject({
      ok: false,
      problems: [{ found: expect.stringContaining("no list") }],
    });
  });
});

const xmllint = { name: "libxml2-utils", command: "xmllint", args: ["--version"] };

describeWith(xmllint, "JUnit XML", () => {
  const valid = (text: string) => {
    const file = join(work, "junit.xml");
    writeFileSync(file, text);
    execFileSync("xmllint", ["--noout", "--schema", join(top, "test", "report", "junit.xsd"), file], {
      stdio: "pipe",
    });
    return (path: string) => execFileSync("xmllint", ["--xpath", path, file], { encoding: "utf8" }).trim();
  };

  it("is valid, has a case for every dimension and check, and fails just what makes the comparison differ", () => {
    const odd = { ...moved(0.3), order: "T-1" };
    const checks = odd.checks.map((c) =>
      c.id === "wall.nut" ? { ...c, status: "refuse" as const, why: 'thin & "short" <1>\u0007' } : c,
    );
    const dimensions = odd.dimensions.map((d) =>
      d.id === "nut.width" ? { ...d, value: d.value + 0.01 } : d,
    );
    const compared = ok(
      comparePair(
        pack("a/T-1", five, { "outlines/nut.dxf": "a" }),
        pack("b/T-1", { ...odd, dimensions, checks }, { "outlines/nut.dxf": "b" }),
      ),
    );
    const at = valid(junitXml([compared, { ...compared, name: "T-2" }]));
    expect(at("count(//testsuite)")).toBe("6");
    expect(at("string(/testsuites/@tests)")).toBe(
      String(2 * (five.dimensions.length + five.checks.length + 1)),
    );
    expect(at("string(/testsuites/@failures)")).toBe("4");
    expect(at("string(//testsuite[1]/@tests)")).toBe(String(five.dimensions.length));
    expect(at("string(//testsuite[1]//testcase[failure]/@name)")).toBe("bridge.height");
    expect(at("string(//testsuite[2]//testcase[failure]/@name)")).toBe("wall.nut");
    expect(at("string(//testsuite[2]//failure/@message)")).toContain('thin & "short" <1>');
    expect(at('string(//testsuite[1]/testcase[@name="nut.width"]/system-out)')).toMatch(
      /^changed: .* tolerance 0\.1 mm$/,
    );
    expect(at("count(//testsuite[3]//failure)")).toBe("0");
    expect(
      valid(junitXml([ok(comparePair(join(work, "a/T-1"), join(work, "a/T-1")))]))(
        "string(/testsuites/@failures)",
      ),
    ).toBe("0");
    expect(valid(junitXml([]))("count(//testsuite)")).toBe("0");
    const lost = valid(junitXml([compared], ["T-9"]));
    expect(lost('string(//testsuite[@name="orders"]/testcase[failure]/@name)')).toBe("T-9");
    expect(lost("string(/testsuites/@failures)")).toBe("3");
    expect(() => valid(junitXml([compared, compared]))).toThrow();
    expect(() => valid(junitXml([compared]).replace(/ time="0"/, ""))).toThrow();
  });
});
