import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { reportFor } from "../../src/pack/report-for.ts";
import { filesMarkdown } from "../../src/report/comparison-files.ts";
import { comparisonMarkdown, comparisonText } from "../../src/report/comparison-text.ts";
import { jsonLines } from "../../src/report/json-lines.ts";
import { memoryStore } from "../../src/step/store.ts";
import { designs, specOf, top } from "../samples.ts";
import { readTables } from "./read-tables.ts";

type Row = { readonly id: string; readonly value: number; readonly tolerance: number };

const work = mkdtempSync(join(tmpdir(), "four-and-five-"));
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** A report as a file; its rows are read from the text and not from the report. */
function written(name: string, text: string) {
  const file = join(work, `${name}.json`);
  writeFileSync(file, text);
  return { file, text, rows: JSON.parse(text).dimensions as readonly Row[] };
}

const textOf = (design: string, count: number) => jsonLines(reportFor(specOf(design, count), memoryStore()));

function compare(...args: string[]) {
  const cli = join(top, "dist", "cli.js");
  const { status, stdout, stderr } = spawnSync(process.execPath, [cli, "compare", ...args], {
    encoding: "utf8",
  });
  expect(stderr).not.toMatch(/\n {4}at /);
  return { status, stdout };
}

/** What moved, by the numbers as they are written: their ids and how. */
function movedRows(four: readonly Row[], five: readonly Row[]): Record<string, string> {
  const [old, now] = [four, five].map((rows) => new Map(rows.map((row) => [row.id, row.value])));
  const ids = [...new Set([...old!.keys(), ...now!.keys()])];
  const how = (id: string) => (!old!.has(id) ? "new" : !now!.has(id) ? "gone" : "changed");
  return Object.fromEntries(
    ids.filter((id) => old!.get(id) !== now!.get(id)).map((id) => [id, how(id)] as const),
  );
}

describe("compare of four against five strings", () => {
  it.each(Object.keys(designs))("of %s lists every number that moved, and nothing that did not", (design) => {
    const [four, five] = [4, 5].map((count) => written(`${design}-${count}`, textOf(design, count)));
    const { status, stdout } = compare(four!.file, five!.file, "--json");
    const { dimensions } = JSON.parse(stdout);
    const said = Object.fromEntries(
      dimensions.map(({ id, kind }: { id: string; kind: string }) => [id, kind]),
    );
    const wanted = movedRows(four!.rows, five!.rows);
    expect(said).toEqual(wanted);
    // The comparison would be no test of anything if all moved, or nothing of one kind.
    const stayed = four!.rows.length - Object.values(wanted).filter((how) => how !== "new").length;
    expect(stayed).toBeGreaterThan(four!.rows.length / 4);
    expect(new Set(Object.values(wanted))).toEqual(new Set(["changed", "new", ...goneOf(wanted)]));
    expect(status).toBe(1);
  });

  const goneOf = (wanted: Record<string, string>) => (Object.values(wanted).includes("gone") ? ["gone"] : []);

  it("ends with 0 under the tolerance and with 1 over it, for one number that is moved", () => {
    const { file, text, rows } = written("own", textOf("sedge", 5));
    const { value, tolerance } = rows.find(({ id }) => id === "bridge.height")!;
    const moved = (by: number) => {
      const changed = text.replace(/("id":"bridge\.height".*?"value":)[\d.]+/, `$1${value + by}`);
      expect(changed).not.toBe(text);
      return compare(file, written(`moved-${by}`, changed).file);
    };
    expect(moved(0.9 * tolerance)).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/^bridge\.height .*\nwithin tolerance\n$/),
    });
    expect(moved(1.1 * tolerance)).toMatchObject({
      status: 1,
      stdout: expect.stringMatching(/^bridge\.height .*\ndiffers beyond tolerance\n$/),
    });
    expect(compare(file, file)).toEqual({ status: 0, stdout: "nothing moved\n" });
  });

  it("says whose the reports are before anything else", () => {
    const { text, file } = written("first", textOf("sedge", 5));
    const other = written("other", text.replace('"order": "T-1"', '"order": "T-2"'));
    expect(other.text).not.toBe(text);
    expect(compare(file, other.file)).toEqual({
      status: 0,
      stdout: "order: T-1 before, T-2 after\nnothing moved\n",
    });
    const head = ["order: T-1 before, T-2 after"];
    const told = comparisonText(
      { head, dimensions: [], checks: [], differs: false },
      "outlines/nut  dxf  new\n",
    );
    expect(told).toBe(`${head[0]}\noutlines/nut  dxf  new\nnothing moved\n`);
  });
});

describe("the Markdown of a comparison", () => {
  it("renders: every row of its tables has its cells, numbers stand to the right", () => {
    const [four, five] = [4, 5].map((count) => written(`rendered-${count}`, textOf("sedge", count)));
    const { stdout } = compare(four!.file, five!.file, "--format", "markdown");
    const tables = readTables(stdout);
    const moved = tables.find(({ head }) => head[0] === "dimension")!;
    expect(moved.rows.map(([id]) => id).sort()).toEqual(
      Object.keys(movedRows(four!.rows, five!.rows)).sort(),
    );
    expect(moved.right).toEqual([false, true, true, true, false, true, false]);
    expect(stdout.startsWith("**differs beyond tolerance**\n\n- strings: 4 before, 5 after\n\n|")).toBe(true);
    const numbers = moved.rows.map(([, before, after]) => [Number(before), Number(after)]);
    expect(numbers.filter(([a, b]) => Number.isFinite(a) && Number.isFinite(b)).length).toBeGreaterThan(20);
  });

  it("renders with a bar and line ends in a reason, and with files", () => {
    const check = {
      ...({ id: "wall.nut", kind: "reason", before: "refuse", after: "refuse" } as const),
      overruled: { before: "brass | bone", after: "one\n| two |\nthree" },
    };
    const text = comparisonMarkdown({ head: [], dimensions: [], checks: [check], differs: false });
    const files = filesMarkdown([{ name: "a|b", endings: ["dxf", "svg"], kind: "changed", picture: null }]);
    const [checks, moved] = readTables(text + files);
    expect(checks!.rows).toEqual([
      [
        "wall.nut",
        "refuse, overruled: brass | bone",
        "refuse, overruled: one | two | three",
        "overruled for another reason",
      ],
    ]);
    expect(moved!.rows).toEqual([["a|b", "dxf, svg", "changed", ""]]);
  });

  it.each([
    ["a lost line of dashes", /\| ---.*\n/, "", /no table/],
    ["a bar that isn't escaped", /\| bridge\.height \|/, "| bridge | height |", /8 cells, not 7/],
    ["a lost cell", / beyond 0\.1 mm \|/, "", /6 cells, not 7/],
    ["a row that isn't ended", / beyond 0\.1 mm \|/, " beyond 0.1 mm", /no row/],
  ])("is found not to render with %s", (_, from, to, fault) => {
    const moved = {
      ...({ id: "bridge.height", kind: "changed", before: 35, after: 36, unit: "mm" } as const),
      ...{ tolerance: 0.1, beyond: true },
    };
    const text = comparisonMarkdown({ head: [], dimensions: [moved], checks: [], differs: true });
    expect(readTables(text)).toHaveLength(1);
    const planted = text.replace(from, to);
    expect(planted).not.toBe(text);
    expect(() => readTables(planted)).toThrow(fault);
  });
});
