import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sampleText, top } from "../samples.ts";

/** The script that the README shows for a service that runs commands. */
const script = /```sh\n(#!\/bin\/sh\n.*?)```/s.exec(readFileSync(join(top, "README.md"), "utf8"))![1]!;

let work = "";
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), "review-script-"));
  cpSync(join(top, "models"), join(work, "models"), { recursive: true });
  for (const folder of ["orders", "approved"]) rmSync(join(work, "models", folder), { recursive: true });
  for (const folder of ["models/orders", "models/approved", "bin"])
    mkdirSync(join(work, folder), { recursive: true });
  writeFileSync(join(work, "models", "orders", "SY-0417.yaml"), sampleText("orders", "SY-0417.yaml"));
  writeFileSync(join(work, "models", "approved", "SY-0417.json"), sampleText("approved", "SY-0417.json"));
  const shim = `#!/bin/sh\nexec "${process.execPath}" "${join(top, "dist", "cli.js")}" "$@"\n`;
  writeFileSync(join(work, "bin", "patternloft"), shim, { mode: 0o755 });
  writeFileSync(join(work, "review"), script, { mode: 0o755 });
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

const run = () => {
  const path = [join(work, "bin"), process.env.PATH].join(delimiter);
  return spawnSync("sh", ["review"], { cwd: work, encoding: "utf8", env: { ...process.env, PATH: path } });
};
const written = (name: string) => readFileSync(join(work, name), "utf8");

describe("the README's review script", () => {
  it("ends with 1 and both reviews where something moved, with 2 for what can't be read", () => {
    const approved = join(work, "models", "approved", "SY-0417.json");
    const text = sampleText("approved", "SY-0417.json");
    const moved = text.replace(/("id":"bridge\.height".*?"value":)([\d.]+)/, (_, head, value) => {
      return `${head}${Number(value) + 0.5}`;
    });
    expect(moved).not.toBe(text);
    writeFileSync(approved, moved);
    expect(run().status).toBe(1);
    expect(written("review.md")).toMatch(/\*\*1 of 1 orders moved, differs beyond tolerance\*\*/);
    expect(written("review.md")).toContain("| bridge.height | SY-0417 |");
    expect(written("review.xml")).toMatch(/<testsuites [^>]*failures="1"/);
    expect(written("review.xml")).toMatch(/<testcase name="bridge\.height"[^>]*>\s*<failure /);

    const order = join(work, "models", "orders", "SY-0417.yaml");
    rmSync(join(work, "review.md"));
    writeFileSync(order, "order: [\n");
    expect(run().status).toBe(2);
    expect(() => written("review.md")).toThrow("ENOENT");
  }, 180_000);
});
