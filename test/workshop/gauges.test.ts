import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { rectangle } from "../../src/geometry/rectangle.ts";
import { clash } from "../../src/geometry/solid/clash.ts";
import type { Frame } from "../../src/geometry/solid/frame.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { neckStations } from "../../src/instrument/neck/profile-input.ts";
import { memoryStore } from "../../src/step/store.ts";
import { plateText } from "../../src/workshop/gauges/plate-text.ts";
import { raisedText } from "../../src/workshop/gauges/raised-text.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { solidFiles } from "../../src/workshop/solids/solids.ts";
import { someCounts, specOf } from "../samples.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** How near a gauge must lie to the neck all along its section, over its clearance, mm. */
const touching = 0.05;

/** A gauge laid on the neck with the middle of its plate at x. */
function laidOn(gauge: Solid, thickness: number, x: number): Solid {
  const frame: Frame = {
    origin: { x: x - thickness / 2, y: 0, z: 0 },
    u: { x: 0, y: 1, z: 0 },
    v: { x: 0, y: 0, z: 1 },
    w: { x: 1, y: 0, z: 0 },
  };
  return { kind: "place", solid: gauge, frame };
}

/** A wedge of the plate from the section's top middle, between two directions in degrees: a piece of the gauge to look at. */
function wedge(from: number, to: number, thickness: number): Solid {
  const at = (turn: number) => ({
    x: 200 * Math.cos((turn * Math.PI) / 180),
    y: 200 * Math.sin((turn * Math.PI) / 180),
    bulge: 0,
  });
  const outer = { closed: true, points: [{ x: 0, y: 0, bulge: 0 }, at(from), at(to)] };
  return { kind: "extrude", outlines: [{ outer, holes: [] }], height: thickness };
}

/** The neck near x alone, as a mesh: looking at all of it again for every piece of a gauge would take minutes. */
function neckNear(model: Model, x: number): Solid {
  const slab: Solid = {
    kind: "extrude",
    outlines: [{ outer: rectangle(x - 12, -200, x + 12, 200), holes: [] }],
    base: -200,
    height: 400,
  };
  const made = mesh(kernel, { kind: "intersect", solids: [model.instrument.neckSolid, slab] });
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  return { kind: "mesh", mesh: made.mesh };
}

function meshed(solid: Solid): Solid {
  const made = mesh(kernel, solid);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  return { kind: "mesh", mesh: made.mesh };
}

/** How many pieces of a gauge are looked at, from one arm to the other. */
const pieces = 7;

/** A gauge whole and in pieces, each a mesh: made once and laid on twice. */
function inPieces(gauge: Solid, thickness: number) {
  const whole = meshed(gauge);
  const parts = Array.from({ length: pieces }, (_, i) => {
    const [from, to] = [i, i + 1].map((k) => 182 + (k * 176) / pieces);
    return meshed({ kind: "intersect", solids: [whole, wedge(from!, to!, thickness)] });
  });
  return { whole, parts };
}

/**
 * Whether a gauge laid on the neck at x lies along all of its section: nothing in both, and each of its pieces no farther from
 * the neck than its clearance and the touch that is allowed.
 */
function fits(
  neck: Solid,
  gauge: ReturnType<typeof inPieces>,
  thickness: number,
  x: number,
  clearance: number,
) {
  const clashAt = (solid: Solid) => {
    const found = clash(kernel, neck, laidOn(solid, thickness, x));
    if (found.kind !== "ok") throw new Error(JSON.stringify(found));
    return found;
  };
  if (clashAt(gauge.whole).interference > 1e-6) return false;
  return gauge.parts.every((part) => {
    const { gap } = clashAt(part);
    return gap > 0 && gap <= clearance + touching;
  });
}

function gaugesOf(model: Model, store: ReturnType<typeof memoryStore>) {
  return solidFiles(model)
    .filter(({ name }) => name.startsWith("gauge-"))
    .map((file) => ({ file, solid: file.solid(store) }));
}

describe.each(someCounts)("the gauges of $design with $count strings", ({ design, count }) => {
  const store = memoryStore();
  const model = modelOf(specOf(design, count), store);
  const stations = neckStations(model.spec);
  const of = (id: string) => model.spec.values[id]!.value;

  it("touch all along at their station and not at the next, but for their clearance", () => {
    const gauges = gaugesOf(model, store);
    const near = new Map(stations.map(({ x }) => [x, neckNear(model, x)]));
    const [thickness, clearance] = [of("gauge.thickness"), of("gauge.clearance")];
    for (const [i, { name, x }] of stations.entries()) {
      const { solid } = gauges.find(({ file }) => file.name === `gauge-${name}`)!;
      const gauge = inPieces(solid, thickness);
      const next = stations[i + 1] ?? stations[i - 1]!;
      expect(fits(near.get(x)!, gauge, thickness, x, clearance), name).toBe(true);
      expect(fits(near.get(next.x)!, gauge, thickness, next.x, clearance), `${name} at ${next.name}`).toBe(
        false,
      );
    }
  });

  it("for the nut's width straddles the neck at the nut, and nothing a millimetre narrower", () => {
    const { solid } = gaugesOf(model, store).find(({ file }) => file.name === "gauge-nut-width")!;
    const over = laidOn(solid, 0, 0);
    const nut = neckNear(model, 2);
    const found = clash(kernel, nut, over);
    if (found.kind !== "ok") throw new Error(JSON.stringify(found));
    expect(found.interference).toBeLessThan(1e-3);
    // A leg alone keeps the clearance from the neck's side; moved in by half a millimetre it cuts it.
    const leg: Solid = {
      kind: "intersect",
      solids: [
        solid,
        {
          kind: "extrude",
          height: 20,
          base: -1,
          outlines: [{ outer: rectangle(0, -50, 100, -0.05), holes: [] }],
        },
      ],
    };
    const aside = (y: number): Solid => ({
      kind: "place",
      solid: laidOn(leg, 0, 0),
      frame: {
        origin: { x: 0, y, z: 0 },
        u: { x: 1, y: 0, z: 0 },
        v: { x: 0, y: 1, z: 0 },
        w: { x: 0, y: 0, z: 1 },
      },
    });
    const beside = clash(kernel, nut, aside(0));
    const pushed = clash(kernel, nut, aside(-0.5));
    expect(beside.kind === "ok" && Math.abs(beside.gap - of("gauge.clearance")) < touching).toBe(true);
    expect(pushed.kind === "ok" && pushed.interference > 0.1).toBe(true);
  });
});

describe("a gauge", () => {
  it("of another hand's order is the same to the last byte", () => {
    const keys = ["right", "left"].map((hand) =>
      solidFiles(modelOf(specOf("sedge", 5, "", { hand }), memoryStore()))
        .filter(({ name }) => name.startsWith("gauge-"))
        .map(({ key }) => key),
    );
    expect(keys[0]).toEqual(keys[1]);
    expect(keys[0]).toHaveLength(4);
  });

  it("has letters of any text on it as closed pieces that stand out of its face", () => {
    for (let first = 33; first < 127; first += 8) {
      const line = Array.from({ length: 8 }, (_, i) => String.fromCharCode(Math.min(126, first + i))).join(
        "",
      );
      const plate: Solid = {
        kind: "extrude",
        height: 3,
        outlines: [{ outer: rectangle(-40, -20, 40, 20), holes: [] }],
      };
      const text = raisedText({ lines: [line], ...plateText }, 0, 5, 3);
      const made = mesh(kernel, { kind: "union", solids: [plate, text] }, 0.02);
      if (made.kind !== "ok") throw new Error(JSON.stringify(made));
      const { most, volume } = meshMeasures(made.mesh);
      expect(most.z, line).toBeCloseTo(3.6, 5);
      expect(volume, line).toBeGreaterThan(80 * 40 * 3 + 5);
    }
  });
});
