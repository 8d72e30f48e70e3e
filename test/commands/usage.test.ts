import { spawnSync } from "node:child_process";
import {
  closeSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { taken, usageProblems } from "../../src/commands/usage-problems.ts";
import { ordersFolder, top } from "../samples.ts";

const cli = join(top, "dist", "cli.js");
const sample = join(ordersFolder, "SY-0417.yaml");
let work = "";
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), "usage-"));
  writeFileSync(join(work, "file"), "mine");
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

function run(...args: string[]) {
  const options = { cwd: work, encoding: "utf8", timeout: 20_000 } as const;
  const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], options);
  expect(stderr).not.toMatch(/\n {4}at |Error:/);
  return { status, stdout, stderr };
}

describe("the options of each command", () => {
  it.each(Object.keys(taken).filter((name) => name !== "completion"))(
    "%s are what its help lists",
    (name) => {
      const listed = [
        ...run(name, "--help")
          .stdout.split("Examples:")[0]!
          .matchAll(/^ +--([a-z]+)/gm),
      ].map(([, option]) => option);
      expect([...taken[name]!.options].sort()).toEqual(listed.sort());
    },
  );
});

describe("a wrong command line", () => {
  it.each<[string[], ...string[]]>([
    [["check", sample, "--out", "x"], "found --out;", "check takes no --out; make does"],
    [["approve", sample, "--set", "a=b"], "approve takes no --set; make and check do"],
    [["check", sample, "--strigns", "5"], "found --strigns;", "did you mean --strings?"],
    [["make", sample, "-out", "x"], "found -out;", "did you mean --out?"],
    [["make", sample, "--no-out"], "found --no-out;"],
    [["chek", sample], 'found "chek";', "did you mean check?"],
    [[], "command: found none; allowed: make, check"],
    [["check"], "what to work on is missing"],
    [["compare", "a", "b", "c"], "found c too; allowed: two reports or packs after compare"],
    [["check", sample, "--strings"], "strings: found nothing after --strings"],
    [["check", sample, "--set"], "set: found nothing after --set"],
    [["check", sample, "--strings="], "strings: found nothing, an empty text", "give --strings a value"],
    [["check", sample, "--hand", ""], "hand: found nothing, an empty text"],
    [["make", sample, "--out", ""], "out: found nothing, an empty text"],
    [["make", sample, "--only", ""], "only: found nothing, an empty text"],
    [["new", ""], "file: found nothing, an empty text"],
    [["check", sample, "--strings", "5", "--strings", "6"], "strings: found --strings given twice"],
    [["check", sample, "--hand", "left", "--hand=left"], "hand: found --hand given twice"],
    [["make", sample, "--out", "a", "--out", "b"], "out: found --out given twice"],
    [["compare", "a", "b", "--format", "text", "--format", "json"], "format: found --format given twice"],
    [["compare", "a", "b", "--format", "xml"], 'format: found "xml"; allowed: text, markdown, json'],
    [["--", "check", sample], "found --;", "./-name"],
    [["check", "--", sample], "found --;", "./-name"],
    [["check", sample, "--", sample], "found --;", "./-name"],
  ])("%j ends with 2, writes nothing, says what was found and what to try", (args, ...said) => {
    const before = readdirSync(work);
    const { status, stdout, stderr } = run(...args);
    for (const words of said) expect(stderr).toContain(words);
    expect([status, stdout, readdirSync(work)]).toEqual([2, "", before]);
  });

  it("never suggests the very words that were typed", () => {
    for (const [command, { options }] of Object.entries(taken)) {
      for (const name of new Set(Object.values(taken).flatMap((takes) => takes.options))) {
        const [found] = usageProblems(`Unknown argument: ${name}`, [command, "x", `--${name}`]);
        if (!options.includes(name)) expect(found!.hint).toContain(`${command} takes no --${name}; `);
        expect(found!.hint).not.toContain(`did you mean --${name}?`);
      }
    }
  });

  it("takes no value of an option for another option or for a command", () => {
    const args = ["--out", "chek", "make", "--set", "a=b", "--otu"];
    expect(usageProblems("Unknown argument: otu", args).map(({ found }) => found)).toEqual(["--otu"]);
  });

  it("is told as data with --json", () => {
    const { status, stdout } = run("check", sample, "--json", "--out", "x");
    expect(status).toBe(2);
    expect(JSON.parse(stdout).problems).toMatchObject([{ code: "unknown-key", name: "out", found: "--out" }]);
  });
});

describe("--only", () => {
  it("takes one name or several with commas, may be repeated, and stands before or after the orders", () => {
    const made = [
      ["make", "--only", "nut,bridge", sample, "--out", "o1"],
      ["make", "--only", "nut", "--only", "bridge", sample, "--out", "o2"],
      ["make", sample, "--out", "o3", "--only", "nut", "--only=bridge"],
    ].map((args) => {
      const { status, stdout } = run(...args, "--json", "--quiet");
      expect(status).toBe(0);
      return JSON.parse(stdout).packs[0].folder.slice(3);
    });
    expect(new Set(made).size).toBe(1);
    expect(readdirSync(join(work, "o1", made[0]!, "outlines"))).toEqual(
      expect.arrayContaining(["bridge.dxf", "nut.dxf"]),
    );
    expect(run("make", "--only", "nut,", sample, "--out", "o4")).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('only: found ""'),
    });
  });
});

describe("a place that can't be written to", () => {
  it.each<[string[], string]>([
    [["make", sample, "--only", "nut", "--out", "file"], "out: found file, which is no folder"],
    [["make", sample, "--only", "nut", "--out", "file/below"], "out: found file, which is no folder"],
    [["new", "file/order.yaml"], "file: found file, which is no folder"],
    [["make", sample, "--only", "nut", "--out", "x".repeat(300)], "a longer name than the disk takes"],
  ])("%j ends with 2 and says what is in the way", (args, said) => {
    const { status, stderr } = run(...args);
    expect(stderr).toContain(said);
    expect(status).toBe(2);
    expect(JSON.parse(run(...args, "--json").stdout).problems).toHaveLength(1);
    expect(readFileSync(join(work, "file"), "utf8")).toBe("mine");
  });

  it("is a pack's place that is a symbolic link", () => {
    mkdirSync(join(work, "linked"));
    symlinkSync("elsewhere", join(work, "linked", "SY-0417"));
    const { status, stderr } = run("make", sample, "--out", "linked");
    expect(status).toBe(2);
    expect(stderr).toContain(`${join("linked", "SY-0417")}, which is a symbolic link`);
  });

  it("is a folder where a report would be kept", () => {
    const models = join(work, "models");
    cpSync(join(top, "models"), models, { recursive: true });
    const kept = join(models, "approved", "SY-0417.json");
    rmSync(kept, { force: true });
    mkdirSync(kept, { recursive: true });
    const { status, stderr } = run("approve", join(models, "orders", "SY-0417.yaml"));
    expect(status).toBe(2);
    expect(stderr).toContain(`${join("models", "approved", "SY-0417.json")}, which is a folder`);
    expect(readdirSync(kept)).toEqual([]);
  });

  it.runIf(existsSync("/proc/self"))("ends where the system makes no folders", () => {
    expect(run("make", sample, "--only", "nut", "--out", "/proc/packs").status).toBe(2);
    expect(run("new", "/proc/orders/a.yaml").status).toBe(2);
  });

  it.runIf(existsSync("/sys/kernel"))("is the machine's where permission is missing, even root's", () => {
    const { status, stdout } = run("make", sample, "--only", "nut", "--out", "/sys/packs", "--json");
    expect(status).toBe(3);
    expect(["EACCES", "EPERM", "EROFS"]).toContain(JSON.parse(stdout).failed.code);
  });

  it.runIf(existsSync("/dev/full"))("is a full disk that results go to", () => {
    const full = openSync("/dev/full", "w");
    const { status, stderr } = spawnSync(process.execPath, [cli, "check", sample], {
      ...{ encoding: "utf8", stdio: ["ignore", full, "pipe"] },
    });
    closeSync(full);
    expect(stderr).toMatch(/^failed: no room on the disk/);
    expect(status).toBe(3);
  });
});

describe("a comparison with nothing", () => {
  it("asks for a pack, not for a new order", () => {
    mkdirSync(join(work, "empty"));
    for (const [name, found] of [
      ["missing.json", "no such file;"],
      ["empty", "no such file in this folder"],
    ]) {
      const { status, stderr } = run("compare", name!, name!);
      expect(status).toBe(2);
      expect(stderr).toContain(found);
      expect(stderr).toContain("patternloft make ORDER");
      expect(stderr).not.toContain("patternloft new");
    }
  });
});
