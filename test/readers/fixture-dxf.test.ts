import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { fixtureFlats } from "../../src/drawing/flat/fixture-flats.ts";
import type { Flat } from "../../src/drawing/flat/flat.ts";
import { titled } from "../../src/drawing/flat/titled.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Read = {
  readonly errors: number;
  readonly closed: { readonly [layer: string]: readonly boolean[] };
  /** How far the guided edge is off |d| from PART at worst, on which share of its length that is, and which share of that lies in PART. */
  readonly buffered: number;
  readonly beside: number;
  readonly inside: number;
  readonly onOuter: number;
  readonly deviation: number;
  readonly tried: number;
  readonly swept: number;
  readonly outside: number;
  readonly bores: { readonly [layer: string]: number };
  readonly texts: readonly string[];
};

const named = (machine: string) =>
  ["bass", "treble"].map((side) => `  wing-${side}-router: ${machine}`).join("\n");
const pinned = `fixtures:\n${named("{ cutter: straight-19, guide: pin-12 }")}\n`;
const bushed = `fixtures:\n${named("{ machine: hand-router, cutter: straight-8, guide: bush-16 }")}\n`;

describeWith(ezdxf, "every fixture's machine file, opened by ezdxf and cut once more by shapely", () => {
  const orders = [
    ...([
      ["sedge", 4, "", "left"],
      ["sedge", 5, "", "right"],
      ["sedge", 6, pinned, "right"],
    ] as const),
    ...([
      ["mallow", 4, "", "right"],
      ["mallow", 5, bushed, "left"],
    ] as const),
    ...([
      ["bulrush", 4, pinned, "left"],
      ["bulrush", 5, "", "right"],
    ] as const),
  ];
  const store = memoryStore();
  const made = orders.flatMap(([design, count, more, hand]) => {
    const model = modelOf(specOf(design, count, more, { hand }), store);
    return fixtureFlats.map((file, i) => {
      const { setUp, edge, joined } = model.fixtures()[i]!;
      if (edge?.kind !== "ok") throw new Error(`${file.name}: ${edge?.kind}`);
      return {
        file,
        hand,
        flat: file.of(model, store).value,
        setUp: setUp!,
        places: edge.places,
        ends: joined[0]!.points.map(({ x, y }) => [x, y]),
      };
    });
  });
  let folder = "";
  let read: readonly Read[] = [];

  const written = (flat: Flat, part: string, hand: "right" | "left", name: string) => {
    const own = { order: "T-1", part, fingerprint: "0", hand, seenFrom: "front", overruled: [] };
    const path = join(folder, name);
    writeFileSync(path, dxfText(titled(flat, own)));
    return path;
  };
  const shifted = ({ shapes, notes }: Flat): Flat => ({
    notes,
    shapes: shapes.map((shape) => ({
      ...shape,
      path: ["GUIDED-EDGE", "OUTER-EDGE"].includes(shape.layer)
        ? { ...shape.path, points: shape.path.points.map((point) => ({ ...point, y: point.y + 0.02 })) }
        : shape.path,
    })),
  });

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "fixture-"));
    const jobs = made.map(({ file, hand, flat, ends, setUp: { cutter, guide, offset } }, i) => [
      written(flat, file.part, hand, `${i}.dxf`),
      ...[guide.diameter, cutter.diameter, offset, ends],
    ]);
    // The saboteurs: a template that lies 0.02 to one side, and one that is cut with a guide 0.2 larger than it says.
    const { file, hand, flat, setUp, ends } = made[2]!;
    jobs.push([written(shifted(flat), file.part, hand, "moved.dxf"), ...jobs[2]!.slice(1)]);
    jobs.push([jobs[2]![0]!, setUp.guide.diameter + 0.2, setUp.cutter.diameter, setUp.offset, ends]);
    read = python(join(import.meta.dirname, "read_fixture.py"), JSON.stringify(jobs)) as Read[];
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const sound = () => read.slice(0, made.length);

  it("has one template and one part, closed, and one guided edge, open, that lies on the template", () => {
    for (const { errors, closed, onOuter } of sound()) {
      expect(errors).toBe(0);
      expect(closed["OUTER-EDGE"]).toEqual([true]);
      expect(closed.PART).toEqual([true]);
      expect(closed["GUIDED-EDGE"]).toEqual([false]);
      expect(onOuter).toBeLessThan(0.002);
    }
  });

  it("has its guided edge |d| from PART within 0.01 mm, on the right side of it, and longer by run-in and run-out", () => {
    for (const [i, { buffered, beside, inside }] of sound().entries()) {
      const { offset } = made[i]!.setUp;
      expect(buffered).toBeLessThan(0.01);
      expect(beside).toBeLessThan(0.85);
      expect(beside).toBeGreaterThan(0.5);
      if (offset > 0) expect(inside).toBe(0);
      if (offset < 0) expect(inside).toBe(1);
    }
    expect(new Set(made.map(({ setUp }) => Math.sign(setUp.offset)))).toEqual(new Set([-1, 0, 1]));
  });

  it("leaves the part within 0.01 mm when its guide is rolled and its cutter swept", () => {
    for (const [i, { deviation, tried }] of sound().entries()) {
      expect(made[i]!.places).toEqual([]);
      expect(tried).toBeGreaterThan(300);
      expect(deviation).toBeLessThan(0.01);
    }
  });

  it("has nothing in the cutter's circle, all of it on the base, and two index pins that are unlike", () => {
    for (const [i, { swept, outside, bores }] of sound().entries()) {
      expect(swept).toBeGreaterThan(6 - 1e-3);
      expect(outside).toBeLessThan(1e-6);
      expect(bores).toMatchObject({ "BORE-6_00": 1, "BORE-8_00": 1, "BORE-10_00": 1 });
      expect(bores["BORE-8_50"] ?? 0).toBe(made[i]!.setUp.machine.moves === "work" ? 2 : 0);
    }
  });

  it("says what to scribe on it, and the cautions of its machine", () => {
    for (const [i, { texts }] of sound().entries()) {
      const { cutter, guide, speed } = made[i]!.setUp;
      const said = texts.join("\n");
      expect(said).toContain(`CUTTER ${cutter.id.toUpperCase()}`);
      expect(said).toContain(`GUIDE ${guide.id.toUpperCase()}`);
      expect(said).toContain(`(MEASURED ${guide.measured})`);
      expect(said).toContain(`${speed.rpm} RPM`);
      expect(said).toMatch(/TEST STRIP IN SCRAP FIRST/);
      expect(said).toMatch(/TRIES THIS DRAWING, NOT THE WOOD/);
      expect(said).toMatch(/NEVER CLIMB/);
      expect(said).toMatch(/A COMPETENT PERSON COME FIRST/);
    }
  });

  it("finds a template shifted by 0.02, and a guide 0.2 larger than written", () => {
    const [moved, larger] = read.slice(made.length);
    expect(moved!.deviation).toBeGreaterThan(0.018);
    expect(larger!.deviation).toBeGreaterThan(0.095);
    expect(larger!.deviation).toBeLessThan(0.105);
  });
});
