import { execFileSync } from "node:child_process";
import {
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
import { ordersFolder, top } from "../samples.ts";

const sample = join(ordersFolder, "SY-0422.yaml");
let work = "";

/** Run a command in the folder that the tarball is installed in. */
function run(command: string, args: readonly string[], cwd = join(work, "user")): string {
  return execFileSync(command, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] });
}

beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), "tarball-"));
  const packed = JSON.parse(
    run("npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", work], top),
  );
  const { filename } = Object.values(packed)[0] as { filename: string };
  mkdirSync(join(work, "user"));
  writeFileSync(
    join(work, "user", "package.json"),
    '{ "name": "user", "version": "1.0.0", "type": "module" }',
  );
  run("npm", ["install", "--offline", "--no-audit", "--no-fund", "--loglevel=error", join(work, filename)]);
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

describe("the packed and installed tarball", () => {
  it("makes the same bytes as the checkout, from an order and models of its own", () => {
    const bin = join(work, "user", "node_modules", ".bin", "patternloft");
    writeFileSync(join(work, "user", "SY-0422.yaml"), readFileSync(sample, "utf8"));
    run(bin, ["make", "SY-0422.yaml", "--quiet"]);
    run(process.execPath, [
      join(top, "dist", "cli.js"),
      "make",
      sample,
      "--out",
      join(work, "own"),
      "--quiet",
    ]);
    const [there, here] = [join(work, "user", "out", "SY-0422"), join(work, "own", "SY-0422")];
    const names = readdirSync(here, { recursive: true, encoding: "utf8" }).filter((name) =>
      name.includes("."),
    );
    expect(names.length).toBe(207);
    for (const name of names)
      expect(readFileSync(join(there, name)).equals(readFileSync(join(here, name))), name).toBe(true);
  });

  it("is a library with types, and holds the licences of what it bundles", () => {
    const folder = join(work, "user", "node_modules", "patternloft");
    const script =
      'import { memoryStore, partNames } from "patternloft"; console.log(partNames.join(), typeof memoryStore);';
    expect(run(process.execPath, ["--input-type=module", "-e", script]).trim()).toBe(
      "fingerboard,nut,bridge,tailpiece,neck,head,wing-bass,wing-treble,body,cover function",
    );
    writeFileSync(
      join(work, "user", "use.ts"),
      'import { type Report, compareReports, reportFor } from "patternloft";\n' +
        "export const same = (a: Report) => compareReports(a, a).differs satisfies boolean;\n" +
        "// @ts-expect-error a spec is no text\nreportFor('x');\n",
    );
    const tsc = join(top, "node_modules", "typescript", "bin", "tsc");
    const flags = ["--noEmit", "--strict", "--module", "nodenext", "--target", "es2022", "--types", ""];
    run(process.execPath, [tsc, ...flags, "use.ts"]);
    expect(readFileSync(join(folder, "dist", "THIRD-PARTY.txt"), "utf8")).toContain("yargs");
    expect(existsSync(join(folder, "models", "schemas", "order.json"))).toBe(true);
    expect(existsSync(join(folder, "src"))).toBe(false);
  });

  it("names no path of the machine that it was built on", () => {
    const folder = join(work, "user", "node_modules", "patternloft", "dist");
    for (const name of readdirSync(folder).filter((entry) => entry.endsWith(".js"))) {
      expect(readFileSync(join(folder, name), "utf8").includes(top), name).toBe(false);
    }
  });
});
