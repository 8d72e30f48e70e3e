import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { between, cross, lengthOf, type Vec3 } from "../../../src/geometry/solid/vec3.ts";
import { printed } from "../../../src/workshop/jigs/print-rules.ts";
import { hits } from "../../ray.ts";
import { box, looked, madeOf, meshed } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** Places in the corners of the faces that lean out over nothing by more than a printer may, but for those that lie on the bed. */
function leaning({ positions, triangles }: TriangleMesh): Vec3[] {
  const at = (i: number): Vec3 => {
    const from = 3 * triangles[i]!;
    return { x: positions[from]!, y: positions[from + 1]!, z: positions[from + 2]! };
  };
  const bed = Math.min(...[...positions].filter((_, i) => i % 3 === 2));
  // A face that looks down by more than it looks aside leans out by more than the angle.
  const down = Math.sin(((printed.overhang + 0.5) * Math.PI) / 180);
  const found: Vec3[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [at(t), at(t + 1), at(t + 2)];
    const normal = cross(between(a, b), between(a, c));
    const [z, area] = [(a.z + b.z + c.z) / 3, lengthOf(normal) / 2];
    if (-normal.z <= down * lengthOf(normal) || z < bed + 0.01 || area < 1e-3) continue;
    const [x, y] = [(a.x + b.x + c.x) / 3, (a.y + b.y + c.y) / 3];
    const within = (from: number, to: number) => from + (to - from) / 10;
    for (const corner of [a, b, c])
      found.push({ x: within(corner.x, x), y: within(corner.y, y), z: within(corner.z, z) });
  }
  return found;
}

/** What printing bridges: a ledge of two strokes of the nozzle, or a span between two walls. */
const bridged = { ledge: 0.8, span: printed.bridge };

/** Whether what lies over nothing is held under by a wall near it, or by two that are no further apart than is bridged. */
function isHeld(mesh: TriangleMesh, { x, y, z }: Vec3): boolean {
  const ways = Array.from({ length: 12 }, (_, i) => (i * Math.PI) / 12);
  return ways.some((way) => {
    const [c, s] = [Math.cos(way), Math.sin(way)];
    const [one, other] = [1, -1].map((side) => {
      const found = hits(mesh, [x, y, z - 0.05], [side * c, side * s, 0]);
      return found.find((far) => far > 0) ?? Number.POSITIVE_INFINITY;
    });
    return Math.min(one!, other!) <= bridged.ledge || one! + other! <= bridged.span;
  });
}

function unheld(mesh: TriangleMesh): Vec3[] {
  return leaning(mesh).filter((place) => !isHeld(mesh, place));
}

describe("the faces of jigs that lean out over nothing", () => {
  it.each(looked)("of $design with $count strings are held from beneath or bridged", ({ spec }) => {
    const { files, meshOf } = madeOf(() => kernel, spec());
    let over = 0;
    for (const { name } of files) {
      const mesh = meshOf(name);
      over += leaning(mesh).length;
      expect(unheld(mesh), name).toEqual([]);
    }
    expect(over).toBeGreaterThan(100);
  });
});

describe("planted", () => {
  it("a ledge of two millimetres, and a span wider than is bridged, are found", () => {
    const foot = box([0, 0, 0], [10, 10, 10]);
    const ledge = meshed(kernel, { kind: "union", solids: [foot, box([0, 0, 9], [12, 10, 12])] });
    expect(unheld(ledge).length).toBeGreaterThan(0);
    const arch = (wide: number) =>
      meshed(kernel, {
        kind: "cut",
        from: box([0, 0, 0], [40, 10, 10]),
        by: [box([5, -1, -1], [5 + wide, 11, 6])],
      });
    expect(unheld(arch(bridged.span + 1)).length).toBeGreaterThan(0);
    expect(unheld(arch(bridged.span - 1))).toEqual([]);
    // One whose underside leans by forty-five degrees needs nothing.
    expect(leaning(widening(0.99))).toEqual([]);
    expect(leaning(widening(1.1)).length).toBeGreaterThan(0);
  });
});

/** A post that widens upward, by so much a millimetre of height. */
function widening(by: number): TriangleMesh {
  const square = (half: number) =>
    ({
      closed: true,
      points: [
        [-half, -half],
        [half, -half],
        [half, half],
        [-half, half],
      ].map(([x, y]) => ({ x: x!, y: y!, bulge: 0 })),
    }) as const;
  const at = (z: number) => ({
    origin: { x: 0, y: 0, z },
    u: { x: 1, y: 0, z: 0 },
    v: { x: 0, y: 1, z: 0 },
    w: { x: 0, y: 0, z: 1 },
  });
  return meshed(kernel, {
    kind: "loft",
    sections: [
      { kind: "path", path: square(5), frame: at(0) },
      { kind: "path", path: square(5 + 10 * by), frame: at(10) },
    ],
  });
}
