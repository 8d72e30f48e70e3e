import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { approvedFolder, diskLibrary } from "../../src/files/library.ts";
import { loadOrder } from "../../src/pack/load.ts";
import { memoryStore } from "../../src/step/store.ts";
import { orderText, sampleText } from "../samples.ts";

let yard = "";
beforeEach(() => {
  yard = mkdtempSync(join(tmpdir(), "yard-"));
  for (const folder of ["orders", "designs"]) mkdirSync(join(yard, folder));
  writeFileSync(join(yard, "orders", "o.yaml"), orderText("sedge", 5));
});
afterEach(() => rmSync(yard, { recursive: true, force: true }));

const order = () => join(yard, "orders", "o.yaml");
const problem = () => {
  const spec = loadOrder(order(), memoryStore());
  return spec.ok ? "it loads" : spec.problems[0];
};

describe("the library on disk", () => {
  it("takes the nearest design, and the shipped one where there is none", () => {
    expect(problem()).toBe("it loads");
    writeFileSync(
      join(yard, "designs", "sedge.yaml"),
      sampleText("designs", "sedge.yaml").replace("title: electric", "title: my"),
    );
    const spec = loadOrder(order(), memoryStore());
    expect(spec.ok && spec.value.title).toMatch(/^my violin/);
    expect(diskLibrary(order()).names("designs")).toEqual(["bulrush", "mallow", "sedge", "thrift"]);
    expect(approvedFolder(order())).toBe(join(yard, "approved"));
  });

  it.each<[string, (path: string) => void, string]>([
    ["a folder", (path) => mkdirSync(path), "a folder"],
    ["a link that leads nowhere", (path) => symlinkSync(join(yard, "gone"), path), "no such file"],
    [
      "bytes that are no UTF-8",
      (path) => writeFileSync(path, Buffer.from([0xff, 0xfe, 0x00])),
      "bytes that are no UTF-8",
    ],
    ["a pipe", (path) => void execFileSync("mkfifo", [path]), "a device or a pipe"],
  ])("tells %s in a design's place, and doesn't fall back on another design", (_, make, found) => {
    make(join(yard, "designs", "sedge.yaml"));
    expect(problem()).toMatchObject({
      code: "unreadable",
      found,
      position: { file: expect.stringContaining("sedge.yaml") },
    });
  });

  it("tells a file in the place of strings.yaml that is a folder, and passes by a folder of designs that is a file", () => {
    mkdirSync(join(yard, "strings.yaml"));
    expect(problem()).toMatchObject({ code: "unreadable", found: "a folder" });
    rmSync(join(yard, "strings.yaml"), { recursive: true });
    rmSync(join(yard, "designs"), { recursive: true });
    writeFileSync(join(yard, "designs"), "");
    expect(problem()).toBe("it loads");
  });
});
