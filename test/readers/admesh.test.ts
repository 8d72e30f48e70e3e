import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { stlWrite } from "../../src/files/stl-write.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { parts } from "../geometry/solid/parts.ts";
import { known } from "../geometry/solid/recipes.ts";
import { frettedSpec, specOf } from "../samples.ts";
import { admesh, describeWith } from "./tool.ts";

let kernel: Kernel;
let folder: string;
beforeAll(async () => {
  kernel = await loadKernel();
  folder = mkdtempSync(join(tmpdir(), "admesh-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** What admesh says of a file, by its own names. */
function report(bytes: Uint8Array): { numbers: Map<string, number>; text: string } {
  const file = join(folder, "part.stl");
  writeFileSync(file, bytes);
  const text = execFileSync("admesh", [file], { encoding: "utf8" });
  const numbers = new Map<string, number>();
  for (const [, name, value] of text.matchAll(/([A-Z][\w /]*?)\s*:\s+(-?[\d.]+)/g))
    numbers.set(name!, Number(value));
  return { numbers, text };
}

const flaws = [
  "Degenerate facets",
  "Edges fixed",
  "Facets removed",
  "Facets added",
  "Facets reversed",
  "Backwards edges",
  "Normals fixed",
  "Total disconnected facets",
];

function flawsIn(numbers: Map<string, number>): string[] {
  return flaws.filter((name) => numbers.get(name) !== 0);
}

function written(solid: Solid) {
  const made = mesh(kernel, solid);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  return { made: made.mesh, bytes: stlWrite(made.mesh) };
}

/** Finished fingerboards, with all that is let into them: slots that cross from edge to edge, dots, an inlay, a cone. */
function boards(): { readonly name: string; readonly solid: Solid }[] {
  const fretted = frettedSpec(7);
  const specs = {
    "fretted board": fretted,
    "board slotted from edge to edge": {
      ...fretted,
      frets: { ...fretted.frets!, slots: "through" as const },
    },
    "board with an inlay": specOf("sedge", 5),
    "board that is a cone": specOf("bulrush", 5),
  };
  return Object.entries(specs).map(([name, spec]) => {
    return { name, solid: modelOf(spec, memoryStore()).instrument.boardSolid };
  });
}

describeWith(admesh, "every named solid, opened by admesh", () => {
  describe("admesh finds nothing to mend in", () => {
    test.each([...known, ...parts, ...boards()])("$name", ({ solid }) => {
      const { made, bytes } = written(solid);
      const { numbers, text } = report(bytes);
      expect(text).toContain("Binary STL");
      expect(flawsIn(numbers)).toEqual([]);
      expect(numbers.get("Number of facets")).toBe(made.triangles.length / 3);
      expect(Math.abs(numbers.get("Volume")! / meshMeasures(made).volume - 1)).toBeLessThan(1e-4);
    });
  });

  test("admesh finds a flipped facet", () => {
    const { bytes } = written(known[0]!.solid);
    const [first, second] = [bytes.slice(84 + 12, 84 + 24), bytes.slice(84 + 24, 84 + 36)];
    bytes.set(second, 84 + 12);
    bytes.set(first, 84 + 24);
    expect(flawsIn(report(bytes).numbers)).not.toEqual([]);
  });
});
