import { beforeAll, describe, expect, it } from "vitest";
import { solidChecks, solidFindings } from "../../src/checks/assembly/solid-checks.ts";
import type { Finding } from "../../src/checks/check.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { fromFrame } from "../../src/geometry/solid/frame.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import type { Vec3 } from "../../src/geometry/solid/vec3.ts";
import type { Fit } from "../../src/instrument/assembly/fits.ts";
import { coreAxes } from "../../src/instrument/core/from-core.ts";
import { assembledMeshes, meshedOnce } from "../../src/pack/meshed-once.ts";
import { memoryStore } from "../../src/step/store.ts";
import { measured, type Standing, standing } from "../../src/workshop/assembly/assembled.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { everyCount, frettedSpec, specOf } from "../samples.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

type Put = { readonly model: Model; readonly all: Standing };

function put(spec = specOf("sedge", 5)): Put {
  const store = memoryStore();
  const model = modelOf(spec, store);
  const parts = assembledMeshes(model, meshedOnce(kernel, store));
  return { model, all: standing(model, parts, kernel, store) };
}

function found({ model, all }: Put): Finding[] {
  return solidFindings(model, measured(all, kernel));
}

/** The checks that refuse, and what they say. */
function refusals(stands: Put): Record<string, string> {
  return Object.fromEntries(
    found(stands)
      .filter(({ status }) => status === "refuse")
      .map(({ id, why }) => [id, why]),
  );
}

/** The same with one part's places changed: all its own fits, and of the others one of each kind. */
function changed({ model, all }: Put, name: string, change: (at: Vec3) => Vec3): Put {
  expect(all.meshes.map((one) => one.name)).toContain(name);
  const meshes = all.meshes.map((one) => (one.name === name ? { name, mesh: moved(one.mesh, change) } : one));
  const kinds = [
    ({ kind }: Fit) => kind !== "clear",
    ({ kind, first }: Fit) => kind === "clear" && !first.startsWith("string."),
    ({ first }: Fit) => first.startsWith("string."),
  ];
  const kept = kinds.map((is) => all.fits.find(is)!);
  const fits = all.fits.filter((fit) => [fit.first, fit.second].includes(name) || kept.includes(fit));
  return { model, all: { fits, meshes } };
}

function moved({ positions, triangles }: TriangleMesh, change: (at: Vec3) => Vec3): TriangleMesh {
  const out = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    const { x, y, z } = change({ x: positions[i]!, y: positions[i + 1]!, z: positions[i + 2]! });
    out.set([x, y, z], i);
  }
  return { positions: out, triangles };
}

const by = (x: number, y: number, z: number) => (at: Vec3) => ({ x: at.x + x, y: at.y + y, z: at.z + z });

/** By day one count a design, at night all. */
const looked = everyCount.filter(({ count }) => process.env.NIGHTLY !== undefined || count === 5);

describe("the assembled instrument", () => {
  it.each(looked)(
    "of $design with $count strings joins, and is clear, as it is meant to",
    ({ design, count }) => {
      const stands = put(specOf(design, count));
      const all = found(stands);
      expect(all.map(({ id }) => id)).toEqual(solidChecks.map(({ id }) => id));
      for (const { status, why } of all) expect(status, why).toBe("pass");
      const { fits } = stands.all;
      const winged = stands.model.spec.wings !== null;
      // Every two of its parts, but for what lies in a cradle.
      const parts = winged ? 7 : 6;
      const among = fits.filter(({ first }) => !first.startsWith("string."));
      expect(among).toHaveLength((parts * (parts - 1)) / 2);
      expect(fits.filter(({ first }) => first.startsWith("string."))).toHaveLength(count * (parts - 3));
      const joints = fits
        .filter(({ kind }) => kind !== "clear")
        .map(({ first, second }) => `${first} ${second}`);
      expect(joints.sort()).toEqual(
        [
          ...["neck fingerboard", "neck nut", "nut fingerboard"],
          ...(winged
            ? ["neck bridge", "neck wing-bass", "neck wing-treble"]
            : ["neck body", "pickup bridge"]),
        ].sort(),
      );
    },
  );

  it("of the other hand is measured as the same", () => {
    const [left, right] = (["left", "right"] as const).map((hand) =>
      measured(put(specOf("sedge", 5, "", { hand })).all, kernel),
    );
    for (const [i, { fit, gap, facing }] of right!.entries()) {
      expect(left![i]!.fit).toEqual(fit);
      expect(Math.abs(left![i]!.gap - gap)).toBeLessThan(1e-3);
      expect(Math.abs((left![i]!.facing?.area ?? 0) - (facing?.area ?? 0))).toBeLessThan(1);
    }
  });

  it("of a fretted board in a body joins too", () => {
    expect(refusals(put(frettedSpec(5)))).toEqual({});
  });
});

describe("a planted fault in the assembly", () => {
  let sedge: Put;
  let thrift: Put;
  beforeAll(() => {
    sedge = put(specOf("sedge", 5));
    thrift = put(specOf("thrift", 5));
  });

  it.each<[string, string, (at: Vec3) => Vec3, string]>([
    ["a wing 0.05 in the core", "wing-treble", by(0, -0.05, 0), "the neck and the treble wing"],
    ["the other wing 0.05 in the core", "wing-bass", by(0, 0.05, 0), "the neck and the bass wing"],
    ["a board 0.05 in the neck", "fingerboard", by(0, 0, -0.05), "the neck and the fingerboard"],
    ["a nut 0.05 in the board", "nut", by(0.05, 0, 0), "the nut and the fingerboard"],
    ["a bridge 0.05 in the core", "bridge", by(0, 0, -0.05), "the neck and the bridge"],
  ])("is found: %s", (_, part, move, names) => {
    expect(refusals(sedge)).toEqual({});
    expect(refusals(changed(sedge, part, move))["assembly.overlap"]).toContain(names);
  });

  it.each<[string, string, (at: Vec3) => Vec3, string]>([
    ["a wing 0.05 off the core", "wing-treble", by(0, 0.05, 0), "the neck and the treble wing"],
    ["a board 0.05 off the neck", "fingerboard", by(0, 0, 0.05), "the neck and the fingerboard"],
    ["a board 0.05 off the nut", "fingerboard", by(0.05, 0, 0), "the nut and the fingerboard"],
    ["a nut 0.05 off the neck", "nut", by(0, 0, 0.05), "the neck and the nut"],
    ["a bridge 0.05 off the core", "bridge", by(0, 0, 0.05), "the neck and the bridge"],
  ])("is found: %s", (_, part, move, names) => {
    const said = refusals(changed(sedge, part, move));
    expect(said["assembly.gap"]).toContain(names);
    expect(said["assembly.flush"]).toContain(names);
  });

  it("is found: a body 0.05 off the core's back or in it, and a core in its wall", () => {
    expect(refusals(thrift)).toEqual({});
    expect(refusals(changed(thrift, "body", by(0, 0, -0.05)))["assembly.gap"]).toContain("the body");
    expect(refusals(changed(thrift, "body", by(0, 0, 0.05)))["assembly.overlap"]).toContain("the body");
    expect(refusals(changed(thrift, "body", by(0, 0.3, 0)))["assembly.overlap"]).toContain("the body");
    expect(refusals(changed(thrift, "bridge", by(0, 0, 0.05)))["assembly.gap"]).toContain("the pickup");
  });

  it("is found: a joint face off by 0.05 degrees, about the joint line or along it", () => {
    const turn = (0.05 * Math.PI) / 180;
    const wing = sedge.model.instrument.wings!.treble;
    const x = wing.place.x;
    const half = sedge.model.spec.values["core.width"]!.value / 2;
    const inPlan = ({ x: a, y, z }: Vec3) => ({ x: a - (y - half) * turn, y: y + (a - x) * turn, z });
    const onSide = ({ x: a, y, z }: Vec3) => ({ x: a, y: y - (z + 20) * turn, z: z + (y - half) * turn });
    for (const move of [inPlan, onSide]) {
      const said = refusals(changed(sedge, "wing-treble", move));
      expect(said["assembly.angle"]).toContain("the neck and the treble wing");
      expect(said["assembly.flush"]).toContain("the neck and the treble wing");
    }
    // A tenth of what is asked for is let be.
    const little = (at: Vec3) => ({ ...at, y: at.y + (at.x - x) * 1e-5 });
    expect(refusals(changed(sedge, "wing-treble", little))["assembly.angle"]).toBeUndefined();
  });

  it("is found: a string that runs through the board, and one through a wing", () => {
    expect(refusals(changed(sedge, "string.D4", by(0, 0, -8)))["assembly.strings"]).toContain(
      "string D4 and",
    );
    expect(refusals(changed(sedge, "string.E5", by(0, 30, -25)))["assembly.strings"]).toContain(
      "string E5 and the treble wing",
    );
  });

  it("is found: a tailpiece too near the core, one in the bridge, a wing under the board, a nut within a wing", () => {
    const down = found(changed(sedge, "tailpiece", by(0, 0, -9))).find(({ id }) => id === "assembly.clear")!;
    expect(down).toMatchObject({ status: "refuse", limit: 2 });
    expect(down.why).toContain("the neck and the tailpiece");
    expect(down.holds).toEqual(["assembly", "neck", "tailpiece"]);
    expect(refusals(changed(sedge, "tailpiece", by(-60, 0, 4)))["assembly.clear"]).toMatch(
      /and the tailpiece/,
    );
    // A nut that lies wholly in a wing touches nothing of its surface.
    const { place } = sedge.model.instrument.wings!.treble;
    const inWing = fromFrame(place.frame, 75, 28, -9);
    const { x, y, z } = fromFrame(coreAxes(sedge.model.instrument.core), inWing.x, inWing.y, inWing.z);
    const said = refusals(changed(sedge, "nut", by(x + 3, y, z - 3)));
    expect(said["assembly.clear"]).toMatch(/the nut and the treble wing.* mm3 in both/);
  });
});
