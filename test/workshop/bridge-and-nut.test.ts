import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { clash } from "../../src/geometry/solid/clash.ts";
import { upright } from "../../src/geometry/solid/frame.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import { meshProblem } from "../../src/geometry/solid/mesh-problem.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import type { TriangleMesh } from "../../src/geometry/solid/triangle-mesh.ts";
import { bridgeSolid } from "../../src/instrument/bridge/solid.ts";
import type { Instrument } from "../../src/instrument/instrument.ts";
import { neckSolid } from "../../src/instrument/neck/solid.ts";
import { nutSolid } from "../../src/instrument/nut/solid.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { solidFiles } from "../../src/workshop/solids/solids.ts";
import { meshed } from "../meshed.ts";
import { everyCount, specOf } from "../samples.ts";
import { bridgeVolume, offNotches, radians } from "./bridge-and-nut-measures.ts";
import { heightsAt } from "./slice.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

/** Fine enough to see a hundredth of a millimetre at the bottom of a notch. */
const meshOf = (solid: Solid, chord = 0.002): TriangleMesh => meshed(kernel, solid, chord);

/** Each string where it passes the nut, the way that it goes from there to its post, and its diameter. */
function overNut(spec: Spec, made: Instrument) {
  const tilt = radians(dimensionOf(spec, "head.angle"));
  const [thick, high] = [dimensionOf(spec, "nut.thickness"), dimensionOf(spec, "tuner.height")];
  return spec.strings.map(({ diameter }, i) => {
    const { along, end } = made.tuners.tuners[i]!;
    const x = -thick - along * Math.cos(tilt) - high * Math.sin(tilt);
    const z = high * Math.cos(tilt) - along * Math.sin(tilt);
    expect(end.x).toBeCloseTo(x, 4);
    const at = { y: made.layout.nut[i]!, z: made.heights.nut[i]! };
    return { at, diameter, dy: (end.y - at.y) / -x, dz: (z - at.z) / -x };
  });
}

/** How high the wood of the nut reaches at a place: its crown, or the lower side of the round rod that lies along a string there. */
function nutTop(spec: Spec, made: Instrument): (x: number, y: number) => number {
  // The blank's crown is the finished one raised along its radii; the middle of its arc from ends and bulge.
  const [right, left] = made.nut.blank.points.slice(2) as [
    { x: number; y: number; bulge: number },
    { x: number; y: number },
  ];
  const half = 2 * Math.atan(right.bulge);
  const [mx, my, dx, dy] = [
    (right.x + left.x) / 2,
    (right.y + left.y) / 2,
    (left.x - right.x) / 2,
    (left.y - right.y) / 2,
  ];
  const centre = { y: mx - dy / Math.tan(half), z: my + dx / Math.tan(half) };
  const radius = Math.hypot(right.x - centre.y, right.y - centre.z) - dimensionOf(spec, "nut.allowance");
  const strings = overNut(spec, made).map(({ at, diameter, dy, dz }) => {
    const long = Math.hypot(1, dy, dz);
    const way = [-1 / long, dy / long, dz / long] as const;
    const r = diameter / 2;
    return { at, way, r, z: at.z + r / Math.sqrt(1 - way[2] ** 2) - r };
  });
  return (x, y) => {
    let top = centre.z + Math.sqrt(radius ** 2 - (y - centre.y) ** 2);
    for (const { at, way, r, z } of strings) {
      // Where the upright at (x, y) is r from the string's line: a quadratic in the height over the string at the board.
      const [px, py] = [x, y - at.y];
      const flat = px * way[0] + py * way[1];
      const [a, b, c] = [1 - way[2] ** 2, -2 * flat * way[2], px * px + py * py - flat * flat - r * r];
      const root = b * b - 4 * a * c;
      if (root > 0) top = Math.min(top, z + (-b - Math.sqrt(root)) / (2 * a));
    }
    return top;
  };
}

/** The nut's volume, upright by upright. */
function nutVolume(spec: Spec, made: Instrument): number {
  const top = nutTop(spec, made);
  const { nut, end, length } = made.taper;
  const thick = dimensionOf(spec, "nut.thickness");
  const [along, across] = [24, 3000];
  let sum = 0;
  for (let i = 0; i < along; i++) {
    const x = (-thick * (i + 0.5)) / along;
    const width = nut + ((end - nut) * x) / length;
    for (let k = 0; k < across; k++)
      sum += (top(x, ((k + 0.5) / across - 0.5) * width) * width * thick) / along / across;
  }
  return sum;
}

function madeOf(design: string, count: number, more = "") {
  const store = memoryStore();
  const spec = specOf(design, count, more);
  const model = modelOf(spec, store);
  return { spec, model, store, made: model.instrument };
}

describe.each(everyCount)("bridge and nut of $design with $count strings", ({ design, count }) => {
  const { spec, made } = madeOf(design, count);
  let [bridge, nut]: TriangleMesh[] = [];
  beforeAll(() => {
    [bridge, nut] = [meshOf(made.bridgeSolid), meshOf(made.nutSolid)];
  });

  it("are closed, and as large as their outlines, tapers and slots make them", () => {
    expect([bridge!, nut!].map(meshProblem)).toEqual([undefined, undefined]);
    expect(Math.abs(meshMeasures(bridge!).volume / bridgeVolume(spec, made) - 1)).toBeLessThan(2e-4);
    expect(Math.abs(meshMeasures(nut!).volume / nutVolume(spec, made) - 1)).toBeLessThan(2e-4);
  });

  it("bear every string half its diameter over its notch and its slot, which falls as the string does", () => {
    for (const { off, moved } of offNotches(spec, made, bridge!)) {
      expect(off).toBeLessThan(0.01);
      expect(Math.abs(moved)).toBeLessThan(0.5);
    }
    const thick = dimensionOf(spec, "nut.thickness");
    for (const { at, diameter, dy, dz } of overNut(spec, made))
      for (const back of [1e-3, thick / 2, thick - 1e-3]) {
        const under = heightsAt(nut!, -back, at.y + dy * back + 1e-4).at(-1)!;
        expect(Math.abs(at.z + dz * back - diameter / 2 - under)).toBeLessThan(0.01);
      }
  });

  it("stand on the neck and don't reach into it", () => {
    const feet = dimensionOf(spec, "bridge.foot.width") * 0.56 * dimensionOf(spec, "bridge.foot.thickness");
    const seat = (made.taper.nut + boardWidthAt(made, -dimensionOf(spec, "nut.thickness"))) / 2;
    // The core before a pickup's cradle, screws and a wire are let into it under the feet.
    const full = neckSolid.work({ ...made.neckSolidInput, pockets: [], drilled: [] });
    for (const [solid, neck, area] of [
      [made.bridgeSolid, full, feet],
      [made.bridgeSolid, made.neckSolid, feet - sunkUnder(made, feet)],
      [made.nutSolid, made.neckSolid, seat * dimensionOf(spec, "nut.thickness")],
    ] as const) {
      const found = clash(kernel, solid, neck, 0.03);
      if (found.kind !== "ok") throw new Error(JSON.stringify(found));
      expect(found.interference).toBeLessThan(1e-3);
      expect(found.gap).toBeLessThan(1e-5);
      expect(Math.abs(found.contact - area) / (area || feet)).toBeLessThan(1e-3);
    }
  });
});

/** How much of its feet stands over what is sunk for it, mm2: all of them over a cradle, whose bar lies flush; else the screws' pilots. */
function sunkUnder({ neckSolidInput: { pockets } }: Instrument, feet: number): number {
  if (pockets.some(({ id }) => id === "cradle")) return feet;
  const screws = pockets.filter(({ id }) => id.startsWith("screw-"));
  return screws.reduce((sum, { bore }) => sum + (Math.PI * bore! ** 2) / 4, 0);
}

function boardWidthAt({ taper: { nut, end, length } }: Instrument, x: number): number {
  return nut + ((end - nut) * x) / length;
}

describe("what the tests of bridge and nut find", () => {
  const { spec, made } = madeOf("sedge", 5);
  const neckClash = (solid: Solid) => {
    const found = clash(kernel, solid, made.neckSolid, 0.03);
    return found.kind === "ok" ? found : { interference: Number.NaN, gap: Number.NaN };
  };
  const moved = (solid: Solid, z: number): Solid => ({
    ...{ kind: "place", solid, frame: { ...upright, origin: { x: 0, y: 0, z } } },
  });

  it("a bridge or nut that is a tenth too low or too high", () => {
    for (const solid of [made.bridgeSolid, made.nutSolid]) {
      expect(neckClash(moved(solid, -0.1)).interference).toBeGreaterThan(5);
      expect(neckClash(moved(solid, 0.1)).gap).toBeGreaterThan(0.09);
    }
  });

  it("notches that are a twentieth too deep, and a bridge that leans the wrong way", () => {
    const deep = offNotches(spec, made, meshOf(moved(made.bridgeSolid, -0.05)));
    for (const { off } of deep) expect(off).toBeGreaterThan(0.03);
    const { stand } = made.bridgeSolidInput;
    const wrong = bridgeSolid.work({ ...made.bridgeSolidInput, stand: { ...stand, tilt: -stand.tilt } });
    const missed = offNotches(spec, made, meshOf(wrong)).some(
      ({ moved: by }) => by === undefined || Math.abs(by) > 0.5,
    );
    expect(missed).toBe(true);
  });

  it("a taper that isn't there, and slots that don't fall", () => {
    const { stand } = made.bridgeSolidInput;
    const thick = bridgeSolid.work({ ...made.bridgeSolidInput, stand: { ...stand, top: stand.foot } });
    expect(meshMeasures(meshOf(thick)).volume / bridgeVolume(spec, made) - 1).toBeGreaterThan(0.1);
    const { strings, ...rest } = made.nutSolidInput;
    const level = strings.map((string) => ({ ...string, to: { ...string.to, z: string.at.z } }));
    const flat = meshOf(nutSolid.work({ ...rest, strings: level }));
    expect(meshMeasures(flat).volume / nutVolume(spec, made) - 1).toBeGreaterThan(0.002);
  });
});

it("the files of a left-hand order hold the same turned over, under keys of their own", () => {
  const files = (hand: string) => {
    const store = memoryStore();
    const model = modelOf(specOf("thrift", 6, "", { hand }), store);
    return solidFiles(model)
      .filter(({ name }) => name === "bridge" || name === "nut")
      .map(({ key, solid }) => ({ key, ...meshMeasures(meshOf(solid(store), 0.02)) }));
  };
  const [right, left] = [files("right"), files("left")];
  expect(right).toHaveLength(2);
  for (const [i, ours] of left.entries()) {
    const theirs = right[i]!;
    expect(ours.key).not.toBe(theirs.key);
    expect(Math.abs(ours.volume / theirs.volume - 1)).toBeLessThan(1e-6);
    expect(Math.abs(ours.centre.y + theirs.centre.y)).toBeLessThan(1e-4);
    expect(Math.abs(ours.centre.x - theirs.centre.x)).toBeLessThan(1e-4);
  }
});
