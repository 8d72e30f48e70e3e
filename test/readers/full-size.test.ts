import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { fullSize } from "../../src/drawing/tiles/full-size.ts";
import type { FullSize } from "../../src/drawing/tiles/laid-out.ts";
import type { Page } from "../../src/drawing/tiles/tile-page.ts";
import { circle } from "../../src/geometry/circle.ts";
import type { Paper } from "../../src/order/shop.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { frettedSpec, specOf, top } from "../samples.ts";
import { type Job, pdfTools, readSheets } from "./read-sheets.ts";
import { describeWith, python } from "./tool.ts";

const store = memoryStore();
const title = {
  ...{
    order: "SY-0417",
    part: "part",
    fingerprint: "0123456789ab",
    hand: "right" as const,
    seenFrom: "front",
  },
  overruled: [],
};

/** What is laid out of one drawing of an order. */
function drawing(spec: Spec, name: string, paper: Paper): FullSize {
  const file = flatsOf(spec).find((flat) => flat.name === name);
  if (file === undefined) throw new Error(`${name} is no drawing of this order`);
  const model = modelOf(spec, store);
  const flat = file.of(model, store).value;
  return {
    flat,
    remarks: file.remarks?.(model, store),
    title: { ...title, name },
    paper,
    fromNumbers: file.fromNumbers?.(spec),
  };
}

const folder = mkdtempSync(join(tmpdir(), "full-size-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const laid = (name: string, given: FullSize, between?: readonly [string, string]): Job => {
  return { name, given, pages: fullSize(given).pages, ...(between && { between }) };
};

const sedge = specOf("sedge", 5);
const bulrush = specOf("bulrush", 5);
const papers = sedge.shop.paper;
const paper = (id: string) => papers.find((each) => each.id === id)!;
const a4 = paper("A4");

/** A drawing of three rows of sheets, with arcs both ways and a hole. */
const threeRows: Flat = {
  shapes: [
    {
      layer: "OUTER-EDGE",
      path: {
        closed: true,
        points: [
          { x: 0, y: 0, bulge: 0.3 },
          { x: 700, y: 0, bulge: -0.1 },
          { x: 690, y: 240, bulge: 0 },
          { x: 20, y: 230, bulge: 0.02 },
        ],
      },
    },
    { layer: "BORE-8_00", path: circle({ x: 500, y: 100 }, 4) },
  ],
  notes: [],
};
const measuredPrinter: Paper = { ...a4, scale: [0.985, 1.012] };

describeWith(pdfTools, "full-size sheets, read by another program", () => {
  it("hold every drawing whole, inside the margins, joined at the match marks, on each of the shop's papers", async () => {
    const jobs = [
      ...flatsOf(sedge).map(({ name }) => laid(`sedge ${name}`, drawing(sedge, name, a4))),
      ...["body", "fingerboard"].map((name) => laid(`thrift ${name}`, drawing(frettedSpec(7), name, a4))),
      ...papers.map((each) =>
        laid(`bulrush ${each.id}`, drawing(bulrush, "neck-plan", each), ["NUT", "BRIDGE"]),
      ),
      laid("large", { ...drawing(sedge, "nut", a4), flat: threeRows }),
      laid("left", drawing({ ...sedge, hand: "left" }, "wing-bass", a4)),
      laid("corrected", drawing(bulrush, "neck-plan", measuredPrinter), ["NUT", "BRIDGE"]),
      laid("corrected roll", drawing(bulrush, "neck-side", { ...paper("roll-610"), scale: [1.01, 0.99] })),
    ];
    const read = await readSheets(folder, jobs);
    for (const [name, { faults, square, inside, smallest, covered }] of read) {
      expect({ name, faults }).toEqual({ name, faults: [] });
      expect(square).toBeLessThan(0.02);
      expect(inside).toBeGreaterThanOrEqual(0);
      expect(smallest).toBeGreaterThanOrEqual(2.499);
      expect(covered).toBeLessThan(0.02);
    }
    // Every note stands in full, whether as a label, at the foot or on a page of its own.
    for (const { name, given } of jobs) {
      const words = read.get(name)!.words.join(" ");
      for (const { text } of given.flat.notes) expect(words, name).toContain(text.replace(/ +/g, " ").trim());
    }
    expect(read.get("sedge wing-treble-router")!.words.join(" ")).toContain("REMARKS AND CAUTIONS");
    for (const name of [...papers.map(({ id }) => `bulrush ${id}`), "corrected"])
      expect(Math.abs(read.get(name)!.between! - dimensionOf(bulrush, "string.length")), name).toBeLessThan(
        0.1,
      );
    const several = [...read.values()].filter(({ pages }) => pages > 1);
    expect(several.length).toBeGreaterThan(10);
    for (const { matches } of several) expect(matches).toBeGreaterThanOrEqual(6);
    expect(read.get("bulrush roll-610")!.pages).toBe(1);
    expect(read.get("bulrush A4")!.pages).toBeGreaterThan(3);
    const large = read.get("large")!;
    expect(large.pages).toBe(9);
    // Every join has three marks, found from either side: three sheets in each of three rows.
    expect(large.matches).toBe(3 * 2 * (3 * 2 + 2 * 3));
  });

  it("give a 100 mm square within 0.1 when they are rendered at 600 dpi, and white margins", async () => {
    const read = (await readSheets(folder, [laid("bridge", drawing(sedge, "bridge", a4))])).get("bridge")!;
    const script = join(top, "test", "readers", "measure_square.py");
    const found = python(script, join(folder, "0.pdf"), String(a4.margin), JSON.stringify(read.corner)) as {
      width: number;
      height: number;
      margin: number;
      ink: number;
    };
    expect(Math.abs(found.width - 100)).toBeLessThan(0.1);
    expect(Math.abs(found.height - 100)).toBeLessThan(0.1);
    expect(found.margin).toBe(0);
    expect(found.ink).toBeGreaterThan(10_000);
  });

  it("show a sheet that is moved, a scale that is off, a lost outline, a lost mark and ink in the margin", async () => {
    const given = drawing(sedge, "neck-plan", a4);
    const { pages } = fullSize(given);
    const second = (change: (page: Page) => Page) => pages.map((page, i) => (i === 1 ? change(page) : page));
    const groups = (
      page: Page,
      change: (group: Page["groups"][number]) => Page["groups"][number] | undefined,
    ) => ({
      ...page,
      groups: page.groups.flatMap((group) => change(group) ?? []),
    });
    const moved = (by: number, of: RegExp) => (page: Page) =>
      groups(page, (group) =>
        of.test(group.name) ? { ...group, shift: { ...group.shift, x: group.shift.x + by } } : group,
      );
    const planted: Record<string, readonly Page[]> = {
      "drawing moved": second(moved(1, /^(layer|notes)/)),
      "marks moved": second(moved(1, /^match/)),
      "one mark moved": second(moved(0.1, /^match.*1$/)),
      "all scaled": pages.map((page) => ({ ...page, scale: [1.01, 1.01] as const })),
      "x scaled": pages.map((page) => ({ ...page, scale: [0.99, 1] as const })),
      "outline lost": second((page) =>
        groups(page, (group) => (/^layer.(PART|OUTER)/.test(group.name) ? undefined : group)),
      ),
      "mark lost": second((page) =>
        groups(page, (group) => (/^match.*2$/.test(group.name) ? undefined : group)),
      ),
      "square lost": second((page) => groups(page, (group) => (group.name === "square" ? undefined : group))),
      "ink in the margin": second(moved(-4, /^foot/)),
    };
    const read = await readSheets(
      folder,
      Object.entries(planted).map(([name, pages]) => ({ name, given, pages })),
    );
    const said = Object.fromEntries([...read].map(([name, { faults }]) => [name, faults.join("; ")]));
    expect(said["drawing moved"]).toMatch(/the model is (0\.\d|1)/);
    expect(said["marks moved"]).toMatch(/the model is (0\.\d|1)/);
    expect(said["one mark moved"]).toMatch(/don't match/);
    expect(said["all scaled"]).toMatch(/square/);
    expect(said["x scaled"]).toMatch(/square/);
    expect(said["outline lost"]).toMatch(/the model is/);
    expect(said["mark lost"]).toMatch(/share 2 marks/);
    expect(said["square lost"]).toMatch(/0 of square/);
    expect(said["ink in the margin"]).toMatch(/outside the printable area/);
  });
});
