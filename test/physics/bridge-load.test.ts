import { describe, expect, it } from "vitest";
import { bridgeFeet } from "../../src/physics/bridge-feet.ts";
import { type BridgeLoadInput, bridgeLoad } from "../../src/physics/bridge-load.ts";
import { footLoads } from "../../src/physics/bridge-stand.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";

/** The worked violin's tensions, N at 328 mm, highest string first. */
const tensions = { E5: 75, A4: 55, D4: 45, G3: 44.6, C3: 50, F2: 42, Bb1: 37 };

/** The worked violin with so many strings, strung with the tensions that its table is worked out from. */
function worked(count: number) {
  const strings = Object.entries(tensions).slice(0, count);
  const list = strings.map(([name, is]) => `{ name: ${name}, tension: { is: ${is} N, at: 328 mm } }`);
  return specOf(count === 7 ? "thrift" : "sedge", `[${list.join(", ")}]`);
}

/** The worked violin's table: what the forces rest on and what they come to. */
const table = {
  4: { tension: 219.6, load: 87.1, lean: -8.8, ahead: 0.58 },
  5: { tension: 269.6, load: 106.9, lean: -10.6, ahead: 0.6 },
  6: { tension: 311.6, load: 123.5, lean: -12.1, ahead: 0.62 },
  7: { tension: 348.6, load: 138.2, lean: -13.4, ahead: 0.64 },
} as const;

const models = new Map<string, Model>();
function model(design: string, count: number): Model {
  const key = `${design} ${count}`;
  const known = models.get(key) ?? modelOf(specOf(design, count), memoryStore());
  models.set(key, known);
  return known;
}

/** A string's two pulls at the bridge as pairs of numbers of length T: along and out of the core, and along and across. */
function pulls({ spec, instrument, forces }: Model, i: number) {
  const of = (id: string) => spec.values[id]!.value;
  const slope = (of("core.slope") * Math.PI) / 180;
  const into = (x: number, z: number) => {
    const [along, up] = [x - of("core.start"), z + of("core.drop")];
    return [
      along * Math.cos(slope) - up * Math.sin(slope),
      along * Math.sin(slope) + up * Math.cos(slope),
    ] as const;
  };
  const { layout, heights, exits } = instrument;
  const nut = [...into(0, heights.nut[i]!), layout.nut[i]!];
  const bridge = [...into(of("string.length"), heights.bridge[i]!), layout.bridge[i]!];
  const exit = [exits.along[i]!, of("tailpiece.height"), exits.across[i]!];
  const toward = (to: number[], axis: 1 | 2) => {
    const way = [to[0]! - bridge[0]!, to[axis]! - bridge[axis]!];
    const tension = forces.strings.tensions[i]!;
    return way.map((w) => (tension * w) / Math.hypot(...way));
  };
  const both = (axis: 1 | 2) => [0, 1].map((k) => toward(nut, axis)[k]! + toward(exit, axis)[k]!);
  return { lean: both(1)[0]!, load: -both(1)[1]!, side: both(2)[1]! };
}

describe.each(Object.entries(table))("the worked violin with %s strings", (count, row) => {
  const { forces } = modelOf(worked(Number(count)), memoryStore());
  it.each<[string, number, number, number]>([
    ["tension", forces.balance.total, row.tension, 0.1],
    ["load", forces.bridgeLoad.load, row.load, 0.1],
    ["lean", forces.bridgeLoad.lean, row.lean, 0.1],
    ["resultant ahead of the foot's middle", forces.resultant!, row.ahead, 0.01],
    ["included angle", forces.angles.included, 157, 0.1],
  ])("%s", (_, found, said, unit) => {
    expect(Math.abs(found - said)).toBeLessThanOrEqual(unit);
  });
});

describe("the load on the bridge", () => {
  it("of seven strings over a tailpiece left where four have it is 169 N at 151.6 degrees", () => {
    const { forces } = modelOf(forced(worked(7), { "tailpiece.height": 14.33 }), memoryStore());
    expect(Math.abs(forces.angles.included - 151.6)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(forces.bridgeLoad.load - 169)).toBeLessThanOrEqual(0.5);
  });

  it("of 220 N at 157 degrees halved evenly is 87.7 N and leans nowhere", () => {
    const across = { nut: 0, bridge: 0, exit: 0 };
    const string = { tension: 220, rise: 11.5, fall: 11.5, lengths: { nut: 328, tail: 54 }, across };
    const found = bridgeLoad.work({ slope: 0, strings: [string] });
    expect(Math.abs(found.load - 87.7)).toBeLessThan(0.1);
    expect(found).toMatchObject({ lean: 0, side: 0, friction: 0 });
    const sloped = bridgeLoad.work({ slope: 5, strings: [string] });
    const cos = (degrees: number) => Math.cos((degrees * Math.PI) / 180);
    expect(sloped.lean).toBeCloseTo(220 * (cos(6.5) - cos(16.5)), 9);
  });

  it("is the sum of either string's two pulls, as vectors, whatever the angles", () => {
    for (const rise of [-2, 1.3, 8])
      for (const fall of [5, 21.7, 40])
        for (const slope of [-3, 0, 4.5])
          for (const y of [-17, 0, 20]) {
            const [nut, tail] = [328, 54.67];
            const across = { nut: 0.5 * y, bridge: y, exit: 0.8 * y };
            const input: BridgeLoadInput = {
              slope,
              strings: [{ tension: 61, rise, fall, lengths: { nut, tail }, across }],
            };
            const found = bridgeLoad.work(input).strings[0]!;
            const polar = (r: number, degrees: number) =>
              [r * Math.cos((degrees * Math.PI) / 180), r * Math.sin((degrees * Math.PI) / 180)] as const;
            const [toNut, toTail] = [polar(nut, 180 + rise + slope), polar(tail, slope - fall)];
            const side = (way: readonly [number, number], dy: number) => (61 * dy) / Math.hypot(way[0], dy);
            expect(found.lean).toBeCloseTo((61 * toNut[0]) / nut + (61 * toTail[0]) / tail, 9);
            expect(found.load).toBeCloseTo((-61 * toNut[1]) / nut - (61 * toTail[1]) / tail, 9);
            expect(found.side).toBeCloseTo(side(toNut, -0.5 * y) + side(toTail, -0.2 * y), 9);
          }
  });

  it.each(everyCount)("of $design with $count strings adds up from their places in space", (at) => {
    const made = model(at.design, at.count);
    const { bridgeLoad: found, strings } = made.forces;
    // A step sees angles rounded to 1e-6 degrees, so this agrees to about a millionth of a tension.
    for (const [i, string] of found.strings.entries()) {
      const by = pulls(made, i);
      for (const of of ["load", "lean", "side"] as const)
        expect(Math.abs(string[of] - by[of]), of).toBeLessThan(1e-5);
    }
    for (const of of ["load", "lean", "side"] as const)
      expect(found[of]).toBeCloseTo(
        found.strings.reduce((sum, string) => sum + string[of], 0),
        9,
      );
    expect(found.friction).toBeCloseTo(
      Math.max(...found.strings.map(({ load, lean }) => Math.abs(lean / load))),
      9,
    );
    const { instrument, spec } = made;
    const share = instrument.exits.angles.map(
      (fall) => ((fall - spec.values["core.slope"]!.value) * Math.PI) / 180,
    );
    const sum = (of: (angle: number) => number) =>
      share.reduce((so, angle, i) => so + strings.tensions[i]! * of(angle), 0);
    expect(found.anchor.pull).toBeCloseTo(sum(Math.cos), 4);
    expect(found.anchor.lift).toBeCloseTo(sum(Math.sin), 4);
  });
});

describe("tension", () => {
  it.each(everyCount)("of $design's $count strings is mu (2 L f)²", ({ design, count }) => {
    const { spec, forces } = model(design, count);
    const length = spec.values["string.length"]!.value / 1000;
    for (const [i, { mass, semitones }] of spec.strings.entries()) {
      const f = spec.values["pitch.standard"]!.value * 2 ** (semitones / 12);
      expect(Math.abs(forces.strings.tensions[i]! - (mass / 1000) * (2 * length * f) ** 2)).toBeLessThan(
        1e-9,
      );
    }
  });

  it("is balanced about where its moment about the centreline says", () => {
    const { forces, instrument } = model("sedge", 5);
    const { total, spread, centre } = forces.balance;
    for (const where of ["nut", "bridge"] as const) {
      const moment = instrument.layout[where].reduce((sum, y, i) => sum + y * forces.strings.tensions[i]!, 0);
      expect(centre[where] * total).toBeCloseTo(moment, 3);
    }
    const sorted = [...forces.strings.tensions].sort((a, b) => a - b);
    expect(spread).toBeCloseTo(sorted.at(-1)! - sorted[0]!, 5);
  });

  it("over a plain wire's section is its stress, and only plain wires have one", () => {
    for (const [design, count] of [
      ["sedge", 4],
      ["mallow", 5],
      ["bulrush", 4],
    ] as const) {
      const { spec, forces, instrument } = model(design, count);
      const plain = spec.strings.filter(({ strength }) => strength !== null);
      expect(instrument.wires.map(({ name }) => name)).toEqual(plain.map(({ name }) => name));
      for (const { name, stress } of instrument.wires) {
        const i = spec.strings.findIndex((string) => string.name === name);
        const area = Math.PI * (spec.strings[i]!.diameter / 2) ** 2;
        expect(stress).toBeCloseTo(forces.strings.tensions[i]! / area, 6);
      }
    }
  });
});

describe("the feet of a standing bridge", () => {
  it.each(everyCount.filter(({ design }) => design !== "mallow"))(
    "of $design with $count strings carry its load, and hold its moments",
    ({ design, count }) => {
      const made = model(design, count);
      const { forces, spec, instrument } = made;
      const { bass, treble } = forces.footLoads!;
      expect(bass + treble).toBeCloseTo(forces.bridgeLoad.load, 4);
      // A foot's middle lies 14 parts of a hundred from its end, in all four designs.
      const foot = 0.36 * spec.values["bridge.foot.width"]!.value;
      const feet = bridgeFeet(spec.bridgeFace);
      expect(feet.bass).toBeCloseTo(-foot, 9);
      expect(feet.treble).toBeCloseTo(foot, 9);
      const slope = (spec.values["core.slope"]!.value * Math.PI) / 180;
      const run = spec.values["string.length"]!.value - spec.values["core.start"]!.value;
      const moment = forces.bridgeLoad.strings.reduce((sum, { load, side }, i) => {
        const up = instrument.heights.bridge[i]! + spec.values["core.drop"]!.value;
        return (
          sum + instrument.layout.bridge[i]! * load + (run * Math.sin(slope) + up * Math.cos(slope)) * side
        );
      }, 0);
      expect(foot * (treble - bass)).toBeCloseTo(moment, 2);
    },
  );

  it("carry by the lever alone a string that draws to neither side", () => {
    const strings = [{ y: 5, height: 30, load: 40, side: 0 }];
    const found = footLoads.work({ feet: { bass: -15, treble: 15 }, strings });
    expect(found.treble).toBeCloseTo((40 * 20) / 30, 9);
    expect(found.bass).toBeCloseTo((40 * 10) / 30, 9);
  });

  it("are the ends of the whole base where there is no arch", () => {
    const edge = (to: [number, number]) => {
      return { id: "e", to, through: [], follows: null, corner: 0, joined: null };
    };
    const edges = [edge([40, 0]), edge([38, 20]), edge([2, 20]), edge([0, 0])];
    expect(bridgeFeet({ along: 40, edges })).toEqual({ bass: -10, treble: 10 });
  });
});

it("the screws of a saddle share what leans it and draws it aside", () => {
  const { forces } = model("mallow", 4);
  const { lean, side } = forces.bridgeLoad;
  expect(forces.screwShear!).toBeCloseTo(Math.sqrt(lean ** 2 + side ** 2) / (2 * Math.PI * 1.25 ** 2), 6);
  expect([forces.resultant, forces.footLoads]).toEqual([null, null]);
  expect(model("sedge", 4).forces.screwShear).toBeNull();
});
