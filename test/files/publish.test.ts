import { fork } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { NotAPackError, publish } from "../../src/files/publish.ts";

let out = "";
beforeEach(() => {
  out = mkdtempSync(join(tmpdir(), "packs-"));
});
afterEach(() => rmSync(out, { recursive: true, force: true }));

const pack = (text: string) => [
  { path: "manifest.json", text },
  { path: "outlines/a.dxf", text },
];
const held = (name = "P") => readdirSync(join(out, name), { recursive: true, encoding: "utf8" }).sort();
const manifest = () => readFileSync(join(out, "P", "manifest.json"), "utf8");

describe("publishing", () => {
  it("puts a pack into its place and replaces it whole", async () => {
    await publish(out, "P", [...pack("one"), { path: "extra.txt", text: "x" }]);
    await publish(out, "P", pack("two"));
    expect(held()).toEqual(["manifest.json", "outlines", "outlines/a.dxf"]);
    expect(manifest()).toBe("two");
    expect(readdirSync(out)).toEqual(["P"]);
  });

  it("leaves a folder alone that is no pack", async () => {
    await mkdir(join(out, "P"));
    writeFileSync(join(out, "P", "letter.txt"), "mine");
    await expect(publish(out, "P", pack("one"))).rejects.toThrow(NotAPackError);
    expect(held()).toEqual(["letter.txt"]);
  });

  it("leaves the old pack whole when the new one can't be written", async () => {
    await publish(out, "P", pack("one"));
    const bad = [...pack("two"), { path: "manifest.json/not-a-folder", text: "x" }];
    await expect(publish(out, "P", bad)).rejects.toThrow();
    expect(manifest()).toBe("one");
    expect(readdirSync(out)).toEqual(["P"]);
  });

  it("puts the old pack back that a killed run left beside its place", async () => {
    await publish(out, "P", pack("one"));
    renameSync(join(out, "P"), join(out, ".P.old"));
    await expect(
      publish(out, "P", [
        { path: "a/b", text: "x" },
        { path: "a", text: "y" },
      ]),
    ).rejects.toThrow();
    expect(manifest()).toBe("one");
    await publish(out, "P", pack("two"));
    expect(manifest()).toBe("two");
    expect(readdirSync(out)).toEqual(["P"]);
  });

  it("clears what a dead run left half written, and leaves a living one's", async () => {
    await mkdir(join(out, ".P.new-999999999"));
    await mkdir(join(out, `.P.new-${process.ppid}`));
    await publish(out, "P", pack("one"));
    expect(readdirSync(out).sort()).toEqual([`.P.new-${process.ppid}`, "P"].sort());
  });

  it("killed at any moment, leaves one pack whole, and the next run mends the rest", async () => {
    const script = join(out, "run.mjs");
    const source = join(import.meta.dirname, "..", "..", "src", "files", "publish.ts");
    writeFileSync(
      script,
      `import { publish } from ${JSON.stringify(source)};
       const files = Array.from({ length: 60 }, (_, i) => ({ path: "f" + i, text: "new" }));
       for (let n = 0; ; n++) {
         await publish(${JSON.stringify(out)}, "P", [{ path: "manifest.json", text: "new" }, ...files]);
         if (n === 0) process.send("ready");
       }`,
    );
    const outcomes = new Set<string>();
    for (let i = 0; i < 14; i++) {
      const child = fork(script, {
        execArgv: ["--import", "tsx"],
        stdio: ["ignore", "ignore", "inherit", "ipc"],
      });
      await new Promise((resolve) => child.once("message", resolve));
      await new Promise((resolve) => setTimeout(resolve, 15 + 7 * i));
      child.kill("SIGKILL");
      await new Promise((resolve) => child.once("exit", resolve));
      const names = readdirSync(out);
      const whole = names.filter((name) => name === "P" || name === ".P.old");
      expect(whole.length).toBeGreaterThan(0);
      outcomes.add(
        names
          .filter((name) => name !== "run.mjs")
          .map((name) => name.replace(/\d+/, ""))
          .sort()
          .join(" "),
      );
      if (names.includes("P")) expect(held().length).toBe(61);
    }
    expect(outcomes.size).toBeGreaterThan(1);
    await publish(out, "P", pack("last"));
    expect(manifest()).toBe("last");
    expect(readdirSync(out).sort()).toEqual(["P", "run.mjs"]);
  });
});
