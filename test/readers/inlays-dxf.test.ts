import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { dxfText } from "../../src/files/dxf/write-dxf.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { specOf } from "../samples.ts";
import { describeWith, ezdxf, python } from "./tool.ts";

type Fit = {
  readonly off: number;
  readonly gap: readonly [number, number];
  readonly back: readonly [number, number];
  readonly inside: boolean;
  readonly x: number;
  readonly y: number;
};

/** Two leaves on one board, the second smaller, elsewhere and aside. */
function twice(spec: Spec): Spec {
  const [leaf] = spec.inlays;
  const less = (place: readonly [number, number]) => [place[0] * 0.85, place[1] * 0.85] as const;
  const { along, out, edges, holes } = leaf!.face;
  const face = {
    ...{ along: along * 0.85, out: out * 0.85, holes },
    edges: edges.map((edge) => ({ ...edge, to: edge.to && less(edge.to), through: edge.through.map(less) })),
  };
  return { ...spec, inlays: [leaf!, { id: "second", at: { x: 215, y: 6 }, face }] };
}

const specs: readonly Spec[] = [
  specOf("sedge", 4),
  specOf("sedge", 6, "", { hand: "left" }),
  forced(specOf("sedge", 5), { "inlay.cutter": 2, "inlay.clearance": 0.12 }),
  { ...twice(specOf("sedge", 5)), hand: "left" },
];

describeWith(ezdxf, "inlays, opened by ezdxf and tried by shapely", () => {
  const out = mkdtempSync(join(tmpdir(), "inlays-"));
  const script = join(import.meta.dirname, "read_inlays.py");
  let read: readonly (readonly Fit[])[] = [];

  function written(i: number, spec: Spec, clearance?: number): string[] {
    const model = modelOf(spec, memoryStore());
    const inserts =
      clearance === undefined
        ? model
        : modelOf(forced(spec, { "inlay.clearance": clearance }), memoryStore());
    const files = (["fingerboard", "inlays"] as const).map((name) => {
      const path = join(out, `${i}-${name}.dxf`);
      const flat = flatsOf(spec).find((file) => file.name === name)!;
      writeFileSync(path, dxfText(flat.of(name === "inlays" ? inserts : model, memoryStore()).value));
      return path;
    });
    return [...files, `${spec.values["inlay.cutter"]!.value}`];
  }

  beforeAll(() => {
    // The last one's inserts are made for another clearance than its board says.
    const planted = written(specs.length, specs[0]!, 0.06);
    read = python(script, ...specs.flatMap((spec, i) => written(i, spec)), ...planted) as typeof read;
  });
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  it("have recesses that are what their cutter opens of the design, at their places", () => {
    for (const [i, spec] of specs.entries()) {
      expect(read[i]).toHaveLength(spec.inlays.length);
      for (const [k, { off, x, y }] of read[i]!.entries()) {
        expect(off).toBeLessThan(0.001);
        const { at } = spec.inlays[k]!;
        // A leaf reaches its frame's ends, and not quite its sides.
        expect(Math.abs(x - at.x)).toBeLessThan(0.1);
        expect(Math.abs(y - at.y * (spec.hand === "left" ? -1 : 1))).toBeLessThan(0.6);
      }
    }
  });

  it("have inserts that lie in their recesses with the clearance all round, within 0.001", () => {
    for (const [i, spec] of specs.entries()) {
      const clearance = spec.values["inlay.clearance"]!.value;
      for (const { gap, back, inside } of read[i]!) {
        expect(inside).toBe(true);
        for (const one of [...gap, ...back]) expect(Math.abs(one - clearance)).toBeLessThan(0.001);
      }
    }
  });

  it("tell an insert made for a clearance 0.01 larger", () => {
    const [planted] = read.at(-1)!;
    expect(planted!.off).toBeLessThan(0.001);
    expect(Math.abs(planted!.gap[0] - specs[0]!.values["inlay.clearance"]!.value)).toBeGreaterThan(0.009);
  });
});
