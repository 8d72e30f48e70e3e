import { beforeAll, describe, expect, it } from "vitest";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { type Pack, packOf } from "../../src/pack/pack.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { memoryStore } from "../../src/step/store.ts";
import { specOf } from "../samples.ts";

describe("what goes to the bench with a pack", () => {
  let pack: Pack;
  beforeAll(async () => {
    // A bit so short that the set-up is refused.
    const spec = specOf(
      "sedge",
      5,
      "fixtures:\n  wing-treble-router: { machine: hand-router, cutter: straight-6, guide: bush-16 }\n",
    );
    pack = await packOf(spec, { store: memoryStore(), solids: solidsHere(kernelOnce()) });
  });
  const paths = () => pack.files.map(({ path }) => path);
  const text = (path: string) => String(pack.files.find((file) => file.path === path)!.content);

  it("has each set-up's sheet to print and to look at, and none of a refused one", () => {
    const made = pack.files
      .map(({ path }) => /^fixtures\/(.+)\.dxf$/.exec(path)?.[1])
      .filter((name) => name !== undefined);
    expect(made.length).toBeGreaterThan(3);
    for (const name of made) {
      const own = paths().filter((path) => path.startsWith(`bench/set-up-${name}`));
      expect(
        own.some((path) => path.endsWith(".pdf")),
        name,
      ).toBe(true);
      expect(
        own.some((path) => path.endsWith(".svg")),
        name,
      ).toBe(true);
    }
    expect(pack.held.map(({ file }) => file)).toContain("wing-treble-router");
    expect(made).not.toContain("wing-treble-router");
    expect(paths().filter((path) => path.includes("set-up-wing-treble-router"))).toEqual([]);
    expect(paths()).toContain("bench/set-up-wing-treble-saw-rim.pdf");
  });

  it("has a traveller that names what is refused and held back, and bears the order's fingerprint", () => {
    const pages = paths().filter((path) => /^bench\/traveller.*\.svg$/.test(path));
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) expect(text(page)).toContain(pack.report.fingerprint);
    expect(text("bench/traveller.svg")).toContain("WING-TREBLE-ROUTER, FRONT UP: ");
    const own = pack.held.filter(({ file }) => file === "wing-treble-router");
    for (const { check } of own)
      expect(text("bench/traveller.svg")).toContain(
        `- WING-TREBLE-ROUTER: ${check.split(".")[0]!.toUpperCase()}.`,
      );
    expect(paths()).toContain("bench/traveller.pdf");
  });

  it("bears the order's fingerprint nowhere else in print", () => {
    const { fingerprint } = pack.report;
    const bearing = pack.files.filter(({ content }) => Buffer.from(content as string).includes(fingerprint));
    const told = ["checks.json", "dimensions.json", "dimensions.md", "index.html", "manifest.json"];
    for (const { path } of bearing)
      expect(told.includes(path) || path.startsWith("bench/traveller"), path).toBe(true);
  });

  it("is listed on the contents page", () => {
    const page = text("index.html");
    for (const path of paths().filter((one) => one.startsWith("bench/")))
      expect(page).toContain(`href="${path}"`);
  });
});
