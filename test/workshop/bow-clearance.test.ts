import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { sides } from "../../src/order/side.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

type V = readonly [number, number, number];

type Triangle = readonly [V, V, V];
type Box = { readonly least: V; readonly most: V };

function trianglesOf(solid: Solid): Triangle[] {
  const made = mesh(kernel, solid, 0.01);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  const { positions, triangles } = made.mesh;
  const at = (i: number): V => [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!];
  return Array.from({ length: triangles.length / 3 }, (_, t) => {
    return [at(triangles[3 * t]!), at(triangles[3 * t + 1]!), at(triangles[3 * t + 2]!)];
  });
}

/** Corners of ever smaller parts of triangles that reach into a box, at most so far apart. */
function placesIn(triangles: readonly Triangle[], box: Box, apart: number): V[] {
  const found: V[] = [];
  const middle = (a: V, b: V): V => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
  const far = (a: V, b: V) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
  const look = ([a, b, c]: Triangle): void => {
    for (const k of [0, 1, 2] as const)
      if (Math.max(a[k], b[k], c[k]) < box.least[k] || Math.min(a[k], b[k], c[k]) > box.most[k]) return;
    if (Math.max(far(a, b), far(b, c), far(c, a)) < apart) {
      found.push(a, b, c);
      return;
    }
    const [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
    for (const part of [
      [a, ab, ca],
      [ab, b, bc],
      [ca, bc, c],
      [ab, bc, ca],
    ] as const)
      look(part);
  };
  for (const triangle of triangles) look(triangle);
  return found;
}

/** The least distance from the hair, at its outermost tilt on a side, to places under it: the definition of the trade notes, place by place. */
function byPlaces(spec: Spec, side: "bass" | "treble", places: readonly V[]): { distance: number; place: V } {
  const { instrument } = modelOf(spec, memoryStore());
  const i = side === "treble" ? 0 : spec.count - 1;
  const s = side === "treble" ? 1 : -1;
  const [length, end] = [spec.values["string.length"]!.value, spec.values["fingerboard.length"]!.value];
  const nut = [instrument.layout.nut[i]!, instrument.heights.nut[i]!] as const;
  const bridge = [instrument.layout.bridge[i]!, instrument.heights.bridge[i]!] as const;
  const tilt = (instrument.bow.outermost[side] * Math.PI) / 180;
  const string: V = [1, (bridge[0] - nut[0]) / length, (bridge[1] - nut[1]) / length];
  const hair: V = [0, s * Math.cos(tilt), -Math.sin(tilt)];
  const up = [1, -1]
    .map(
      (f) =>
        [
          f * (string[1] * hair[2] - string[2] * hair[1]),
          f * (string[2] * hair[0] - string[0] * hair[2]),
          f * (string[0] * hair[1] - string[1] * hair[0]),
        ] as V,
    )
    .find((n) => n[2] > 0)!;
  const size = Math.hypot(...up);
  let least = { distance: Number.POSITIVE_INFINITY, place: [0, 0, 0] as V };
  for (const [x, y, z] of places) {
    const over = (x * up[0] + (y - nut[0]) * up[1] + (z - nut[1]) * up[2]) / size;
    const [px, py, pz] = [x - (over * up[0]) / size, y - (over * up[1]) / size, z - (over * up[2]) / size];
    const out = (py - nut[0] - px * string[1]) * hair[1] + (pz - nut[1] - px * string[2]) * hair[2];
    if (out < 0) continue;
    const under = [-8, 0, 8].some((skew) => {
      const along = px - out * Math.cos(tilt) * Math.tan((skew * Math.PI) / 180);
      return along > end + 2 && along < length - 4;
    });
    if (under && -over < least.distance) least = { distance: -over, place: [x, y, z] };
  }
  return least;
}

// By day a winged design and a body in one piece.
const looked = everyCount.filter(
  ({ design, count }) =>
    process.env.NIGHTLY !== undefined || (count === 5 && ["sedge", "thrift"].includes(design)),
);

describe("the bow over core, wings and body", () => {
  it.each(looked)(
    "of $design with $count strings clears their meshes as the report says",
    ({ design, count }) => {
      const spec = specOf(design, count);
      const { instrument } = modelOf(spec, memoryStore());
      const [end, length] = [spec.values["fingerboard.length"]!.value, spec.values["string.length"]!.value];
      const neck = trianglesOf(instrument.neckSolid);
      for (const side of sides) {
        const all = [...neck, ...trianglesOf(instrument.wings?.[side].solid ?? instrument.body!.solid)];
        const there: Box = { least: [end - 20, -200, -100], most: [length + 20, 200, 50] };
        const { place } = byPlaces(spec, side, placesIn(all, there, 2));
        const near: Box = {
          least: [place[0] - 3, place[1] - 3, place[2] - 3],
          most: [place[0] + 3, place[1] + 3, place[2] + 3],
        };
        const { distance } = byPlaces(spec, side, placesIn(all, near, 0.08));
        expect(Math.abs(distance - instrument.bowClearance[side].surface), side).toBeLessThan(0.02);
      }
    },
  );

  it("comes nearer to a wing that is turned up by ten degrees, and through one that stands in its way", () => {
    const clearance = (cant: number) => {
      const { instrument } = modelOf(specOf("bulrush", 5), memoryStore());
      const plain = instrument.bowClearance.treble.surface;
      const spec = specOf("bulrush", 5);
      const turned = {
        ...spec,
        values: { ...spec.values, "wing.treble.cant": { ...spec.values["wing.treble.cant"]!, value: cant } },
      };
      return { plain, turned: modelOf(turned, memoryStore()).instrument.bowClearance.treble.surface };
    };
    const { plain, turned } = clearance(0);
    expect(turned).toBeLessThan(plain - 3);
    expect(clearance(-45).turned).toBeLessThan(0);
  });
});
