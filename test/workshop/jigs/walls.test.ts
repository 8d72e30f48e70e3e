import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import type { TriangleMesh } from "../../../src/geometry/solid/triangle-mesh.ts";
import { printed } from "../../../src/workshop/jigs/print-rules.ts";
import { hits } from "../../ray.ts";
import { looked, madeOf } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** How thick each stretch of plastic is that a line passes through, mm. */
function thick(
  mesh: TriangleMesh,
  from: readonly [number, number, number],
  way: readonly [number, number, number],
): number[] {
  const found = hits(mesh, from, way);
  return Array.from({ length: Math.floor(found.length / 2) }, (_, i) => found[2 * i + 1]! - found[2 * i]!);
}

/** Where a jig's plastic is looked at: lines along one axis at shares of the jig's own box, and how many walls each passes. */
const looks: readonly {
  readonly jig: RegExp;
  readonly way: "x" | "y";
  readonly at: readonly [number, number];
  readonly walls: number;
}[] = [
  // Near their tops: two lips beside a channel or a head.
  { jig: /^caul-/, way: "y", at: [0.5, 0.97], walls: 2 },
  { jig: /^drill-tuners/, way: "y", at: [0.5, 0.9], walls: 2 },
  { jig: /^drill-index-(head|tail)/, way: "y", at: [0.5, 0.9], walls: 2 },
  // A plate standing on its foot.
  { jig: /^drill-joint-/, way: "y", at: [0.6, 0.8], walls: 1 },
];

describe.each(looked)("the walls of the jigs of $design with $count strings", ({ spec }) => {
  const { model, files, meshOf } = madeOf(() => kernel, spec());

  it("are as thick as a printer needs them", () => {
    let seen = 0;
    for (const { jig, way, at, walls } of looks) {
      for (const { name } of files.filter((file) => jig.test(file.name))) {
        const mesh = meshOf(name);
        const { least, most } = meshMeasures(mesh);
        const place = (axis: "x" | "y" | "z", share: number) =>
          least[axis] + share * (most[axis] - least[axis]);
        const found =
          way === "y"
            ? thick(mesh, [place("x", at[0]), -500, place("z", at[1])], [0, 1, 0])
            : thick(mesh, [-500, place("y", at[0]), place("z", at[1])], [1, 0, 0]);
        expect(found, name).toHaveLength(walls);
        for (const wall of found) expect(wall, name).toBeGreaterThan(printed.wall);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(2);
  });

  it("between the notches for strings are, and beside the outer ones", () => {
    const nut = thick(meshOf("notches-nut"), [-500, 0.3, 1], [1, 0, 0]);
    // What stands between two notches, or between an outer one and a leg.
    expect(nut).toHaveLength(model.spec.count + 1);
    for (const wall of nut) expect(wall).toBeGreaterThan(printed.wall);
    // The bridge's edge is an arc, that ends so far from the outer strings; half a notch is 1.2 wide.
    expect(model.spec.values["bridge.margin"]!.value - 1.2).toBeGreaterThan(printed.wall);
  });
});
