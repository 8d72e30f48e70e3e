import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshProblem } from "../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import { sides } from "../../src/order/side.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

function meshOf(solid: Solid): TriangleMesh {
  const made = mesh(kernel, solid, 0.03);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  expect(meshProblem(made.mesh)).toBeUndefined();
  return made.mesh;
}

type V = [number, number, number];
const minus = (a: V, b: V): V => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const scalar = (a: V, b: V) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const vector = (a: V, b: V): V => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The greatest flat face of a mesh that looks a given way, within three degrees, between two places along x: its area, mean normal and a place on it. */
function faceToward({ positions, triangles }: TriangleMesh, way: V, [from, to]: readonly [number, number]) {
  const at = (i: number): V => [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!];
  const all: { corners: readonly V[]; twice: V; size: number }[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [at(triangles[t]!), at(triangles[t + 1]!), at(triangles[t + 2]!)] as const;
    const twice = vector(minus(corners[1], corners[0]), minus(corners[2], corners[0]));
    const size = Math.hypot(...twice);
    const along = corners.map(([x]) => x);
    const looks = size > 0 && scalar(twice, way) / size > Math.cos(Math.PI / 60);
    if (looks && Math.max(...along) > from && Math.min(...along) < to) all.push({ corners, twice, size });
  }
  const largest = all.reduce((a, b) => (b.size > a.size ? b : a));
  // The bottoms of the pins' holes look the same way.
  const flat = all.filter(({ corners }) => {
    const off = scalar(minus(corners[0]!, largest.corners[0]!), largest.twice) / largest.size;
    return Math.abs(off) < 1;
  });
  const area = flat.reduce((sum, { size }) => sum + size / 2, 0);
  const mean = (of: (triangle: (typeof flat)[number], i: 0 | 1 | 2) => number) =>
    ([0, 1, 2] as const).map((i) => flat.reduce((sum, triangle) => sum + of(triangle, i), 0)) as V;
  const sum = mean(({ twice }, i) => twice[i]);
  return {
    ...{ area, corners: flat.flatMap(({ corners }) => corners) },
    normal: sum.map((n) => n / Math.hypot(...sum)) as V,
    place: mean(
      ({ corners, size }, i) => ((corners[0]![i] + corners[1]![i] + corners[2]![i]) * size) / 6 / area,
    ),
  };
}

/** How far a wing's mating face is off the core's side: the greatest distance, mm, and the angle between the two, degrees. */
function misfit(wing: ReturnType<typeof faceToward>, core: ReturnType<typeof faceToward>) {
  const off = wing.corners.map((corner) => Math.abs(scalar(minus(corner, core.place), core.normal)));
  const sine = Math.hypot(...vector(wing.normal, core.normal));
  return { distance: Math.max(...off), angle: (Math.asin(sine) * 180) / Math.PI };
}

const winged = everyCount.filter(
  ({ design }) => specOf(design, everyCount.find((e) => e.design === design)!.count).wings !== null,
);

describe("wings as solids", () => {
  it("are there in every design that has any", () => {
    expect(new Set(winged.map(({ design }) => design))).toEqual(new Set(["sedge", "mallow", "bulrush"]));
  });

  it.each(winged)(
    "of $design with $count strings lie on the core's sides all over their joint",
    ({ design, count }) => {
      const { instrument } = modelOf(specOf(design, count), memoryStore());
      const neck = meshOf(instrument.neckSolid);
      for (const side of sides) {
        const { solid, place, joint } = instrument.wings![side];
        const s = side === "treble" ? 1 : -1;
        const reach: [number, number] = [place.x - 5, place.x + joint.length + 5];
        const core = faceToward(neck, [0, s, 0], [place.x + 1, place.x + joint.length - 8]);
        const mating = faceToward(meshOf(solid), [0, -s, 0], reach);
        expect(core.area).toBeGreaterThan(mating.area);
        const { distance, angle } = misfit(mating, core);
        expect(distance).toBeLessThan(0.01);
        expect(angle).toBeLessThan(0.01);
        // The eased edges end at the joint, so its corners lack a little.
        // So does the bore of a wire that comes through it.
        expect(mating.area / joint.area).toBeGreaterThan(0.985);
        expect(mating.area / joint.area).toBeLessThan(1.0005);
      }
    },
  );

  it("off by 0.05 degrees or by 0.05 mm are found", () => {
    const { instrument } = modelOf(specOf("mallow", 4), memoryStore());
    const { solid, place, joint } = instrument.wings!.treble;
    const core = faceToward(
      meshOf(instrument.neckSolid),
      [0, 1, 0],
      [place.x + 1, place.x + joint.length - 8],
    );
    const moved = (by: V, turn: number) => {
      const [c, t] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
      const frame = {
        origin: { x: by[0], y: by[1], z: by[2] },
        ...{ u: { x: c, y: t, z: 0 }, v: { x: -t, y: c, z: 0 }, w: { x: 0, y: 0, z: 1 } },
      };
      const face = faceToward(
        meshOf({ kind: "place", solid, frame }),
        [0, -1, 0],
        [place.x - 15, place.x + joint.length + 15],
      );
      return misfit(face, core);
    };
    expect(moved([0, 0, 0], 0).angle).toBeLessThan(0.01);
    expect(moved([0, 0, 0], 0.05).angle).toBeGreaterThan(0.045);
    expect(moved([0, 0.05, 0], 0).distance).toBeGreaterThan(0.045);
    expect(moved([0, -0.05, 0], 0).distance).toBeGreaterThan(0.045);
  });
});
