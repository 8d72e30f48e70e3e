import { beforeAll, describe, expect, it } from "vitest";
import { sawLine } from "../../src/checks/saw-line.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import type { Path } from "../../src/geometry/path.ts";
import { rectangle } from "../../src/geometry/rectangle.ts";
import { clash } from "../../src/geometry/solid/clash.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { someCounts, specOf } from "../samples.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

type Kept = { readonly plan: Path; readonly side: Path };

function keptOf({ sawing }: Model): Kept {
  const { plan, side } = sawing.cuts;
  if (plan.kind !== "ok" || side.kind !== "ok") throw new Error("no saw lines");
  return { plan: plan.kept, side: side.kept };
}

/** The blank after both cuts: the two kept outlines, each raised square through the other. */
function sawn({ plan, side }: Kept): Solid {
  return {
    kind: "intersect",
    solids: [
      { kind: "extrude", outlines: [{ outer: plan, holes: [] }], base: -300, height: 600 },
      {
        kind: "place",
        solid: { kind: "extrude", outlines: [{ outer: side, holes: [] }], height: 600 },
        frame: {
          origin: { x: 0, y: 300, z: 0 },
          u: { x: 1, y: 0, z: 0 },
          v: { x: 0, y: 0, z: 1 },
          w: { x: 0, y: -1, z: 0 },
        },
      },
    ],
  };
}

/** How near the outside of the sawn blank comes to the finished neck, from their solids: 0 where the saw went into it. */
function woodFromSolids(model: Model, kept: Kept): number {
  const far = 3000;
  const around: Solid = {
    kind: "extrude",
    outlines: [
      {
        outer: rectangle(-far, -far, far, far),
        holes: [],
      },
    ],
    base: -far,
    height: 2 * far,
  };
  const neck = mesh(kernel, model.instrument.neckSolid, 0.02);
  if (neck.kind !== "ok") throw new Error(JSON.stringify(neck));
  const found = clash(
    kernel,
    { kind: "mesh", mesh: neck.mesh },
    { kind: "cut", from: around, by: [sawn(kept)] },
  );
  if (found.kind !== "ok") throw new Error(JSON.stringify(found));
  return found.interference > 1e-3 ? 0 : found.gap;
}

/** The same outline moved up by so much: a saw line that much too deep at the back. */
function moved(path: Path, by: number): Path {
  return { ...path, points: path.points.map((point) => ({ ...point, y: point.y + by })) };
}

describe.each(someCounts)("the sawn neck of $design with $count strings", ({ design, count }) => {
  const model = modelOf(specOf(design, count), memoryStore());
  const limit = model.spec.values["saw.least"]!.value;

  it("has the least allowance left outside the finished neck everywhere, from the solids", () => {
    const checked = (["plan", "side"] as const).map((view) => sawLine(view).of(model));
    const least = Math.min(...checked.map(({ found }) => found));
    const wood = woodFromSolids(model, keptOf(model));
    expect(wood).toBeGreaterThanOrEqual(limit);
    expect(Math.abs(wood - least), `checks ${least}, solids ${wood}`).toBeLessThan(0.05);
    for (const { status } of checked) expect(status).toBe("pass");
  });
});

describe("a side line a millimetre too deep", () => {
  const model = modelOf(specOf("sedge", 5), memoryStore());
  const kept = keptOf(model);
  const side = moved(kept.side, 1);

  it("is found by the check, which holds the drawing back", () => {
    const { cuts } = model.sawing;
    const spoiled: Model = {
      ...model,
      sawing: { ...model.sawing, cuts: { ...cuts, side: { ...cuts.side, kept: side } as typeof cuts.side } },
    };
    expect(sawLine("side").of(spoiled)).toMatchObject({
      ...{ status: "refuse", found: expect.closeTo(1, 1), holds: ["neck-saw-side"] },
      why: expect.stringContaining("less wood than wanted"),
    });
    expect(sawLine("plan").of(spoiled).status).toBe("pass");
  });

  it("is found by the solids", () => {
    const wood = woodFromSolids(model, { ...kept, side });
    expect(wood).toBeLessThan(1.2);
    expect(wood).toBeGreaterThan(0.8);
  });

  it("deeper than the allowance is in the neck", () => {
    const deep = moved(kept.side, 6);
    expect(woodFromSolids(model, { ...kept, side: deep })).toBe(0);
  });
});
