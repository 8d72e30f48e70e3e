import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { pathLength, signedArea } from "../../src/geometry/measure.ts";
import { clash } from "../../src/geometry/solid/clash.ts";
import { fromFrame, upright } from "../../src/geometry/solid/frame.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import type { Vec3 } from "../../src/geometry/solid/vec3.ts";
import { madeBody } from "../../src/instrument/body/body.ts";
import { coreAxes } from "../../src/instrument/core/from-core.ts";
import { dimensionOf } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { solidFiles } from "../../src/workshop/solids/solids.ts";
import { type BodyKind, bodySpec } from "../own-body.ts";
import { designs } from "../samples.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const store = memoryStore();

function fileOf(count: number, kind: BodyKind, hand: "right" | "left" = "right") {
  const model = modelOf(bodySpec(count, kind, hand), store);
  const file = solidFiles(model).find(({ name }) => name === "body")!;
  return { model, key: file.key, solid: file.solid(store) };
}

function meshOf(solid: Solid) {
  const made = mesh(kernel, solid, 0.01);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  expect(meshProblem(made.mesh)).toBeUndefined();
  return made.mesh;
}

function moved(solid: Solid, origin: Vec3): Solid {
  return { kind: "place", solid, frame: { ...upright, origin } };
}

/**
 * The volume in closed form. An outline that turns once, moved inward by x, loses x times its length less pi x² (Steiner); a rounding
 * of radius r takes that, from the wall to the face. Corners between bouts and waist do no harm to that as long as they are wider than r.
 */
function volumeOf({ spec, instrument: made }: Model): number {
  const of = (id: string) => dimensionOf(spec, id);
  const { outline, recess } = madeBody(made.body!);
  const [r, thick] = [of("body.arris"), of("body.thickness")];
  const slice = r ** 2 * (1 - Math.PI / 4);
  const edge = pathLength(outline.path) * slice - Math.PI * r ** 3 * (5 / 3 - Math.PI / 2);
  // The room runs out over the straight head end, where the rounding has taken some of its wood already.
  const room = signedArea(recess.path) - 2 * recess.half.head * (of("body.start") - recess.path.points[0]!.x);
  const through = spec.body!.core === "through";
  const deep = through ? thick : recess.depth;
  const taken = room * deep - 2 * recess.half.head * slice * (through ? 2 : 1);
  return signedArea(outline.path) * thick - 2 * edge - taken;
}

/** By night at every count. */
const counts = process.env.NIGHTLY === undefined ? [4, 7] : designs.thrift;
const kinds: readonly (BodyKind & { count: number })[] = [
  ...counts.map((count) => ({ count, core: "recess", corners: "none" }) as const),
  { count: 5, core: "through", corners: "none" },
];

describe.each(kinds)("the body as a solid with $count strings, core $core", ({ count, ...kind }) => {
  const { model, solid } = fileOf(count, kind);
  const of = (id: string) => dimensionOf(model.spec, id);

  it("is closed, and has the volume that a formula gives within 0.05 %", () => {
    const { volume } = meshMeasures(meshOf(solid));
    expect(Math.abs(volume / volumeOf(model) - 1)).toBeLessThan(0.0005);
  });

  it("takes in the neck's core with its clearance a side, on the floor if there is one", () => {
    const { neckSolid, core, body } = model.instrument;
    const { w, v } = coreAxes(core);
    const clearance = of("body.recess.clearance");
    const up = (by: number) => moved(neckSolid, { x: w.x * by, y: 0, z: w.z * by });
    const lifted = clash(kernel, up(0.5), solid, 0.02);
    if (lifted.kind !== "ok") throw new Error(lifted.kind);
    expect(lifted.interference).toBe(0);
    expect(Math.abs(lifted.gap - clearance)).toBeLessThan(0.005);
    const lying = clash(kernel, neckSolid, solid, 0.02);
    if (lying.kind !== "ok") throw new Error(lying.kind);
    // Faces in one plane may overlap by the rounding of the meshes.
    expect(lying.interference).toBeLessThan(0.01);
    if (kind.core === "through") expect(Math.abs(lying.gap - clearance)).toBeLessThan(0.005);
    else {
      const { recess } = madeBody(body!);
      const floor = 2 * (recess.half.head - clearance) * (recess.end - clearance - of("body.start"));
      // Less its two corners, what the rounding at the back takes off the floor's end, and slivers that the measure passes over.
      expect(Math.abs(lying.contact / floor - 1)).toBeLessThan(0.005);
    }
    // The saboteur: a neck a twentieth further aside than the clearance, and one a twentieth too deep.
    const aside = clash(kernel, moved(neckSolid, { ...v, y: clearance + 0.05, z: 0 }), solid, 0.02);
    expect(aside.kind === "ok" && aside.interference).toBeGreaterThan(100);
    const sunk = clash(kernel, up(-0.05), solid, 0.02);
    if (kind.core === "recess") expect(sunk.kind === "ok" && sunk.interference).toBeGreaterThan(100);
    else expect(sunk.kind === "ok" && sunk.interference).toBeLessThan(0.01);
  });

  it("stands where the core does, its front under the core's", () => {
    const { positions } = meshOf(solid);
    const axes = coreAxes(model.instrument.core);
    const places = Array.from({ length: positions.length / 3 }, (_, i) => {
      const [x, y, z] = [0, 1, 2].map(
        (k) => positions[3 * i + k]! - [axes.origin.x, axes.origin.y, axes.origin.z][k]!,
      );
      return { along: x! * axes.u.x + z! * axes.u.z, across: y!, up: x! * axes.w.x + z! * axes.w.z };
    });
    const range = (name: "along" | "across" | "up") => {
      const all = places.map((place) => place[name]);
      return [Math.min(...all), Math.max(...all)] as const;
    };
    expect(range("along")[0]).toBeCloseTo(of("body.start"), 3);
    expect(Math.abs(range("along")[1] - of("body.start") - of("body.length"))).toBeLessThan(0.02);
    expect(range("up")[1]).toBeCloseTo(-of("body.drop"), 3);
    expect(range("up")[0]).toBeCloseTo(-of("body.drop") - of("body.thickness"), 3);
    expect(range("across")[0] + range("across")[1]).toBeCloseTo(0, 2);
    const corner = fromFrame(axes, of("body.start"), 0, -of("body.drop"));
    expect(corner.z).toBeLessThan(0);
  });
});

it("a body with four corners is closed", () => {
  const { solid, model } = fileOf(4, { core: "recess", corners: "four" });
  const { volume } = meshMeasures(meshOf(solid));
  expect(Math.abs(volume / volumeOf(model) - 1)).toBeLessThan(0.0005);
});

it("a left-hand body is another file of the same body turned over", () => {
  const [right, left] = [fileOf(7, kinds[0]!), fileOf(7, kinds[0]!, "left")];
  expect(left.key).not.toBe(right.key);
  const [a, b] = [meshMeasures(meshOf(right.solid)), meshMeasures(meshOf(left.solid))];
  expect(b.volume).toBeCloseTo(a.volume, 2);
  expect(b.most.y).toBeCloseTo(-a.least.y, 4);
});
