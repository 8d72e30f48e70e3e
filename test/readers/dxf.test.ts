import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { orderFiles } from "../samples.ts";
import type { Read, Row } from "./dxf-read.ts";
import { madeParts, type Numbers } from "./made-parts.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

const script = join(import.meta.dirname, "read_dxf.py");
/** The parts that these drawings are of: nothing else of a pack is looked at. */
const parts = ["fingerboard", "nut", "bridge", "neck", "head"];
const names = ["fingerboard", "nut", "bridge", "neck-plan", "neck-side", "head-face"];

/** Whether a drawing is a left-hand one's. */
function mirrors({ texts }: Read): boolean {
  return texts.some(({ text }) => text.startsWith("LEFT HAND"));
}

/** A bore's middle and diameter as its outline's box has them. */
function boreOf({ layer, bounds }: Row) {
  const [x1, y1, x2, y2] = bounds!;
  return { layer, x: (x1 + x2) / 2, y: (y1 + y2) / 2, diameter: (x2 - x1 + y2 - y1) / 2 };
}

/** Where a neck's core is measured: 10 mm before the bridge. */
function coreAt([folder, report]: [string, Record<string, number>]): string {
  return `${join(folder, "outlines", "neck-plan.dxf")}=${report["string.length"]! - 10}`;
}

describeWith(ezdxf, "every DXF of every sample, opened by ezdxf and shapely", () => {
  let out = "";
  let read: Record<string, Read> = {};
  let values = new Map<string, Numbers>();

  beforeAll(async () => {
    out = mkdtempSync(join(tmpdir(), "dxf-"));
    values = await madeParts(out, parts);
    const files = [...values.keys()].flatMap((folder) =>
      names.map((name) => join(folder, "outlines", `${name}.dxf`)),
    );
    read = python(script, ...files, "--core", ...[...values].map(coreAt)) as Record<string, Read>;
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  it("has no error and needs no fix, and is in millimetres", () => {
    expect(Object.keys(read).length).toBe(orderFiles.length * names.length);
    for (const [file, { errors, fixes, units, measurement }] of Object.entries(read)) {
      expect({ errors, fixes, units, measurement }, file).toEqual({
        errors: [],
        fixes: [],
        units: 4,
        measurement: 1,
      });
    }
  });

  it("has only closed paths where something is cut, true arcs, no shape twice, colours by layer", () => {
    let arcs = 0;
    for (const [file, { paths }] of Object.entries(read)) {
      const cut = paths.filter(({ layer }) => /^(OUTER-EDGE|INNER-EDGE|PART|RECESS-|BORE-)/.test(layer));
      expect(cut.length, file).toBeGreaterThan(1);
      for (const { closed, valid, area } of cut) {
        expect(closed && valid, file).toBe(true);
        expect(area, file).toBeGreaterThan(0);
      }
      for (const { type, colour, bulges } of paths) {
        expect(type).toBe("LWPOLYLINE");
        expect(colour).toBe(256);
        for (const bulge of bulges) expect(Math.abs(bulge)).toBeLessThanOrEqual(1);
      }
      arcs += cut.flatMap(({ bulges }) => bulges).filter((bulge) => bulge !== 0).length;
      const once = paths
        .filter(({ layer }) => layer !== "PART" && layer !== "NOTE")
        .map((row) => JSON.stringify(row));
      expect(new Set(once).size).toBe(once.length);
    }
    expect(arcs).toBeGreaterThan(100);
  });

  it("has the widths that the report has, at the nut, at x = 100 and at every station", () => {
    for (const [folder, report] of values) {
      const { widths } = read[join(folder, "outlines", "fingerboard.dxf")]!;
      const [nut, taper] = [
        report["fingerboard.width.nut"]!,
        report["fingerboard.width.100"]! - report["fingerboard.width.nut"]!,
      ];
      expect(Math.abs(widths["0.001"]! - nut - taper / 1e5)).toBeLessThan(0.001);
      for (const x of ["100", "50", "150", "200", "250"]) {
        const said = report[`fingerboard.width.${x}`];
        if (x === "100") expect(said).toBeDefined();
        if (said !== undefined) expect(Math.abs(widths[x]! - said), `${folder} ${x}`).toBeLessThan(0.001);
      }
    }
  });

  it("has a neck as wide as its board at the nut and at x = 100, and as its core under the bridge", () => {
    for (const [folder, report] of values) {
      const { widths } = read[join(folder, "outlines", "neck-plan.dxf")]!;
      const off = (x: string, said: number) => Math.abs(widths[x]! - said);
      const taper = report["fingerboard.width.100"]! - report["fingerboard.width.nut"]!;
      expect(off("0.001", report["fingerboard.width.nut"]! + taper / 1e5), folder).toBeLessThan(0.001);
      expect(off("100", report["fingerboard.width.100"]!), folder).toBeLessThan(0.001);
      const tapers = Math.tan((report["core.taper"]! * Math.PI) / 180) * 2;
      const at = report["string.length"]! - 10;
      expect(off("core", report["core.width"]! - 10 * tapers), `${folder} ${at}`).toBeLessThan(0.001);
    }
  });

  it("has necks of at most 80 lines and arcs an outline", () => {
    for (const file of Object.keys(read).filter((name) => name.includes("neck-"))) {
      const outer = read[file]!.paths.filter(({ layer }) => layer === "OUTER-EDGE");
      expect(outer).toHaveLength(1);
      expect(outer[0]!.bulges.length, file).toBeLessThanOrEqual(80);
      expect(outer[0]!.bulges.filter((bulge) => bulge !== 0).length, file).toBeGreaterThan(8);
    }
  });

  it("has the rods' channels in the neck's plan, each closed, at its depth, with the area of a slot with round ends", () => {
    const counts = [...values].map(([folder, report]) => {
      const all = read[join(folder, "outlines", "neck-plan.dxf")]!.paths;
      const sunk = all.filter(({ layer }) => layer.startsWith("RECESS-"));
      // A pickup's cradle is sunk into the core, where no rod begins.
      const channels = sunk.filter(({ bounds }) => bounds![0] < report["core.start"]!);
      expect(sunk.length - channels.length, folder).toBe(report["cradle.depth"] === undefined ? 0 : 1);
      const of = (id: string) => report[`rod.${id}`]!;
      expect(channels.length, folder).toBe(of("count"));
      for (const { layer, area, closed, bounds } of channels) {
        expect([layer, closed]).toEqual([`RECESS-${of("depth").toFixed(2).replace(".", "_")}`, true]);
        const slot = (of("length") - of("width")) * of("width") + (Math.PI * of("width") ** 2) / 4;
        expect(Math.abs(area! - slot), folder).toBeLessThan(0.05);
        expect(Math.abs(bounds![0] - of("start"))).toBeLessThan(1e-3);
        expect(Math.abs(bounds![2] - of("start") - of("length"))).toBeLessThan(1e-3);
      }
      const middles = channels.map(({ bounds }) => (bounds![1] + bounds![3]) / 2).sort((a, b) => a - b);
      const wanted = [[], [0], [-of("offset"), of("offset")]][of("count")]!;
      for (const [k, y] of wanted.entries()) expect(Math.abs(middles[k]! - y)).toBeLessThan(1e-3);
      return channels.length;
    });
    expect(new Set(counts)).toEqual(new Set([0, 1, 2]));
  });

  it("has the index pins under the board as bores of their size at their places, those in the waste as crosses", () => {
    for (const [folder, report] of values) {
      const plan = read[join(folder, "outlines", "neck-plan.dxf")]!;
      const [hand, of] = [mirrors(plan) ? -1 : 1, (id: string) => report[`pin.${id}`]!];
      const all = plan.paths.filter(({ layer }) => layer.startsWith("BORE-")).map(boreOf);
      // Behind them only what bridge and tailpiece stand by, in pairs.
      const bores = all.filter(({ x }) => x < report["string.length"]! - 20);
      expect(bores.length, folder).toBe(2);
      expect([2, 4], folder).toContain(all.length - bores.length);
      for (const id of ["upper", "lower"]) {
        const bore = bores.find(({ x }) => Math.abs(x - of(`${id}.at`)) < 1e-3)!;
        expect(Math.abs(bore.y - hand * of(`${id}.offset`)), folder).toBeLessThan(1e-3);
        expect(Math.abs(bore.diameter - of(id))).toBeLessThan(1e-3);
        expect(bore.layer).toBe(`BORE-${of(id).toFixed(2).replace(".", "_")}`);
      }
      const crosses = plan.paths.filter(({ layer }) => layer === "SCRIBE");
      for (const id of ["head.x", "tail.x"]) {
        const through = crosses.filter(({ points }) => {
          const [[ax, ay], [bx, by]] = points as [[number, number], [number, number]];
          return Math.hypot((ax + bx) / 2 - of(id), (ay + by) / 2) < 1e-3;
        });
        expect(through.length, `${folder} ${id}`).toBe(2);
      }
    }
  });

  it("has as many tuners' holes as strings in the head's face, of the size at the face, and says how far pegs' are reamed", () => {
    const notes = [...values].map(([folder, report]) => {
      const { paths, texts } = read[join(folder, "outlines", "head-face.dxf")]!;
      const strings = Object.keys(report).filter((id) => /^string\.\w+\.pitch$/.test(id));
      const bores = paths.filter(({ layer }) => layer.startsWith("BORE-")).map(boreOf);
      expect(bores.length, folder).toBe(strings.length);
      for (const { diameter } of bores) {
        expect(Math.abs(diameter - report["tuner.hole"]!)).toBeLessThan(1e-3);
      }
      const [face, back] = [report["tuner.hole"]!, report["tuner.hole.back"]!].map((size) => size.toFixed(2));
      const reaming = texts.map(({ text }) => text).filter((text) => text.startsWith("REAM"));
      const wanted = `REAM 1:30 FROM BACK, ${face} MM AT FACE, ${back} MM AT BACK`;
      expect(reaming, folder).toEqual(face === back ? [] : [wanted]);
      if (face !== back) {
        const taper = (report["tuner.hole.back"]! - report["tuner.hole"]!) / report["head.thickness"]!;
        expect(taper).toBeCloseTo(1 / 30, 4);
      }
      return reaming.length;
    });
    expect(new Set(notes)).toEqual(new Set([0, 1]));
  });

  it("has lettering of 2.5 mm or more on the note layer, with order, part, fingerprint, hand and whence it is seen", () => {
    for (const [file, { texts }] of Object.entries(read)) {
      const all = texts.map(({ text }) => text).join("\n");
      expect(all, file).toMatch(/ORDER SY-\d+ {3}PART \w+ {3}FINGERPRINT [0-9a-f]{12}/);
      expect(all, file).toMatch(
        /(LEFT|RIGHT) HAND {3}SEEN FROM THE (FRONT|TAIL|BASS SIDE|TREBLE SIDE|HEAD'S FRONT)/,
      );
      expect(all, file).toMatch(/LOCAL CODES/);
      for (const { height, layer } of texts) expect([height >= 2.5, layer]).toEqual([true, "NOTE"]);
    }
  });

  it("states extents that hold every path", () => {
    for (const { extents, paths } of Object.values(read)) {
      const [[x1, y1], [x2, y2]] = extents as [[number, number], [number, number]];
      for (const row of paths) {
        const [a, b, c, d] = row.bounds ?? [x1, y1, x2, y2];
        expect(a! >= x1 - 1e-3 && b! >= y1 - 1e-3 && c! <= x2 + 1e-3 && d! <= y2 + 1e-3).toBe(true);
      }
    }
  });

  it("tells a spoilt file: an opened outline, a wrong unit, a width off by 0.01", () => {
    const [folder] = values.keys();
    const good = readFileSync(join(folder!, "outlines", "fingerboard.dxf"), "utf8");
    const spoilt = join(out, "spoilt.dxf");
    const reread = (text: string) => {
      expect(text).not.toBe(good);
      writeFileSync(spoilt, text);
      return (python(script, spoilt) as Record<string, Read>)[spoilt]!;
    };
    expect(reread(good.replace("$INSUNITS\n70\n4", "$INSUNITS\n70\n1")).units).toBe(1);
    const opened = reread(good.replace(/(OUTER-EDGE\n(?:.*\n){0,12}?70\n)1/, "$10"));
    expect(opened.paths.find(({ layer }) => layer === "OUTER-EDGE")?.closed).toBe(false);
    const nut = values.get(folder!)!["fingerboard.width.nut"]! / 2;
    const wider = reread(good.replaceAll(String(Math.round(nut * 1e6) / 1e6), String(nut + 0.01)));
    expect(Math.abs(wider.widths["100"]! - values.get(folder!)!["fingerboard.width.100"]!)).toBeGreaterThan(
      0.002,
    );
  });
});
