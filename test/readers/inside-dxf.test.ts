import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { insideFlats } from "../../src/drawing/flat/inside-flats.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly errors: number;
  readonly closed: { readonly [layer: string]: readonly boolean[] };
  /** For each opening: how far its guided edge is off PART moved by d at worst, how far what is cut is off PART, and how far beyond it wood is taken. */
  readonly buffered: readonly number[];
  readonly deviation: readonly number[];
  readonly taken: readonly number[];
  readonly paired: number;
  readonly onPlates: boolean;
  readonly web: number;
  readonly plates: number;
  readonly heights: readonly number[];
  readonly bores: { readonly [layer: string]: number };
  readonly texts: readonly string[];
  readonly rounded: number;
};

/** A bush 16 with a bit of 8, a pin as wide as its cutter, and a pin narrower than it: every sign of d. */
const wide = (machine: string) => `fixtures:\n  wing-treble-back-inside: ${machine}\n`;

describeWith(
  ezdxf,
  "every inside template's machine file, opened by ezdxf and cut once more by shapely",
  () => {
    const orders = [
      ...([
        ["sedge", 5, "", "right"],
        ["sedge", 6, "", "left"],
        ["mallow", 4, "", "left"],
      ] as const),
      ...([
        ["mallow", 5, "", "right"],
        ["thrift", 4, "", "left"],
        ["thrift", 7, "", "right"],
        ["bulrush", 5, "", "right"],
      ] as const),
      ...([
        ["sedge", 5, wide("{ cutter: straight-8, guide: bush-16 }"), "left"],
        ["sedge", 5, wide("{ machine: table-router, cutter: straight-12, guide: pin-12 }"), "right"],
      ] as const),
    ];
    const store = memoryStore();
    const made = orders.flatMap(([design, count, more, hand]) => {
      const given = specOf(design, count, more, { hand });
      // A mount's slot is too narrow for the larger cutters that are named.
      const spec = more === "" ? given : { ...given, rests: { ...given.rests, mounts: [] } };
      const model = modelOf(spec, store);
      return model.insides().map((inside) => {
        const file = insideFlats.find(({ name }) => name === inside.file)!;
        return { inside, hand, file, flat: file.of(model, store).value, setUp: inside.setUp! };
      });
    });
    let folder = "";
    let read: readonly Read[] = [];

    const written = (flat: Flat, part: string, hand: "right" | "left", name: string) => {
      const own = { order: "T-1", part, fingerprint: "0", hand, seenFrom: "back", overruled: [] };
      const path = join(folder, name);
      writeFileSync(path, dxfText(titled(flat, own)));
      return path;
    };
    const shifted = ({ shapes, notes }: Flat): Flat => ({
      notes,
      shapes: shapes.map((shape) => ({
        ...shape,
        path:
          shape.layer === "GUIDED-EDGE"
            ? { ...shape.path, points: shape.path.points.map((point) => ({ ...point, y: point.y + 0.02 })) }
            : shape.path,
      })),
    });

    beforeAll(() => {
      folder = mkdtempSync(join(tmpdir(), "inside-"));
      const jobs = made.map(({ inside, hand, flat, setUp: { cutter, guide, offset } }, i) => {
        const depths = inside.openings.flatMap(({ edge }) =>
          edge?.kind === "ok" ? edge.places.map(({ depth }) => depth ?? 99) : [99],
        );
        const sizes = [guide.diameter, cutter.diameter, offset, Math.max(0, ...depths)];
        return [written(flat, inside.part, hand, `${i}.dxf`), ...sizes];
      });
      // The saboteurs: an edge that lies 0.02 to one side, and a guide 0.2 larger than it says.
      const { inside, hand, flat, setUp } = made[0]!;
      jobs.push([written(shifted(flat), inside.part, hand, "moved.dxf"), ...jobs[0]!.slice(1)]);
      jobs.push([jobs[0]![0]!, setUp.guide.diameter + 0.2, ...jobs[0]!.slice(2)]);
      read = python(join(import.meta.dirname, "read_inside.py"), JSON.stringify(jobs)) as Read[];
    }, 120_000);
    afterAll(() => rmSync(folder, { recursive: true, force: true }));
    const sound = () => read.slice(0, made.length);

    it("has plates alike with all openings in them, closed, each guided edge on its opening, and two index pins a plate", () => {
      for (const [i, one] of sound().entries()) {
        const { openings, plates } = made[i]!.inside;
        expect(one.errors).toBe(0);
        for (const layer of ["OUTER-EDGE", "INNER-EDGE", "PART", "GUIDED-EDGE"])
          expect(one.closed[layer]!.every((closed) => closed)).toBe(true);
        expect(one.closed["INNER-EDGE"]).toHaveLength(openings.length);
        expect(one.paired).toBe(openings.length);
        expect(one.onPlates).toBe(true);
        expect(one.web).toBeGreaterThan(8 - 1e-3);
        expect(one.plates).toBe(Math.max(...plates!) + 1);
        for (const height of one.heights) expect(height).toBeCloseTo(one.heights[0]!, 6);
        expect(one.bores).toMatchObject({
          "BORE-6_00": one.plates,
          "BORE-8_00": one.plates,
          "BORE-10_00": one.plates,
        });
      }
    });

    it("has each guided edge d from PART within 0.01 mm, larger all round for d < 0", () => {
      for (const { buffered } of sound()) for (const off of buffered) expect(off).toBeLessThan(0.01);
      const offsets = new Set(made.map(({ setUp }) => setUp.offset));
      expect(offsets.has(-4)).toBe(true);
      expect(offsets.has(0)).toBe(true);
    });

    it("leaves every recess within 0.01 mm when its guide goes wherever it can, but for what is listed beside reliefs", () => {
      let tried = 0;
      for (const { deviation, taken, rounded } of sound())
        for (const [k, off] of deviation.entries()) {
          tried++;
          expect(off).toBeLessThan(Math.max(0.01, rounded + 0.005));
          expect(taken[k]).toBeLessThan(Math.max(0.01, rounded + 0.005));
        }
      expect(tried).toBeGreaterThan(30);
      const clean = sound().flatMap(({ deviation }) => deviation.filter((off) => off < 0.01));
      expect(clean.length).toBeGreaterThan(20);
    });

    it("says what to scribe on it, how deep, and the cautions of its machine, and not to start on a run-in", () => {
      for (const [i, { texts }] of sound().entries()) {
        const { inside, setUp } = made[i]!;
        const said = texts.join(" ");
        expect(said).toContain(`CUTTER ${setUp.cutter.id.toUpperCase()}`);
        expect(said).toContain(`GUIDE ${setUp.guide.id.toUpperCase()}`);
        expect(said).toContain(`${setUp.speed.rpm} RPM`);
        for (const { id, depth, passes } of inside.openings) {
          expect(said).toContain(`${id.toUpperCase()}: ${depth.toFixed(2)} DEEP`);
          const set = new RegExp(` ${id.toUpperCase()}: [^:]* SET ([\\d., ]+) FROM`)
            .exec(said)![1]!
            .split(", ");
          expect(set).toHaveLength(passes.length);
          for (const [k, one] of set.entries()) expect(Number(one)).toBeCloseTo(passes[k]!, 1.9);
        }
        expect(said).toMatch(/TEST STRIP IN SCRAP FIRST/);
        expect(said).toMatch(/TRIES THIS DRAWING, NOT THE WOOD/);
        expect(said).toMatch(/NEVER CLIMB/);
        expect(said).toMatch(/NEEDS NONE: THE BIT GOES IN/);
        expect(said).not.toMatch(/START ON THE RUN-IN/);
        expect(said).toMatch(
          setUp.machine.moves === "work"
            ? /COUNTER-CLOCKWISE IN AN OPENING.*NEVER LOWER WORK ONTO A TURNING BIT/
            : / CLOCKWISE IN AN OPENING.*PLUNGE AT THE MARK/,
        );
        expect(said).toMatch(/A COMPETENT PERSON COME FIRST/);
      }
    });

    it("finds an edge shifted by 0.02, and a guide 0.2 larger than written", () => {
      const [moved, larger] = read.slice(made.length);
      expect(Math.max(...moved!.buffered)).toBeGreaterThan(0.018);
      expect(Math.max(...moved!.deviation)).toBeGreaterThan(0.018);
      expect(Math.max(...larger!.deviation)).toBeGreaterThan(0.095);
    });
  },
);
