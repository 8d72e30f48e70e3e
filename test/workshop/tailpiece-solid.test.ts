import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stlWrite } from "../../src/files/stl-write.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { signedArea } from "../../src/geometry/measure.ts";
import { clash } from "../../src/geometry/solid/clash.ts";
import { closedForm } from "../../src/geometry/solid/closed-form.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { madeTailpiece } from "../../src/instrument/tailpiece/tailpiece.ts";
import { dimensionOf } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { solidFiles } from "../../src/workshop/solids/solids.ts";
import { admesh, describeWith } from "../readers/tool.ts";
import { everyCount, specOf } from "../samples.ts";

let kernel: Kernel;
let folder: string;
beforeAll(async () => {
  kernel = await loadKernel();
  folder = mkdtempSync(join(tmpdir(), "plate-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

function plateOf(design: string, count: number, hand: "right" | "left" = "right") {
  const store = memoryStore();
  const model = modelOf(specOf(design, count, "", { hand }), store);
  const file = solidFiles(model).find(({ name }) => name === "tailpiece")!;
  return { model, key: file.key, solid: file.solid(store) };
}

function meshOf(solid: Solid) {
  const made = mesh(kernel, solid, 0.01);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  return made.mesh;
}

/** A solid let down, along z. */
function down(solid: Solid, by: number): Solid {
  const axes = { u: { x: 1, y: 0, z: 0 }, v: { x: 0, y: 1, z: 0 }, w: { x: 0, y: 0, z: 1 } };
  return { kind: "place", solid, frame: { origin: { x: 0, y: 0, z: -by }, ...axes } };
}

describe.each(everyCount)("the tailpiece of $design with $count strings as a solid", ({ design, count }) => {
  const { model, solid, key } = plateOf(design, count);
  const of = (id: string) => dimensionOf(model.spec, id);
  const plate = madeTailpiece(model.instrument);

  it("is one closed plate with the volume of its outline less its holes", () => {
    const made = meshOf(solid);
    expect(meshProblem(made)).toBeUndefined();
    const holes = [...plate.strings, ...plate.posts].map(({ size }) => (Math.PI * size ** 2) / 4);
    const area = signedArea(plate.path) - holes.reduce((sum, one) => sum + one, 0);
    const exact = closedForm(solid);
    if (exact.kind !== "ok") throw new Error("no closed form");
    expect(exact.measures.volume / (area * of("tailpiece.thickness"))).toBeCloseTo(1, 6);
    const measured = meshMeasures(made);
    expect(measured.volume / exact.measures.volume).toBeCloseTo(1, 5);
    // From the outline's own place in the core frame to the instrument's.
    const slope = (of("core.slope") * Math.PI) / 180;
    const end = of("core.start") + plate.end * Math.cos(slope) + of("tailpiece.height") * Math.sin(slope);
    expect(Math.abs(measured.most.x - end)).toBeLessThan(0.001);
    expect(measured.most.y).toBeCloseTo(of("tailpiece.width") / 2, 3);
  });

  it("of the other hand is the same turned over, under another key", () => {
    const left = plateOf(design, count, "left");
    expect(left.key).not.toBe(key);
    const [ours, theirs] = [meshMeasures(meshOf(solid)), meshMeasures(meshOf(left.solid))];
    expect(theirs.volume / ours.volume).toBeCloseTo(1, 6);
    expect(theirs.centre.y).toBeCloseTo(-ours.centre.y, 4);
    expect(theirs.centre.x).toBeCloseTo(ours.centre.x, 4);
  });

  it("is clear of the neck by as much as the report says, and in it where it is let down further", () => {
    const { neckSolid } = model.instrument;
    const under = of("tailpiece.height") - of("tailpiece.thickness");
    const found = clash(kernel, solid, neckSolid, 0.05);
    if (found.kind !== "ok") throw new Error(JSON.stringify(found));
    expect(found.interference).toBe(0);
    expect(Math.abs(found.gap - under)).toBeLessThan(0.01);
    // The planted fault: let down until its underside is 1 mm in the wood, square to the front.
    const slope = (of("core.slope") * Math.PI) / 180;
    const planted = clash(kernel, down(solid, (under + 1) / Math.cos(slope)), neckSolid, 0.05);
    if (planted.kind !== "ok") throw new Error(JSON.stringify(planted));
    const holes = [...plate.strings, ...plate.posts].map(({ size }) => (Math.PI * size ** 2) / 4);
    const area = signedArea(plate.path) - holes.reduce((sum, one) => sum + one, 0);
    expect(planted.interference / area).toBeCloseTo(1, 1);
  });
});

describeWith(admesh, "tailpieces, opened by admesh", () => {
  it.each(everyCount)("admesh finds nothing to mend in $design with $count strings", ({ design, count }) => {
    const path = join(folder, `${design}-${count}.stl`);
    writeFileSync(path, stlWrite(meshOf(plateOf(design, count, count % 2 === 0 ? "left" : "right").solid)));
    const text = execFileSync("admesh", [path], { encoding: "utf8" });
    for (const flaw of [
      "Degenerate facets",
      "Edges fixed",
      "Facets removed",
      "Facets added",
      "Facets reversed",
      "Backwards edges",
      "Normals fixed",
    ])
      expect(text).toMatch(new RegExp(`${flaw}\\s*:\\s+0\\b`));
    expect(text).toMatch(/Number of parts\s*:\s+1\b/);
  });
});
