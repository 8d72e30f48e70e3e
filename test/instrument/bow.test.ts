import { describe, expect, it } from "vitest";
import { bowClearance, type ClearanceInput } from "../../src/instrument/bow/clearance.ts";
import { bowTilts } from "../../src/instrument/bow/tilts.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { everyCount, frettedSpec, specOf } from "../samples.ts";

const radians = (degrees: number) => (degrees * Math.PI) / 180;

const made = new Map<string, Model>();
function model(design: string, count: number): Model {
  const key = `${design} ${count}`;
  const known = made.get(key) ?? modelOf(specOf(design, count), memoryStore());
  made.set(key, known);
  return known;
}

function centresOf({ instrument: { layout, heights } }: Model) {
  return layout.bridge.map((y, i) => ({ y, z: heights.bridge[i]! }));
}

/** The tilts of a line through one centre that leave every other below it, found by turning it a thousandth of a degree at a time. */
function turned(centres: readonly { y: number; z: number }[], i: number) {
  const { y, z } = centres[i]!;
  const others = centres.filter((_, k) => k !== i);
  const alone: number[] = [];
  for (let k = -60_000; k <= 60_000; k++) {
    const slope = Math.tan(radians(k / 1000));
    if (others.every((other) => other.z < z - slope * (other.y - y))) alone.push(k / 1000);
  }
  return { bass: alone[0]!, treble: alone.at(-1)!, whole: alone.length };
}

describe("the bow's tilts", () => {
  it.each<[string, number, number[], { treble: number; bass: number }]>([
    ["sedge", 4, [15.22, 15.34], { treble: 34.96, bass: 26.16 }],
    ["sedge", 5, [13.8, 13.4, 13.47], { treble: 38.18, bass: 29.76 }],
    ["sedge", 6, [12.4, 11.7, 11.2, 12.8], { treble: 40.14, bass: 33.23 }],
    ["thrift", 7, [11.1, 10.3, 9.5, 10.6, 12.1], { treble: 41.53, bass: 35.54 }],
  ])("of %s with %i strings are the worked violin's", (design, count, angles, outermost) => {
    const { strings, outermost: found } = model(design, count).instrument.bow;
    const unit = count < 6 ? 0.005 : 0.051;
    for (const [i, angle] of angles.entries())
      expect(Math.abs(strings[i]!.angle - angle)).toBeLessThanOrEqual(unit);
    expect(Math.abs(found.treble - outermost.treble)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(found.bass - outermost.bass)).toBeLessThanOrEqual(0.005);
  });

  it.each(everyCount)("of $design with $count strings are those of a line turned about each", (at) => {
    const centres = centresOf(model(at.design, at.count));
    const { strings, outermost } = model(at.design, at.count).instrument.bow;
    const ranges = strings.map(({ angle, tilt }, i) => {
      const range = turned(centres, i + 1);
      expect(Math.abs(tilt.treble - range.treble)).toBeLessThan(0.002);
      expect(Math.abs(tilt.bass - range.bass)).toBeLessThan(0.002);
      expect(Math.abs(angle - range.whole / 1000)).toBeLessThan(0.002);
      return range;
    });
    const [first, last] = [ranges[0]!, ranges.at(-1)!];
    expect(Math.abs(outermost.treble - (2 * first.treble - first.bass))).toBeLessThan(0.004);
    expect(Math.abs(outermost.bass - (last.treble - 2 * last.bass))).toBeLessThan(0.004);
  });

  it("swap sides when the strings are mirrored", () => {
    const centres = centresOf(model("sedge", 5));
    const mirrored = [...centres].reverse().map(({ y, z }) => ({ y: -y, z }));
    const [one, other] = [bowTilts.work({ centres }), bowTilts.work({ centres: mirrored })];
    expect(other.outermost.bass).toBeCloseTo(one.outermost.treble, 9);
    expect(
      other.strings
        .map(({ angle }) => angle)
        .reverse()
        .map((a) => a.toFixed(9)),
    ).toEqual(one.strings.map(({ angle }) => angle.toFixed(9)));
  });

  it("are under 0 for a string that lies below its neighbours' line", () => {
    const centres = [
      { y: 15, z: 10 },
      { y: 5, z: 9 },
      { y: -5, z: 14 },
      { y: -15, z: 10 },
    ];
    expect(bowTilts.work({ centres }).strings[0]!.angle).toBeLessThan(0);
  });
});

type Place = readonly [x: number, y: number, z: number];
const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Place, b: Place) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * The least distance, square to the hair's plane, of a cloud of places to it, by a band of hair 10 wide along x that is looked
 * for over every place: the plane through two places of the string and one beside it, skew and outside judged in plan.
 */
function sampled({ hair, from, to }: ClearanceInput, places: Iterable<Place>, tilt: number): number {
  const { nut, bridge, length } = hair.string;
  const [a, b]: Place[] = [
    [0, nut.y, nut.z],
    [length, bridge.y, bridge.z],
  ] as [Place, Place];
  const beside: Place = [0, nut.y + hair.side, nut.z - Math.tan(radians(tilt))];
  const [p, q] = [minus(b!, a!), minus(beside, a!)];
  const n: Place = [p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]];
  const size = Math.hypot(...n) * Math.sign(n[2]);
  const up: Place = [n[0] / size, n[1] / size, n[2] / size];
  const onString = (x: number) => nut.y + ((bridge.y - nut.y) * x) / length;
  let least = Number.POSITIVE_INFINITY;
  for (const place of places) {
    const below = -dot(minus(place, a!), up);
    if (below >= least) continue;
    const [x, y] = [place[0] + below * up[0], place[1] + below * up[1]];
    if (hair.side * (y - onString(x)) < 0) continue;
    const under = [-8, 0, 8].some((skew) => {
      const axis = (middle: number) => middle + Math.tan(radians(skew)) * hair.side * (y - onString(middle));
      return axis(from + 5) - 5 <= x && x <= axis(to - 5) + 5;
    });
    if (under) least = below;
  }
  return least;
}

/** Places all over the core's front between two stations, from the spec's own numbers, its edges among them. */
function* onCore({ spec }: Model, from: number, to: number): Generator<Place> {
  const of = (id: string) => spec.values[id]!.value;
  for (let x = from; x <= to; x += 0.1) {
    const z = -of("core.drop") - (x - of("core.start")) * Math.tan(radians(of("core.slope")));
    const half = of("core.width") / 2 + (x - of("string.length")) * Math.tan(radians(of("core.taper")));
    for (let k = -60; k <= 60; k++) yield [x, (half * k) / 60, z];
  }
}

/** What a model's clearance is worked out from, by the test's own reading of the spec. */
function inputOf({ spec, instrument }: Model, side: 1 | -1): Omit<ClearanceInput, "surfaces" | "corner"> {
  const of = (id: string) => spec.values[id]!.value;
  const i = side === 1 ? 0 : spec.strings.length - 1;
  const at = (where: "nut" | "bridge") => {
    return { y: instrument.layout[where][i]!, z: instrument.heights[where][i]! };
  };
  const string = { length: of("string.length"), nut: at("nut"), bridge: at("bridge") };
  const tilt = instrument.bow.outermost[side === 1 ? "treble" : "bass"];
  return {
    hair: { string, side, tilt },
    ...{ from: of("fingerboard.length") + 2, to: of("string.length") - 4 },
  };
}

/** The core alone: what stands beside it is held to meshes with the solids. */
const bare = (spec: Spec) => modelOf({ ...spec, wings: null, body: null }, memoryStore());
const models = everyCount.map(({ design, count }) => bare(specOf(design, count)));
models.push(bare(frettedSpec(5)));

describe("the bow's clearance", () => {
  it.each(models.map((each) => [`${each.spec.design} ${each.spec.count}`, each] as const))(
    "of %s is that of places all over the core, on either side, straight and skewed",
    (_, each) => {
      for (const side of [1, -1] as const) {
        const input = {
          ...inputOf(each, side),
          surfaces: { flats: [], strips: [] },
          corner: { x: 0, y: 0, z: 0 },
        };
        const found = each.instrument.bowClearance[side === 1 ? "treble" : "bass"];
        const places = [...onCore(each, input.from - 20, input.to + 15)];
        const { tilt } = input.hair;
        expect(Math.abs(sampled(input, places, tilt) - found.surface)).toBeLessThan(0.02);
        expect(sampled(input, places, tilt + found.room - 0.05)).toBeGreaterThan(0);
        expect(sampled(input, places, tilt + found.room + 0.05)).toBeLessThanOrEqual(0);
      }
    },
  );

  it.each(models.map((each) => [`${each.spec.design} ${each.spec.count}`, each] as const))(
    "of %s to the board's corner is that of the corner from the hair's line there",
    (_, { spec, instrument }) => {
      const of = (id: string) => spec.values[id]!.value;
      for (const side of [1, -1] as const) {
        const { hair } = inputOf({ spec, instrument } as Model, side);
        const { nut, bridge } = hair.string;
        const share = of("fingerboard.length") / of("string.length");
        const [y, z] = [nut.y + (bridge.y - nut.y) * share, nut.z + (bridge.z - nut.z) * share];
        const out = of("fingerboard.margin.end");
        expect(Math.abs((side * instrument.taper.end) / 2 - (y + side * out))).toBeLessThan(1e-6);
        const t = radians(hair.tilt);
        const flat = (z - of("fingerboard.edge")) * Math.cos(t) - out * Math.sin(t);
        // Square to the plane, which follows the string's slight rise too, is a little less than across.
        const found = instrument.bowClearance[side === 1 ? "treble" : "bass"].board;
        expect(Math.abs(found - flat)).toBeLessThan(0.02);
        expect(found).toBeLessThanOrEqual(flat + 1e-6);
      }
    },
  );

  it("takes other surfaces, tilted ones too, by their nearest place under the hair", () => {
    const { hair, from, to } = inputOf(model("sedge", 4), 1);
    const corner = { x: 0, y: 0, z: 0 };
    const counts = { under: 0, clear: 0 };
    let seed = 7;
    const any = (least: number, most: number) => {
      seed = (seed * 48271) % 2147483647;
      return least + ((most - least) * seed) / 2147483647;
    };
    for (let k = 0; k < 24; k++) {
      const [o, u, v]: Place[] = [
        [any(220, 340), any(-10, 50), any(-60, -35)],
        [any(5, 30), any(-10, 10), any(-10, 10)],
        [any(-10, 10), any(5, 30), any(-10, 10)],
      ];
      const at = (s: number, t: number): Place => {
        return [0, 1, 2].map((i) => o![i]! + s * u![i]! + t * v![i]!) as unknown as Place;
      };
      const places: Place[] = [];
      for (let s = 0; s <= 150; s++) for (let t = 0; t <= 150; t++) places.push(at(s / 150, t / 150));
      const ring = [at(0, 0), at(1, 0), at(1, 1), at(0, 1)].map(([x, y, z]) => ({ x, y, z }));
      const input = { hair, from, to, surfaces: { flats: [ring], strips: [] }, corner };
      const [found, said] = [bowClearance.work(input).surface, sampled(input, places, hair.tilt)];
      counts[Number.isFinite(said) ? "under" : "clear"] += 1;
      if (Number.isFinite(said)) {
        // Along a steep plate a step between two places, and an edge of the band, are worth more than over the core.
        expect(found - said).toBeLessThan(0.02);
        expect(said - found).toBeLessThan(0.25);
      } else expect(found).toBe(200);
      const higher = ring.map((p) => ({ ...p, z: p.z + 3 }));
      const both = bowClearance.work({ ...input, surfaces: { flats: [ring, higher], strips: [] } });
      // The same plate in nine facets, as a strip of three lines beside another that lies under it.
      const strip = [0, 1, 2, 3].map((s) =>
        [0, 1, 2, 3].map((t) => at(s / 3, t / 3)).map(([x, y, z]) => ({ x, y, z })),
      );
      const lower = strip.map((line) => line.map((p) => ({ ...p, z: p.z - 3 })));
      const faceted = bowClearance.work({ ...input, surfaces: { flats: [], strips: [lower, strip] } });
      expect(faceted.surface).toBeCloseTo(found, 9);
      expect(faceted.room).toBeCloseTo(bowClearance.work(input).room, 2);
      if (Number.isFinite(said)) expect(both.surface).toBeLessThan(found);
    }
    expect(Math.min(counts.under, counts.clear)).toBeGreaterThanOrEqual(4);
  });

  it("is gone, and no room left, where a surface stands through the hair", () => {
    const { hair, from, to } = inputOf(model("sedge", 4), 1);
    const at = (x: number, y: number) => ({ x, y, z: 30 });
    const surfaces = { flats: [[at(280, 20), at(300, 20), at(300, 40), at(280, 40)]], strips: [] };
    const found = bowClearance.work({ hair, from, to, surfaces, corner: { x: 270, y: 21, z: 5.5 } });
    expect(found.surface).toBeLessThan(0);
    expect(found.room).toBe(0);
  });
});
