import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ordersFolder, orderText, top } from "../samples.ts";

const cli = join(top, "dist", "cli.js");
const sample = join(ordersFolder, "SY-0417.yaml");
let work = "";
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), "cli-"));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

function run(args: readonly string[], env: Record<string, string> = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], {
    cwd: work,
    encoding: "utf8",
    env: { PATH: process.env.PATH ?? "", ...env },
  });
  expect(stderr).not.toMatch(/\n {4}at /);
  return { status, stdout, stderr };
}

/** Every file below a folder with its text. */
function tree(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return Object.fromEntries(
    names
      .map((entry) => join(entry.parentPath, entry.name))
      .map((path) => [path.slice(folder.length), readFileSync(path, "utf8")]),
  );
}

function order(name: string, text: string): string {
  const file = join(work, name);
  writeFileSync(file, text);
  return file;
}

describe("make", () => {
  it("makes the same bytes twice, in other time zones and locales", () => {
    expect(
      run(["make", sample, "--out", "a"], {
        TZ: "Pacific/Auckland",
        LANG: "de_DE.UTF-8",
        LC_ALL: "de_DE.UTF-8",
      }).status,
    ).toBe(0);
    const elsewhere = { TZ: "America/Lima", LANG: "C" };
    expect(run(["make", sample, "--out", "c"], elsewhere).status).toBe(0);
    const pack = tree(join(work, "a", "SY-0417"));
    expect(Object.keys(pack).length).toBe(256);
    expect(tree(join(work, "c", "SY-0417"))).toEqual(pack);
  });

  it("puts a variant beside the order's own pack", () => {
    // The order's own pack stands there from the test before.
    const { status, stdout } = run([
      "make",
      sample,
      "--out",
      "a",
      "--only",
      "nut",
      "--strings",
      "6",
      "--json",
    ]);
    expect(status).toBe(0);
    const [made] = JSON.parse(stdout).packs;
    expect(readdirSync(join(work, "a")).sort()).toEqual([
      "SY-0417",
      `SY-0417~${made.fingerprint.slice(0, 6)}`,
    ]);
  });

  it("keeps messages on standard error and standard output for results", () => {
    const some = ["make", sample, "--only", "nut", "--out", "m"];
    const plain = run(some);
    expect(plain.stdout).toBe("");
    expect(plain.stderr).toContain("SY-0417");
    expect(run([...some, "--quiet"]).stderr).toBe("");
    expect(JSON.parse(run([...some, "--json"]).stdout).packs).toHaveLength(1);
  });

  it("ends with 2 and writes nothing when any order is wrong", () => {
    const bad = order("bad.yaml", orderText("sedge", 3));
    const { status, stderr } = run(["make", sample, bad, "--out", "none"]);
    expect(status).toBe(2);
    expect(stderr).toContain('bad.yaml:3:10: strings: found "3"; allowed: a whole number from 4 to 7');
    expect(existsSync(join(work, "none"))).toBe(false);
  });

  it("ends with 1 when a check refuses, with the rest made and the file named that was held back", () => {
    const models = join(work, "yard");
    cpSync(join(top, "models"), models, { recursive: true });
    const design = join(models, "designs", "sedge.yaml");
    const text = readFileSync(design, "utf8");
    const thick = text.replace(
      /(nut\.wall:\n {4}value: )1\.5 mm\n( {4}least: .*\n {4}most: )3 mm/,
      "$14.6 mm\n$25 mm",
    );
    expect(thick).not.toBe(text);
    writeFileSync(design, thick);
    const mine = join(models, "orders", "SY-0417.yaml");
    const { status, stderr, stdout } = run(["make", mine, "--out", "held", "--only", "nut,bridge", "--json"]);
    expect(status).toBe(1);
    expect(stderr).toMatch(/held back nut: wall\.nut refuses/);
    const { folder } = JSON.parse(stdout).packs[0];
    const outlines = readdirSync(join(work, folder, "outlines"));
    expect(outlines.filter((name) => name.startsWith("nut"))).toEqual([]);
    expect(outlines).toContain("bridge.dxf");
    writeFileSync(
      mine,
      `${readFileSync(mine, "utf8")}overrule:\n  - { check: wall.nut, reason: brass nut }\n`,
    );
    const overruled = run(["make", mine, "--out", "held", "--only", "nut", "--json"]);
    expect(overruled.status).toBe(0);
    expect(overruled.stderr).toMatch(/^ {2}refuse, overruled: brass nut; wall\.nut: /m);
    const [made] = JSON.parse(overruled.stdout).packs;
    expect(made.overruled).toEqual([
      { id: "wall.nut", why: expect.stringMatching(/./), reason: "brass nut" },
    ]);
    expect(made.held).toEqual([]);
    const checked = run(["check", mine]);
    expect(checked.status).toBe(0);
    expect(checked.stdout).toMatch(/^ {2}refuse, overruled: brass nut; wall\.nut: /m);
    writeFileSync(mine, readFileSync(mine, "utf8").replace("check: wall.nut", "check: wall.nutt"));
    expect(run(["check", mine])).toMatchObject({
      status: 2,
      stderr: expect.stringContaining("did you mean wall.nut?"),
    });
  });

  it("publishes none of several packs when the place of one holds something else", () => {
    mkdirSync(join(work, "z", "SY-0418"), { recursive: true });
    writeFileSync(join(work, "z", "SY-0418", "letter.txt"), "mine");
    const other = join(ordersFolder, "SY-0418.yaml");
    expect(run(["make", sample, other, "--out", "z"]).status).toBe(2);
    expect(tree(join(work, "z"))).toEqual({ "/SY-0418/letter.txt": "mine" });
  });

  it("refuses two orders of one number, an unknown part and a place that is no pack", () => {
    expect(run(["make", sample, sample, "--out", "x"])).toMatchObject({
      status: 2,
      stderr: expect.stringContaining("has too"),
    });
    expect(run(["make", sample, "--out", "x", "--only", "bride"]).stderr).toContain("did you mean bridge?");
    expect(existsSync(join(work, "x"))).toBe(false);
    cpSync(ordersFolder, join(work, "y", "SY-0417"), { recursive: true });
    expect(run(["make", sample, "--out", "y"])).toMatchObject({
      status: 2,
      stderr: expect.stringContaining("holds no manifest.json of a pack"),
    });
    expect(existsSync(join(work, "y", "SY-0417", "SY-0417.yaml"))).toBe(true);
  });
});

describe("check, approve and compare", () => {
  it("print the report, keep it, and find just what moved", () => {
    const models = join(work, "own");
    cpSync(join(top, "models"), models, { recursive: true });
    const mine = join(models, "orders", "SY-0417.yaml");
    expect(run(["approve", mine]).status).toBe(0);
    const approved = join(models, "approved", "SY-0417.json");
    // What needs the assembled solids stands in what is kept; check names it, and puts none together.
    const kept = JSON.parse(readFileSync(approved, "utf8"));
    const printed = run(["check", mine, "--json"]).stdout;
    const { notLookedAt, ...rest } = JSON.parse(printed);
    const skipped = kept.checks.filter(({ id }: { id: string }) => id.startsWith("assembly."));
    expect(notLookedAt).toEqual(skipped.map(({ id }: { id: string }) => id));
    expect(notLookedAt.length).toBeGreaterThan(0);
    expect(rest).toEqual({
      ...kept,
      checks: kept.checks.filter(({ id }: { id: string }) => !notLookedAt.includes(id)),
    });
    const compared = run(["compare", approved, order("checked.json", printed)]);
    expect(compared.status).toBe(0);
    expect(compared.stdout.match(/not looked at on one side/g)).toHaveLength(notLookedAt.length);
    expect(run(["make", mine, "--out", "r"]).status).toBe(0);
    expect(run(["compare", approved, "r/SY-0417"])).toMatchObject({ status: 0, stdout: "nothing moved\n" });
    const text = readFileSync(approved, "utf8");
    const moved = order(
      "moved.json",
      text.replace(/("id":"bridge.height".*?"value":)([\d.]+)/, (_, head, x) => `${head}${Number(x) + 0.5}`),
    );
    const { status, stdout } = run(["compare", approved, moved]);
    expect(status).toBe(1);
    expect(stdout.match(/beyond/g)).toHaveLength(2);
    expect(JSON.parse(run(["compare", approved, moved, "--json"]).stdout).dimensions).toHaveLength(1);
    expect(run(["compare", approved, moved, "--format", "markdown"]).stdout).toContain("| bridge.height |");
    expect(run(["compare", approved, "nothing.json"]).status).toBe(2);
    expect(run(["compare", approved, mine]).status).toBe(2);
  });
});

describe("new", () => {
  it("writes an order that checks, and never over another", () => {
    expect(run(["new", "SY-0500.yaml"]).status).toBe(0);
    expect(run(["check", "SY-0500.yaml"]).status).toBe(0);
    const before = readFileSync(join(work, "SY-0500.yaml"), "utf8");
    expect(run(["new", "SY-0500.yaml"]).status).toBe(2);
    expect(readFileSync(join(work, "SY-0500.yaml"), "utf8")).toBe(before);
    expect(run(["new", "a name with spaces.yaml"]).status).toBe(2);
  });
});

describe("the command line", () => {
  it("helps with examples, completes and tells its version", () => {
    for (const command of ["make", "check", "compare", "approve", "new"]) {
      const { status, stdout } = run([command, "--help"]);
      expect(status).toBe(0);
      expect(stdout).toContain("Examples:");
    }
    expect(run(["--version"]).stdout.trim()).toBe(
      JSON.parse(readFileSync(join(top, "package.json"), "utf8")).version,
    );
    expect(run(["completion"]).stdout).toContain("patternloft");
    expect(run(["--get-yargs-completions", "patternloft", "co"]).stdout).toContain("compare");
  });

  it.each<[string[], string]>([
    [["mkae", sample], "make"],
    [["check", sample, "--stings", "5"], "strings"],
    [["check"], "orders"],
    [[], "patternloft --help"],
    [["check", sample, "--set", "string.length"], "NAME=VALUE"],
    [["check", sample, "--set", "string.lenght=3"], "did you mean string.length?"],
    [["check", "nowhere.yaml"], "no such file"],
    [["check", "."], "a folder"],
    [["check", "/dev/null"], "a device"],
    [["compare", sample, sample, "--format", "xml"], "xml"],
  ])("%j ends with 2 and says what to try", (args, said) => {
    const { status, stdout, stderr } = run(args);
    expect(status).toBe(2);
    expect(stdout).toBe("");
    expect(stderr).toContain(said);
  });

  it("tells problems as data with --json", () => {
    const { status, stdout } = run(["check", order("p.yaml", orderText("sedge", 9)), "--json"]);
    expect(status).toBe(2);
    expect(JSON.parse(stdout).problems[0]).toMatchObject({
      name: "strings",
      position: { line: 3, column: 10 },
    });
  });
});
