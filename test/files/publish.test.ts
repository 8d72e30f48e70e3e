import { spawnSync } from "node:child_process";
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

  it("removes what is left of an old pack whose removal was cut short", async () => {
    await publish(out, "P", pack("one"));
    await mkdir(join(out, ".P.old", "outlines"), { recursive: true });
    await publish(out, "P", pack("two"));
    expect(manifest()).toBe("two");
    expect(readdirSync(out)).toEqual(["P"]);
  });

  it("killed before or after any step, leaves one pack whole, and the next run mends the rest", async () => {
    const script = join(out, "killed.mjs");
    writeFileSync(script, killedAt(join(import.meta.dirname, "..", "..", "dist", "index.js")));
    const seen: string[] = [];
    for (const when of ["before", "after"]) {
      for (let n = 1; ; n++) {
        const place = join(out, `${when}-${n}`);
        await publish(place, "P", pack("old"));
        const { signal, status, stderr } = spawnSync(process.execPath, [script, place, when, String(n)], {
          encoding: "utf8",
        });
        const names = readdirSync(place);
        const whole = names
          .filter((name) => name === "P" || name === ".P.old")
          .map((name) => textIn(place, name));
        expect(whole.length, `${when} ${n}: ${stderr}`).toBeGreaterThan(0);
        for (const texts of whole) expect(["old old", "new new"]).toContain(texts);
        seen.push(
          names
            .map((name) => name.replace(/-\d+$/, ""))
            .sort()
            .join(" "),
        );
        await publish(place, "P", pack("last"));
        expect([textIn(place, "P"), readdirSync(place)]).toEqual(["last last", ["P"]]);
        if (signal === null) {
          expect(status).toBe(0);
          break;
        }
      }
    }
    expect(new Set(seen)).toEqual(new Set(["P", ".P.new P", ".P.new .P.old", ".P.old P"]));
  });
});

/** Both files of a pack as one text. */
function textIn(place: string, name: string): string {
  return ["manifest.json", "outlines/a.dxf"]
    .map((file) => readFileSync(join(place, name, file), "utf8"))
    .join(" ");
}

/** A program that publishes a new pack and is killed before or after its n-th call of the file system. */
function killedAt(library: string): string {
  return `
    import fs from "node:fs/promises";
    import { syncBuiltinESMExports } from "node:module";
    const [, , place, when, n] = process.argv;
    let calls = 0;
    const die = () => process.kill(process.pid, "SIGKILL");
    for (const name of ["mkdir", "writeFile", "rename", "rm", "readdir"]) {
      const real = fs[name];
      fs[name] = async (...args) => {
        const last = ++calls === Number(n);
        if (last && when === "before") die();
        const result = await real(...args);
        if (last && when === "after") die();
        return result;
      };
    }
    syncBuiltinESMExports();
    const { publish } = await import(${JSON.stringify(library)});
    await publish(place, "P", [{ path: "manifest.json", text: "new" }, { path: "outlines/a.dxf", text: "new" }]);`;
}
