import { beforeAll, describe, expect, it } from "vitest";
import { circle } from "../../src/geometry/circle.ts";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import type { Frame } from "../../src/geometry/solid/frame.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { cross, type Vec3 } from "../../src/geometry/solid/vec3.ts";
import { neckSolid } from "../../src/instrument/neck/solid.ts";
import { sides } from "../../src/order/side.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { everyCount, specOf } from "../samples.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const chord = 0.02;

/** A hole in the neck as a test works it out: a place of its mouth, which way it goes in, its least reach across, how deep. */
type Wanted = {
  readonly name: string;
  readonly mouth: Vec3;
  readonly inward: Vec3;
  readonly radius: number;
  readonly depth: number;
};

/** The core frame's own place among the instrument's axes, by the plan's definition and not by the program's. */
function fromCoreFrame({ spec }: Model, x: number, y: number, z: number): Vec3 {
  const of = (id: string) => spec.values[id]!.value;
  const fall = (of("core.slope") * Math.PI) / 180;
  return {
    x: of("core.start") + x * Math.cos(fall) + z * Math.sin(fall),
    y,
    z: -of("core.drop") - x * Math.sin(fall) + z * Math.cos(fall),
  };
}

/** The holes of the wings' pins, as the joint's drawing places them: along the joint line and down the face, in the wing's and so in the core's side. */
function pinHoles(model: Model): Wanted[] {
  const { spec, instrument } = model;
  const of = (id: string) => spec.values[id]!.value;
  if (instrument.wings === null) return [];
  return sides.flatMap((side) => {
    const { pins } = instrument.wings![side].joint;
    const s = side === "treble" ? 1 : -1;
    const taper = (of("core.taper") * Math.PI) / 180;
    return pins.map(({ id, at }): Wanted => {
      const mouth = fromCoreFrame(model, at.x, at.y, at.z);
      return {
        ...{ name: `${side} ${id}`, mouth, radius: of(`wing.${side}.pin`) / 2 },
        // Square to a core's side that widens by the taper, and square to z = 0.
        inward: { x: Math.sin(taper), y: -s * Math.cos(taper), z: 0 },
        depth: of(`wing.${side}.pin.depth`),
      };
    });
  });
}

/** The posts' holes and the screws', or the middle of the cradle, square to the core's front. */
function frontHoles(model: Model): Wanted[] {
  const { spec, instrument } = model;
  const of = (id: string) => spec.values[id]!.value;
  const inward = between(fromCoreFrame(model, 0, 0, 0), fromCoreFrame(model, 0, 0, -1));
  const square = (name: string, x: number, y: number, radius: number, depth: number): Wanted => {
    return { name, mouth: fromCoreFrame(model, x, y, 0), inward, radius, depth };
  };
  if (instrument.tailpiece.kind !== "ok") throw new Error("no tailpiece");
  const { middle, tail } = instrument.bridgeStand;
  const { bridgeFoot } = spec;
  return [
    ...instrument.tailpiece.posts.map(({ id, at, size }) =>
      square(id, at.x, at.y, size / 2, of("tailpiece.post.depth")),
    ),
    ...(bridgeFoot.kind === "saddle"
      ? bridgeFoot.screws.map(({ id, at: [across, along], size }) =>
          square(id, tail - along, across - of("bridge.foot.width") / 2, size / 2, of("saddle.screw.depth")),
        )
      : []),
    // What of it surely lies inside: a round as wide as it is long.
    ...(bridgeFoot.kind === "cradle"
      ? [square("cradle", middle, 0, of("cradle.length") / 2, of("cradle.depth"))]
      : []),
  ];
}

function between(a: Vec3, b: Vec3): Vec3 {
  return { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z };
}

/** A round rod in a hole's own direction, from one depth to another. */
function probe({ mouth, inward }: Wanted, radius: number, from: number, to: number): Solid {
  const aside = Math.abs(inward.z) < 0.5 ? { x: 0, y: 0, z: 1 } : { x: 0, y: 1, z: 0 };
  const u = unit(cross(aside, inward));
  const frame: Frame = { origin: mouth, u, v: cross(inward, u), w: inward };
  return {
    kind: "place",
    frame,
    solid: {
      ...{ kind: "extrude", outlines: [{ outer: circle({ x: 0, y: 0 }, radius), holes: [] }] },
      ...{ base: from, height: to - from },
    },
  };
}

function unit(v: Vec3): Vec3 {
  const length = Math.hypot(v.x, v.y, v.z);
  return { x: v.x / length, y: v.y / length, z: v.z / length };
}

/** How much wood a probe finds in a neck, mm³. */
function woodIn(neck: Solid, of: Solid): number {
  const both = mesh(kernel, { kind: "intersect", solids: [neck, of] }, chord);
  if (both.kind === "invalid") throw new Error(JSON.stringify(both));
  return both.kind === "ok" ? meshMeasures(both.mesh).volume : 0;
}

/** What is wrong with a neck's holes: no room for a rod that fits, wood missing beside or under one. */
function faults(neck: Solid, wanted: readonly Wanted[]): string[] {
  return wanted.flatMap((hole) => {
    const { name, radius, depth } = hole;
    const found: string[] = [];
    const inside = woodIn(neck, probe(hole, radius - 0.05, -0.5, depth - 0.05));
    if (inside > 1e-3) found.push(`${name}: ${inside.toFixed(3)} of wood in its hole`);
    const under = woodIn(neck, probe(hole, radius - 0.05, depth + 0.01, depth + 0.5));
    const full = Math.PI * (radius - 0.05) ** 2 * 0.49;
    if (Math.abs(under / full - 1) > 0.005) found.push(`${name}: no full wood under its bottom`);
    if (name === "cradle") return found;
    const ring = woodIn(neck, probe(hole, radius + 0.3, depth / 2, depth / 2 + 1));
    const round = Math.PI * ((radius + 0.3) ** 2 - radius ** 2);
    if (Math.abs(ring / round - 1) > 0.02) found.push(`${name}: not as wide as its pin`);
    return found;
  });
}

/** By day one count a design. */
const looked = everyCount.filter(({ count }) => process.env.NIGHTLY !== undefined || count === 5);

function necked(design: string, count: number) {
  // A wire comes out under the bridge, where there is full wood without it.
  const model = modelOf({ ...specOf(design, count), bores: [] }, memoryStore());
  return { model, neck: meshed(model.instrument.neckSolid) };
}

function meshed(solid: Solid): Solid {
  const made = mesh(kernel, solid, chord);
  if (made.kind !== "ok") throw new Error(JSON.stringify(made));
  return { kind: "mesh", mesh: made.mesh };
}

describe("what the neck's core is bored and routed for", () => {
  it.each(looked)(
    "stands in the solid of $design with $count strings, place and depth",
    ({ design, count }) => {
      const { model, neck } = necked(design, count);
      const wanted = [...pinHoles(model), ...frontHoles(model)];
      const sunk = { standing: 0, saddle: 2, cradle: 1 }[model.spec.bridgeFoot.kind];
      expect(wanted).toHaveLength((model.spec.wings === null ? 0 : 4) + 2 + sunk);
      expect(faults(neck, wanted)).toEqual([]);
    },
  );

  it("is found missing, moved, too shallow or too narrow by the same look", () => {
    const model = modelOf(specOf("mallow", 5), memoryStore());
    const input = model.instrument.neckSolidInput;
    const wanted = [...pinHoles(model), ...frontHoles(model)].filter(({ name }) =>
      /^(treble b|bass)$/.test(name),
    );
    expect(wanted).toHaveLength(2);
    // The treble wing's second pin, which is the last hole, and the first screw.
    const last = input.holes.at(-1)!;
    const others = input.holes.slice(0, -1);
    const look = (change: Partial<typeof input>) =>
      faults(meshed(memoryStore().answer(neckSolid, { ...input, ...change }).value), wanted).join("\n");
    expect(look({ holes: others })).toMatch(/treble b: [\d.]+ of wood in its hole/);
    expect(look({ holes: [...others, { ...last, at: { ...last.at, x: last.at.x + 0.2 } }] })).toMatch(
      /treble b: [\d.]+ of wood/,
    );
    expect(look({ holes: [...others, { ...last, depth: last.depth + 0.2 }] })).toMatch(
      /treble b: no full wood/,
    );
    expect(look({ holes: [...others, { ...last, diameter: 6.2, bottom: 6.2 }] })).toMatch(
      /treble b: not as wide/,
    );
    const [screw, ...more] = input.pockets;
    expect(look({ pockets: [{ ...screw!, depth: 13.5 }, ...more] })).toMatch(/bass: [\d.]+ of wood/);
  });
});
