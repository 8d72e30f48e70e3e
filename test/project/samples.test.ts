import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { loadOrder } from "../../src/pack/load.ts";
import { type Pack, packOf } from "../../src/pack/pack.ts";
import { reportFor } from "../../src/pack/report-for.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { compareReports } from "../../src/report/compare.ts";
import { readReport } from "../../src/report/read-report.ts";
import { memoryStore } from "../../src/step/store.ts";
import { designs, orderFiles, ordersFolder, top } from "../samples.ts";

const models = join(top, "models");

function specOfSample(name: string) {
  const store = memoryStore();
  const spec = loadOrder(join(ordersFolder, `${name}.yaml`), store);
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
  return { store, spec: spec.value };
}

/** The parts that the pictures show. */
const pictured = ["fingerboard", "bridge", "neck"];

const solids = solidsHere(kernelOnce());

const made = new Map<string, Promise<Pack>>();

/** The parts of a sample that pictures are of, made once however many pictures are looked at. */
function packOfSample(name: string): Promise<Pack> {
  const known = made.get(name);
  if (known !== undefined) return known;
  const { store, spec } = specOfSample(name);
  const pack = packOf(spec, { store, solids, only: pictured });
  made.set(name, pack);
  return pack;
}

describe("the samples", () => {
  it("have orders of every design, of every count from 4 to 7, and of both hands", () => {
    const specs = orderFiles.map((file) => specOfSample(basename(file, ".yaml")).spec);
    expect([...new Set(specs.map(({ design }) => design))].sort()).toEqual(Object.keys(designs).sort());
    expect([...new Set(specs.map(({ count }) => count))].sort()).toEqual([4, 5, 6, 7]);
    expect(new Set(specs.map(({ hand }) => hand)).size).toBe(2);
    for (const [i, { order }] of specs.entries()) expect(order).toBe(basename(orderFiles[i]!, ".yaml"));
  });

  it.each(orderFiles.map((file) => basename(file, ".yaml")))("%s agrees with its approved report", (name) => {
    const { store, spec } = specOfSample(name);
    const file = join(models, "approved", `${name}.json`);
    const approved = readReport(readFileSync(file, "utf8"), file);
    if (!approved.ok) throw new Error(JSON.stringify(approved.problems));
    expect(compareReports(approved.value, reportFor(spec, store))).toMatchObject({ differs: false });
  });

  it.each(readdirSync(join(models, "pictures")))(
    "the picture %s is what the program makes today",
    async (picture) => {
      const [, order, name] = /^(SY-\d+)-([\w-]+\.svg)$/.exec(picture) ?? [];
      const { files } = await packOfSample(order!);
      const made = files.find(({ path }) => path === `outlines/${name}`);
      expect(readFileSync(join(models, "pictures", picture), "utf8")).toBe(made?.content);
    },
  );
});

describe("what is committed", () => {
  it("says nowhere that anything is safe, and names no path of a machine", () => {
    const folders = ["src", "models", ".ci", "test"].map((folder) => join(top, folder));
    const files = folders.flatMap((folder) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name)),
    );
    expect(files.length).toBeGreaterThan(150);
    const faults = files.flatMap((file) => {
      const text = readFileSync(file, "utf8");
      const paths = text.match(/["' (]\/(work|root|home)\/\w/g) ?? [];
      const safe = file.includes("/test/") ? [] : (text.match(/\b(is|are|as) safe\b|\bsafely\b/gi) ?? []);
      return [...paths, ...safe].map((what) => `${file}: ${what}`);
    });
    expect(faults).toEqual([]);
  });
});
