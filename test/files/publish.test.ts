import { spawnSync } from "node:child_process";
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { mkdir } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { NotAPackError, publish } from "../../src/files/publish.ts";

let out = "";
beforeEach(() => {
  out = mkdtempSync(join(tmpdir(), "packs-"));
});
afterEach(() => rmSync(out, { recursive: true, force: true }));

/** A pack of an order, with further files that its manifest lists. */
const pack = (order: string, ...more: readonly string[]) => {
  const files = ["outlines/a.dxf", ...more].map((path) => ({ path, content: order }));
  const listed = files.map(({ path }) => ({ path }));
  return [{ path: "manifest.json", content: JSON.stringify({ order, files: listed }) }, ...files];
};
const held = (name = "P") => readdirSync(join(out, name), { recursive: true, encoding: "utf8" }).sort();
const manifest = () => orderIn(join(out, "P"));
const orderIn = (folder: string): string =>
  JSON.parse(readFileSync(join(folder, "manifest.json"), "utf8")).order;

describe("publishing", () => {
  it("puts a pack into its place and replaces it whole", async () => {
    await publish(out, "P", pack("one", "extra.txt"));
    await publish(out, "P", pack("two"));
    expect(held()).toEqual(["manifest.json", "outlines", "outlines/a.dxf"]);
    expect(manifest()).toBe("two");
    expect(readdirSync(out)).toEqual(["P"]);
  });

  it.each<[string, Record<string, string>, string]>([
    ["no manifest", { "letter.txt": "mine" }, "holds no manifest.json of a pack"],
    ["nothing at all", {}, "holds no manifest.json of a pack"],
    ["a manifest that is no JSON", { "manifest.json": "mine" }, "holds no manifest.json of a pack"],
    ["a manifest that is null", { "manifest.json": "null" }, "holds no manifest.json of a pack"],
    [
      "a page's manifest",
      { "manifest.json": '{"name":"page","start_url":"/"}', "index.html": "mine" },
      "holds no manifest.json of a pack",
    ],
    ["a manifest without files", { "manifest.json": '{"order":"P"}' }, "holds no manifest.json of a pack"],
    [
      "a manifest whose order is a number",
      { "manifest.json": '{"order":1,"files":[]}' },
      "holds no manifest.json of a pack",
    ],
    [
      "a manifest whose files have no paths",
      { "manifest.json": '{"order":"P","files":["a",null]}' },
      "holds no manifest.json of a pack",
    ],
    [
      "a file beside the pack's",
      { "manifest.json": '{"order":"P","files":[{"path":"a.dxf"}]}', "a.dxf": "x", "letter.txt": "mine" },
      "holds letter.txt, which is not of its pack",
    ],
    [
      "a file deep below, and a manifest that is not the pack's own",
      { "manifest.json": '{"order":"P","files":[]}', "bench/mine/manifest.json": "mine" },
      "holds bench/mine/manifest.json, which is not of its pack",
    ],
  ])("leaves a folder alone that holds %s, and says what is not ours", async (_, files, said) => {
    await mkdir(join(out, "P"));
    for (const [path, text] of Object.entries(files)) {
      await mkdir(dirname(join(out, "P", path)), { recursive: true });
      writeFileSync(join(out, "P", path), text);
    }
    const before = held();
    const told = await publish(out, "P", pack("one")).catch((error: unknown) => error);
    expect(told).toBeInstanceOf(NotAPackError);
    expect((told as Error).message).toContain(`${join(out, "P")} `);
    expect((told as Error).message).toContain(said);
    expect(held()).toEqual(before);
    for (const [path, text] of Object.entries(files)) {
      expect(readFileSync(join(out, "P", path), "utf8")).toBe(text);
    }
    expect(readdirSync(out)).toEqual(["P"]);
  });

  it.each(["file", "link to a pack", "link to nowhere"])(
    "leaves a place alone that is a %s",
    async (what) => {
      const place = join(out, "P");
      if (what === "file") writeFileSync(place, "mine");
      else symlinkSync("elsewhere", place);
      if (what === "link to a pack") await publish(out, "elsewhere", pack("one"));
      const told = publish(out, "P", pack("two"));
      await expect(told).rejects.toThrow(what === "file" ? "P is a file" : "P is a symbolic link");
      if (what === "file") expect(readFileSync(place, "utf8")).toBe("mine");
      else expect(readlinkSync(place)).toBe("elsewhere");
      if (what === "link to a pack") expect(orderIn(join(out, "elsewhere"))).toBe("one");
    },
  );

  it("makes the folders above, and names the place where none can be made", async () => {
    await publish(join(out, "a", "b"), "P", pack("one"));
    expect(orderIn(join(out, "a", "b", "P"))).toBe("one");
    writeFileSync(join(out, "file"), "mine");
    symlinkSync("nowhere", join(out, "link"));
    for (const name of ["file", "link"]) {
      const error = { code: "EEXIST", syscall: "mkdir", path: join(out, name) };
      await expect(publish(join(out, name), "P", pack("one"))).rejects.toMatchObject(error);
      await expect(publish(join(out, name, "below", "it"), "P", pack("one"))).rejects.toMatchObject(error);
    }
  });

  it.runIf(existsSync("/proc/self"))("ends in a place where the system makes no folders", async () => {
    const error = { code: "ENOENT", syscall: "mkdir", path: "/proc/packs" };
    await expect(publish("/proc/packs", "P", pack("one"))).rejects.toMatchObject(error);
  });

  it("leaves the old pack beside its place when a stranger has taken the place", async () => {
    await publish(out, "P", pack("one"));
    renameSync(join(out, "P"), join(out, ".P.old"));
    await mkdir(join(out, "P"));
    await expect(publish(out, "P", pack("two"))).rejects.toThrow(NotAPackError);
    expect(orderIn(join(out, ".P.old"))).toBe("one");
  });

  it("replaces a pack that a file has gone from", async () => {
    await publish(out, "P", pack("one", "extra.txt"));
    rmSync(join(out, "P", "extra.txt"));
    await publish(out, "P", pack("two"));
    expect(manifest()).toBe("two");
  });

  it("leaves the old pack whole when the new one can't be written", async () => {
    await publish(out, "P", pack("one"));
    const bad = [...pack("two"), { path: "manifest.json/not-a-folder", content: "x" }];
    await expect(publish(out, "P", bad)).rejects.toThrow();
    expect(manifest()).toBe("one");
    expect(readdirSync(out)).toEqual(["P"]);
  });

  it("puts the old pack back that a killed run left beside its place", async () => {
    await publish(out, "P", pack("one"));
    renameSync(join(out, "P"), join(out, ".P.old"));
    await expect(
      publish(out, "P", [
        { path: "a/b", content: "x" },
        { path: "a", content: "y" },
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
  const folder = join(place, name);
  return `${orderIn(folder)} ${readFileSync(join(folder, "outlines/a.dxf"), "utf8")}`;
}

/** A program that publishes a new pack and is killed before or after its n-th call of the file system. */
function killedAt(library: string): string {
  return `
    import fs from "node:fs/promises";
    import { syncBuiltinESMExports } from "node:module";
    const [, , place, when, n] = process.argv;
    let calls = 0;
    const die = () => process.kill(process.pid, "SIGKILL");
    for (const name of ["stat", "lstat", "readFile", "mkdir", "writeFile", "rename", "rm", "readdir"]) {
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
    await publish(place, "P", ${JSON.stringify(pack("new"))});`;
}
