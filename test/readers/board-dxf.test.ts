import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import type { Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { ownBoard } from "../own-board.ts";
import { frettedSpec, specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Row = {
  readonly layer: string;
  readonly closed: boolean;
  readonly corners: number;
  readonly arcs: readonly { readonly x: number; readonly y: number; readonly radius: number }[];
  readonly bounds: readonly [number, number, number, number];
  readonly tops?: readonly number[];
};
type Read = { readonly errors: number; readonly paths: readonly Row[]; readonly texts: readonly string[] };

const script = join(import.meta.dirname, "read_board.py");
const left = { hand: "left" } as const;
const specs: readonly (readonly [string, Spec])[] = [
  ["a fretted thrift", frettedSpec(5)],
  ["a left-hand fretted thrift", frettedSpec(5, "", 12, left)],
  ["a sedge with six strings", specOf("sedge", 6)],
  ["a left-hand mallow", specOf("mallow", 5, "", left)],
  ["a bulrush, which is a cone", specOf("bulrush", 4)],
];

describeWith(ezdxf, "the fingerboard's drawings, opened by ezdxf", () => {
  const out = mkdtempSync(join(tmpdir(), "board-"));
  const file = (i: number, name: string) => join(out, `${i}-${name}.dxf`);
  let read: Record<string, Read> = {};
  const reports: Record<string, number>[] = [];

  beforeAll(() => {
    const store = memoryStore();
    const written: string[] = [];
    for (const [i, [, spec]] of specs.entries()) {
      const model = modelOf(spec, store);
      reports.push(Object.fromEntries(dimensionsOf(spec).map(({ id, of }) => [id, of(model)])));
      for (const flat of flatsOf(spec).filter(({ name }) => name.startsWith("fingerboard"))) {
        writeFileSync(file(i, flat.name), dxfText(flat.of(model, store).value));
        written.push(file(i, flat.name));
      }
    }
    read = python(script, ...written) as Record<string, Read>;
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  it("have no error, and a file of the edge where there are side dots", () => {
    const sides = specs.map(([, { dots }], i) => [dots.side.length > 0, file(i, "fingerboard-edge") in read]);
    for (const [dots, drawn] of sides) expect(drawn).toBe(dots);
    expect(new Set(sides.map(([dots]) => dots))).toEqual(new Set([true, false]));
    for (const [name, { errors, paths }] of Object.entries(read)) {
      expect(errors, name).toBe(0);
      // Guided edges, and lines that are scribed or sawn, may be open.
      if (/-(router|saw|inside)\.dxf$/.test(name)) continue;
      for (const { layer, closed } of paths)
        if (layer !== "NOTE") expect(closed, `${name} ${layer}`).toBe(true);
    }
  });

  it.each(specs.map(([what], i) => [what, i] as const))(
    "of %s have ends with the reported radius, width and thickness",
    (_, i) => {
      const report = reports[i]!;
      const { paths, texts } = read[file(i, "fingerboard-ends")]!;
      const ends = paths
        .filter(({ layer }) => layer === "OUTER-EDGE")
        .sort((a, b) => a.bounds[0] - b.bounds[0]);
      expect(ends).toHaveLength(2);
      for (const [k, where] of (["nut", "end"] as const).entries()) {
        const { arcs, bounds } = ends[k]!;
        expect(arcs).toHaveLength(1);
        const [arc] = arcs;
        expect(Math.abs(arc!.radius - report[`fingerboard.radius.${where}`]!)).toBeLessThan(0.001);
        expect(Math.abs(bounds[2] - bounds[0] - report[`fingerboard.width.${where}`]!)).toBeLessThan(0.001);
        expect(Math.abs(arc!.y + arc!.radius - report[`fingerboard.thickness.${where}`]!)).toBeLessThan(
          0.001,
        );
        expect(arc!.x).toBeCloseTo((bounds[0] + bounds[2]) / 2, 4);
        expect(texts).toContain(`RADIUS ${report[`fingerboard.radius.${where}`]!.toFixed(2)}`);
      }
    },
  );

  it.each(specs.map(([what], i) => [what, i] as const))(
    "of %s have profiles that follow the scooped surface within 0.02",
    (_, i) => {
      const own = ownBoard(specs[i]![1], reports[i]!);
      const slant = Math.hypot(own.length, own.half(own.length) - own.half(0)) / own.length;
      const edge = read[file(i, "fingerboard-edge")];
      const turned = specs[i]![1].hand === "left";
      for (const [drawing, wide, y, turn] of [
        [read[file(i, "fingerboard-side")]!, own.length, () => 0, false],
        ...(edge ? [[edge, own.length * slant, (x: number) => -own.half(x), turned] as const] : []),
      ] as const) {
        const outer = drawing.paths.filter(({ layer }) => layer === "OUTER-EDGE");
        expect(outer).toHaveLength(1);
        const { bounds, tops } = outer[0]!;
        expect(Math.abs(bounds[2] - bounds[0] - wide)).toBeLessThan(0.001);
        const off = tops!.map((top, k) => {
          const x = own.length * (turn ? 1 - k / 54 : k / 54);
          return Math.abs(top - own.top(x, y(x)));
        });
        expect(off).toHaveLength(55);
        expect(Math.max(...off)).toBeLessThan(0.02);
      }
    },
  );

  it("have the dots of the face as bores at their places, two at the octaves, turned over for the left hand", () => {
    for (const [i, frets] of [
      [0, 24],
      [1, 12],
    ] as const) {
      const report = reports[i]!;
      const { paths, texts } = read[file(i, "fingerboard")]!;
      const bores = paths.filter(({ layer }) => layer === "BORE-3_50");
      const numbers = [3, 5, 7, 9, 12, 15, 17, 19, 21, 24].filter((n) => n <= frets);
      const wanted = numbers.flatMap((n) => {
        const x = (report[`fret.${n}`]! + report[`fret.${n - 1}`]!) / 2;
        return (n % 12 === 0 ? [-6, 6] : [0]).map((y) => [x, y] as const);
      });
      expect(bores).toHaveLength(wanted.length);
      for (const [x, y] of wanted) {
        const near = bores.filter(({ arcs }) => Math.hypot(arcs[0]!.x - x, arcs[0]!.y - y) < 0.001);
        expect(near).toHaveLength(1);
        for (const { radius } of near[0]!.arcs) expect(radius).toBeCloseTo(1.75, 4);
      }
      expect(texts.join()).toMatch(/DOTS: EACH BORE 1\.50 DEEP UNDER THE LOWEST PLACE/);
    }
  });

  it("have the side dots as bores in the middle of the bass edge, the head at the other side for the left hand", () => {
    let dots = 0;
    for (const [i, [, spec]] of specs.entries()) {
      const edge = read[file(i, "fingerboard-edge")];
      if (edge === undefined) continue;
      const own = ownBoard(spec, reports[i]!);
      const slant = Math.hypot(own.length, own.half(own.length) - own.half(0)) / own.length;
      const size = reports[i]!["side-dot.size"]!;
      const place = (n: number) => reports[i]!["string.length"]! * (1 - 2 ** (-n / 12));
      const numbers = spec.dots.side.filter((n) => spec.frets === null || n <= spec.frets.count);
      const bores = edge.paths.filter(({ layer }) => layer.startsWith("BORE-"));
      expect(bores).toHaveLength(numbers.length);
      for (const n of numbers) {
        const x = spec.frets === null ? place(n) : (place(n) + place(n - 1)) / 2;
        const at = { x: x * slant * (spec.hand === "left" ? -1 : 1), y: own.top(x, -own.half(x)) / 2 };
        const near = bores.filter(({ arcs }) => Math.hypot(arcs[0]!.x - at.x, arcs[0]!.y - at.y) < 0.001);
        expect(near, `${n}`).toHaveLength(1);
        expect(near[0]!.arcs[0]!.radius).toBeCloseTo(size / 2, 4);
        dots++;
      }
    }
    expect(dots).toBeGreaterThan(20);
  });

  it("tell a planted fault: a radius at the nut 0.05 off, by the same comparison", () => {
    const spec = specOf("bulrush", 4, "set:\n  fingerboard.radius: 62.1 mm\n");
    const model = modelOf(spec, memoryStore());
    const flat = flatsOf(spec).find(({ name }) => name === "fingerboard-ends")!;
    const path = join(out, "planted.dxf");
    writeFileSync(path, dxfText(flat.of(model, memoryStore()).value));
    const [nut] = (python(script, path) as Record<string, Read>)[path]!.paths.filter(
      ({ layer }) => layer === "OUTER-EDGE",
    );
    const off = Math.abs(nut!.arcs[0]!.radius - reports[4]!["fingerboard.radius.nut"]!);
    expect(off).toBeGreaterThan(0.05);
    expect(off).toBeLessThan(0.06);
  });
});
