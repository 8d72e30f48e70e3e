import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { stlWrite } from "../../src/files/stl-write.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { solidFiles } from "../../src/workshop/solids/solids.ts";
import { everyCount, specOf } from "../samples.ts";
import { admesh, describeWith } from "./tool.ts";

const flaws = [
  ...["Degenerate facets", "Edges fixed", "Facets removed", "Facets added", "Facets reversed"],
  ...["Backwards edges", "Normals fixed", "Total disconnected facets"],
];

describeWith(admesh, "the STL of every bridge and nut, opened by admesh", () => {
  let kernel: Kernel;
  let folder: string;
  beforeAll(async () => {
    kernel = await loadKernel();
    folder = mkdtempSync(join(tmpdir(), "bridge-"));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  /** The flaws that admesh finds in a file, and the volume that it has. */
  function read(bytes: Uint8Array) {
    const file = join(folder, "part.stl");
    writeFileSync(file, bytes);
    const text = execFileSync("admesh", [file], { encoding: "utf8" });
    const number = (name: string) => Number(new RegExp(`${name}\\s*:\\s+(-?[\\d.]+)`).exec(text)?.[1]);
    return { flaws: flaws.filter((name) => number(name) !== 0), volume: number("Volume") };
  }

  test.each(everyCount)("$design with $count strings: nothing to mend, and the mesh's volume", (at) => {
    const store = memoryStore();
    const files = solidFiles(modelOf(specOf(at.design, at.count), store)).filter(({ part }) =>
      ["bridge", "nut"].includes(part),
    );
    const solids = files.filter(({ folder }) => folder === "outlines");
    expect(solids.map(({ name }) => name)).toEqual(["bridge", "nut"]);
    for (const { name, solid } of solids) {
      const made = mesh(kernel, solid(store), 0.03);
      if (made.kind !== "ok") throw new Error(JSON.stringify(made));
      const bytes = stlWrite(made.mesh);
      const found = read(bytes);
      expect(found.flaws, name).toEqual([]);
      expect(Math.abs(found.volume / meshMeasures(made.mesh).volume - 1)).toBeLessThan(1e-4);
    }
  });

  test("admesh finds a facet that is missing", () => {
    const store = memoryStore();
    const { solid } = solidFiles(modelOf(specOf("sedge", 5), store)).find(({ name }) => name === "bridge")!;
    const made = mesh(kernel, solid(store), 0.03);
    if (made.kind !== "ok") throw new Error(JSON.stringify(made));
    const bytes = stlWrite({ ...made.mesh, triangles: made.mesh.triangles.slice(3) });
    expect(read(bytes).flaws).not.toEqual([]);
  });
});
