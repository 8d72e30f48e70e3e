import { beforeAll, describe, expect, it } from "vitest";
import { circle } from "../../../src/geometry/circle.ts";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { extentsOf, pathLength } from "../../../src/geometry/measure.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { rectangle } from "../../../src/geometry/rectangle.ts";
import { type Edged, meshEdges } from "../../../src/geometry/seen/mesh-edges.ts";
import { seenLines } from "../../../src/geometry/seen/seen-lines.ts";
import { viewFrom } from "../../../src/geometry/seen/view.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const field = 0.25;

function edged(solid: Solid): Edged {
  const made = mesh(kernel, solid, 0.01);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  return meshEdges(made.mesh);
}

function box(x: number, y: number, z: number, wide: number, deep: number, high: number): Edged {
  const outlines = [{ outer: rectangle(x, y, x + wide, y + deep), holes: [] }];
  return edged({ kind: "extrude", outlines, base: z, height: high });
}

const long = (paths: readonly Path[]) => paths.reduce((sum, path) => sum + pathLength(path), 0);

const front = viewFrom({ x: 0, y: 0, z: 1 }, { x: 0, y: 1, z: 0 });
const aslant = viewFrom({ x: 1, y: 1, z: 1 }, { x: 0, y: 0, z: 1 });

describe("what is seen of solids", () => {
  it("of a box from its front is its border, as long as it is and where it is", () => {
    const { outline, corners } = seenLines([box(3, -4, 0, 40, 25, 10)], front, field);
    expect(long([...outline, ...corners])).toBeCloseTo(130, 3);
    expect(extentsOf(outline)).toMatchObject({ minX: 3, maxX: 43, minY: -4, maxY: 21 });
  });

  it("of a cube from its corner is six edges of its border and three within, each shortened alike", () => {
    const { outline, corners } = seenLines([box(0, 0, 0, 30, 30, 30)], aslant, field);
    const edge = 30 * Math.sqrt(2 / 3);
    expect(Math.abs(long(outline) - 6 * edge)).toBeLessThan(0.5);
    expect(Math.abs(long(corners) - 3 * edge)).toBeLessThan(0.5);
  });

  it("of a round rod is two lines along it and its ends' rims, and no facet", () => {
    const rod = edged({
      ...{ kind: "extrude", outlines: [{ outer: circle({ x: 0, y: 0 }, 10), holes: [] }], height: 50 },
    });
    const side = viewFrom({ x: 0, y: -1, z: 0 }, { x: 0, y: 0, z: 1 });
    const { outline, corners } = seenLines([rod], side, field);
    expect(Math.abs(long(outline) + long(corners) - 140)).toBeLessThan(1);
    const { minX, maxX } = extentsOf(outline)!;
    expect(Math.max(Math.abs(minX + 10), Math.abs(maxX - 10))).toBeLessThan(0.05);
  });

  it("of a box wholly behind another is nothing, and of one half behind it what stands out", () => {
    const before = box(0, 0, 20, 40, 30, 5);
    const alone = long(seenLines([before], front, field).outline);
    const hidden = seenLines([before, box(5, 5, 0, 20, 20, 5)], front, field);
    expect(long([...hidden.outline, ...hidden.corners])).toBeCloseTo(alone, 3);
    expect(hidden.midst()[1]).toBeNull();
    // 10 of its 20 stands out to the right: two pieces of 10 and an end of 20.
    const half = seenLines([before, box(30, 5, 0, 20, 20, 5)], front, field);
    expect(Math.abs(long([...half.outline, ...half.corners]) - alone - 40)).toBeLessThan(4 * field);
    const { x, y } = half.midst()[1]!;
    expect(Math.abs(x - 45)).toBeLessThan(2 * field);
    expect(Math.abs(y - 15)).toBeLessThan(2 * field);
    const places = [
      [20, 15],
      [35, 15],
      [45, 15],
      [45, 3],
      [-900, 0],
    ] as const;
    expect(places.map(([x, y]) => half.at({ x, y }))).toEqual([0, 0, 1, null, null]);
  });

  it("of two that are flush is still the line between them, but no step of a hair in one", () => {
    const side = viewFrom({ x: 0, y: -1, z: 0 }, { x: 0, y: 0, z: 1 });
    const joined = seenLines([box(0, 0, 0, 40, 10, 10), box(0, 0, 10, 40, 10, 10)], side, field);
    expect(Math.abs(long([...joined.outline, ...joined.corners]) - 160)).toBeLessThan(2);
    const stepped = edged({
      kind: "union",
      solids: [
        { kind: "extrude", outlines: [{ outer: rectangle(0, 0, 20, 10), holes: [] }], height: 10 },
        { kind: "extrude", outlines: [{ outer: rectangle(19, 0.01, 40, 10), holes: [] }], height: 10 },
      ],
    });
    const { outline, corners } = seenLines([stepped], side, field);
    expect(Math.abs(long([...outline, ...corners]) - 100)).toBeLessThan(2);
  });
});
