import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { between, cross, dot, lengthOf, unit, type Vec3 } from "../../../src/geometry/solid/vec3.ts";
import { sides } from "../../../src/order/side.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { wingSolidFiles } from "../../../src/workshop/solids/wing-solids.ts";
import { looked, type Made, madeOf, meshed } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

type Flat = { readonly normal: Vec3; readonly area: number };

/** The flat faces of a mesh, the largest first: triangles that look one way within a hundredth of a degree. */
function flatsOf({ positions, triangles }: TriangleMesh): Flat[] {
  const corner = (t: number): Vec3 => {
    const at = 3 * triangles[t]!;
    return { x: positions[at]!, y: positions[at + 1]!, z: positions[at + 2]! };
  };
  const found: { normal: Vec3; area: number }[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const twice = cross(between(corner(t), corner(t + 1)), between(corner(t), corner(t + 2)));
    const area = lengthOf(twice) / 2;
    if (area < 0.05) continue;
    const normal = unit(twice);
    const same = found.find((one) => dot(one.normal, normal) > 1 - 1.5e-8);
    if (same === undefined) found.push({ normal, area });
    else same.area += area;
  }
  return found.sort((a, b) => b.area - a.area);
}

const degrees = (cosine: number) => (Math.acos(cosine) * 180) / Math.PI;

/** The angle in the wood between a wing's front and its joint face, measured on the wing's own mesh: the largest flat face that looks neither to the front nor back. */
function inWood(made: Made, side: "bass" | "treble"): number {
  const file = wingSolidFiles(made.model).find(({ name }) => name === `wing-${side}`)!;
  const [front, joint] = faced(flatsOf(meshed(kernel, file.solid(memoryStore()))), made, side);
  return 180 - degrees(dot(front!.normal, joint!.normal));
}

/** Front and joint face: of the two largest, which lie opposite each other, that which looks to the front, and the next largest. */
function faced(flats: readonly Flat[], made: Made, side: "bass" | "treble"): Flat[] {
  const { w } = made.model.instrument.wings![side].place.frame;
  const big = flats.slice(0, 2).sort((a, b) => dot(b.normal, w) - dot(a.normal, w));
  expect(dot(big[0]!.normal, big[1]!.normal)).toBeLessThan(-0.999999);
  return [big[0]!, flats[2]!];
}

/** The angle of a gauge's inner corner on its mesh: between the two upright faces that the hole clears. */
function ofGauge(mesh: TriangleMesh): number {
  const upright = flatsOf(mesh).filter(({ normal, area }) => Math.abs(normal.z) < 1e-6 && area > 20);
  const front = upright.find(({ normal }) => normal.y < -0.999999);
  // The other arm's inner side looks down and to the right, toward the wing; its outer side looks the other way.
  const joint = upright.filter(
    (one) => one !== front && one.normal.x > 0.5 && Math.abs(one.normal.x) < 0.9999999,
  );
  expect(front).toBeDefined();
  expect(joint).toHaveLength(1);
  return 180 - degrees(dot(front!.normal, joint[0]!.normal));
}

const winged = looked.filter(({ design }) => design !== "thrift");

describe("a gauge for a wing's angle", () => {
  it.each(winged)(
    "of $design with $count strings has the angle that the wing's own mesh has, and not another wing's",
    ({ design, spec }) => {
      const made = madeOf(() => kernel, spec());
      const [bass, treble] = sides.map((side) => inWood(made, side));
      const [ofBass, ofTreble] = sides.map((side) => ofGauge(made.meshOf(`wing-angle-${side}`)));
      expect(Math.abs(bass! - ofBass!)).toBeLessThan(0.001);
      expect(Math.abs(treble! - ofTreble!)).toBeLessThan(0.001);
      // Where the wings are unlike, a gauge laid on the wrong one is found.
      if (design !== "bulrush") expect(Math.abs(treble! - ofBass!)).toBeGreaterThan(2);
    },
  );
});
