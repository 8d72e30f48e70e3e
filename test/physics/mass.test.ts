import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../src/geometry/kernel.ts";
import { mesh } from "../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../src/geometry/solid/mesh-measures.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import type { Spec } from "../../src/order/spec.ts";
import type { Masses } from "../../src/physics/mass/masses.ts";
import { wholeOf } from "../../src/physics/mass/piece.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { everyCount, frettedSpec, specOf } from "../samples.ts";
import { faults, type Meshed, type Weighing, woodOf, woods } from "./mass-faults.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

function meshed({ instrument }: Model): Meshed {
  const { wings } = instrument;
  const solids: [string, Solid][] = [
    ["neck", instrument.neckSolid],
    ["fingerboard", instrument.boardSolid],
    ["bridge", instrument.bridgeSolid],
    ["nut", instrument.nutSolid],
    ["tailpiece", instrument.tailpieceSolid],
    ...(wings === null
      ? []
      : (["bass", "treble"] as const).map((side): [string, Solid] => [`wing-${side}`, wings[side].solid])),
    ...(instrument.body === null ? [] : [["body", instrument.body.solid] as [string, Solid]]),
    ...instrument.covers.map(({ recess, solid }): [string, Solid] => [`cover-${recess.id}`, solid()]),
  ];
  return new Map(
    solids.map(([name, solid]) => {
      const made = mesh(kernel, solid, 0.02);
      if (made.kind !== "ok") throw new Error(JSON.stringify(made));
      return [name, meshMeasures(made.mesh)];
    }),
  );
}

function modelFor(spec: Spec): Model {
  return modelOf(spec, memoryStore());
}

const specs: readonly (readonly [string, () => Spec])[] = [
  ...everyCount.map(({ design, count }) => [`${design} with ${count}`, () => specOf(design, count)] as const),
  ["thrift with 7 and frets", () => frettedSpec(7)],
  ["mallow with 5, one rod on the centreline", () => specOf("mallow", 5, "set: { rod.count: 1 }\n")],
];

describe("the masses", () => {
  it.each(specs)("of %s agree with the kernel within 0.05 % for every part, and add up", (_, spec) => {
    const model = modelFor(spec());
    const measures = meshed(model);
    expect(measures.size).toBe((model.instrument.wings === null ? 6 : 7) + 4);
    expect(faults(model, model.masses, measures)).toEqual([]);
  });

  it("of what is let into the neck are those of the channels' own areas and depths", () => {
    const model = modelFor(specOf("thrift", 6, "set: { rod.length: 120 mm }\n"));
    const rods = model.masses.parts.find(({ name }) => name === "rods")!;
    const { neckRods } = model.instrument;
    // These end before the core's front falls away.
    const whole = neckRods.reduce((sum, { width, length, depth }) => {
      return sum + (width * (length - width) + (Math.PI / 4) * width ** 2) * depth;
    }, 0);
    expect(neckRods.length).toBe(2);
    expect(rods.volume / whole).toBeGreaterThan(0.999);
    expect(rods.volume / whole).toBeLessThan(1.001);
    expect(rods.mass).toBeCloseTo(rods.volume * 1500e-6, 9);
  });

  it("are the same numbers for the left hand", () => {
    const left = specOf("sedge", 5, "", { hand: "left" });
    const right = specOf("sedge", 5);
    const [a, b] = [left, right].map((spec) => modelFor(spec).masses);
    expect(a!.whole).toEqual(b!.whole);
    expect(a!.moment).toBe(b!.moment);
  });

  it("are told in a report under the names that other programs count on", () => {
    const model = modelFor(specOf("sedge", 4));
    const value = (id: string) =>
      dimensionsOf(model.spec)
        .find((one) => one.id === id)!
        .of(model);
    const { parts, whole, moment } = model.masses;
    expect(value("mass.total")).toBe(whole.mass);
    expect([value("balance.x"), value("balance.y"), value("balance.z")]).toEqual(Object.values(whole.centre));
    expect(value("balance.moment")).toBe(moment);
    for (const { name, mass, volume } of parts) {
      expect(value(`${name}.mass`)).toBe(mass);
      expect(value(`${name}.volume`)).toBe(volume / 1000);
    }
    expect(parts.map(({ name }) => name)).toEqual([
      ...["neck", "fingerboard", "bridge", "nut", "tailpiece", "wing-bass", "wing-treble"],
      ...["cover-battery", "cover-preamp", "cover-volume", "cover-jack"],
    ]);
  });

  it("turn nothing about the place where they balance, and toward the tail about one nearer the nut", () => {
    const model = modelFor(specOf("sedge", 4));
    const about = (x: number) => {
      const spec = { ...model.spec, values: { ...model.spec.values } };
      spec.values["hold.x"] = { ...spec.values["hold.x"]!, value: x };
      return modelFor(spec).masses.moment;
    };
    const { mass, centre } = model.masses.whole;
    expect(about(centre.x)).toBeCloseTo(0, 9);
    expect(about(centre.x + 100)).toBeCloseTo((mass / 1000) * 9.80665 * 100, 6);
    expect(about(centre.x - 100)).toBeLessThan(0);
  });
});

describe("a planted fault in the masses", () => {
  let model: Model;
  let measures: Meshed;
  beforeAll(() => {
    model = modelFor(specOf("mallow", 4));
    measures = meshed(model);
  });

  /** The masses with one part changed, or without it, and all that follows worked out again. */
  function with1(
    name: string,
    change: (part: Masses["parts"][number]) => Masses["parts"][number] | undefined,
  ): Weighing {
    const { parts, pieces, moment } = model.masses;
    const changed = parts.flatMap((part) => (part.name === name ? (change(part) ?? []) : part));
    const others = pieces.filter(({ kind }) => kind !== "part");
    const own = changed.map(({ name, mass, centre }) => ({ name, kind: "part", mass, centre }) as const);
    const all = [...own, ...others];
    return { parts: changed, pieces: all, whole: wholeOf(all), moment };
  }

  it.each(["neck", "fingerboard", "bridge", "nut", "tailpiece", "wing-bass", "wing-treble"])(
    "is found: the %s of another wood, left out, or off by 1 mm along any axis",
    (name) => {
      expect(faults(model, model.masses, measures)).toEqual([]);
      const other = woodOf(model, name) === "hard-maple" ? "basswood" : "hard-maple";
      const swapped = with1(name, (part) => ({ ...part, mass: part.volume * woods.get(other)! * 1e-6 }));
      expect(faults(model, swapped, measures)).toContain(`${name} mass`);
      expect(
        faults(
          model,
          with1(name, () => undefined),
          measures,
        ),
      ).toContain(`${name} left out`);
      for (const axis of ["x", "y", "z"] as const) {
        const moved = with1(name, (part) => ({
          ...part,
          centre: { ...part.centre, [axis]: part.centre[axis] + 1 },
        }));
        expect(faults(model, moved, measures)).toContain(`${name} middle`);
      }
    },
  );

  it("is found in the whole: a piece forgotten, a middle off by 1 mm, a moment the other way", () => {
    const { masses } = model;
    const { whole, pieces, parts, moment } = masses;
    const off = { ...whole, centre: { ...whole.centre, y: whole.centre.y + 1 } };
    expect(faults(model, { parts, pieces, moment, whole: off }, measures)).toContain("whole's y");
    const less = wholeOf(pieces.slice(1));
    expect(faults(model, { parts, pieces, moment, whole: less }, measures)).toContain("whole's mass");
    expect(faults(model, { parts, pieces: pieces.slice(1), moment, whole: less }, measures)).toContain(
      "parts in the whole",
    );
    expect(faults(model, { parts, pieces, moment: -moment, whole }, measures)).toContain("moment");
    const bare = pieces.filter(({ kind }) => kind !== "string");
    expect(faults(model, { parts, pieces: bare, moment, whole: wholeOf(bare) }, measures)).toContain(
      "strings",
    );
  });
});
