import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { stringsClear } from "../../src/checks/strings-clear.ts";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../src/geometry/path-measures/winding.ts";
import { clearOfPost } from "../../src/geometry/solid/clear-of-post.ts";
import { segmentsApart } from "../../src/geometry/solid/segments-apart.ts";
import type { Vec3 } from "../../src/geometry/solid/vec3.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { intoPlane } from "../../src/instrument/own-plane.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { bare, forced } from "../forced.ts";
import { everyCount, orderText, resolved, sampleText, specOf } from "../samples.ts";

const told = (spec: Spec) => contradictions(spec, instrument(spec, memoryStore()));
const check = (spec: Spec) => findings(modelOf(spec, memoryStore()), [stringsClear])[0]!;
const on = (a: Vec3, b: Vec3, share: number): Vec3 => {
  const at = (axis: "x" | "y" | "z") => a[axis] + (b[axis] - a[axis]) * share;
  return { x: at("x"), y: at("y"), z: at("z") };
};

describe("straight pieces in space", () => {
  const place = fc.record({
    x: fc.integer({ min: -20, max: 20 }),
    y: fc.integer({ min: -20, max: 20 }),
    z: fc.integer({ min: -20, max: 20 }),
  });
  it("are as far apart as the nearest of many places on them, whichever way round", () => {
    let alike = 0;
    fc.assert(
      fc.property(place, place, place, fc.oneof(place, fc.constant(undefined)), (a, b, c, other) => {
        // Every other pair runs alike, where there is no one nearest place.
        const d = other ?? { x: c.x + (b.x - a.x) / 2, y: c.y + (b.y - a.y) / 2, z: c.z + (b.z - a.z) / 2 };
        if (other === undefined) alike++;
        const exact = segmentsApart({ from: a, to: b }, { from: c, to: d });
        let least = Number.POSITIVE_INFINITY;
        for (let i = 0; i <= 60; i++) {
          for (let k = 0; k <= 60; k++) {
            const [p, q] = [on(a, b, i / 60), on(c, d, k / 60)];
            least = Math.min(least, Math.hypot(p.x - q.x, p.y - q.y, p.z - q.z));
          }
        }
        expect(exact).toBeLessThanOrEqual(least + 1e-9);
        expect(exact).toBeGreaterThan(least - 1.2);
        expect(segmentsApart({ from: d, to: c }, { from: b, to: a })).toBeCloseTo(exact, 9);
      }),
      { seed: 6, numRuns: 120 },
    );
    expect(alike).toBeGreaterThan(12);
  });

  it("clear a post by the way to its top's rim, its wall or its top, and go into it by what is under that", () => {
    const corners = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ].map(([x, y]) => ({ x: x!, y: y! }));
    const clear = (from: [number, number, number], to: [number, number, number]) => {
      const vec = ([x, y, z]: [number, number, number]) => ({ x, y, z });
      return clearOfPost({ corners, top: 5 }, [{ from: vec(from), to: vec(to) }]);
    };
    expect(clear([-5, 5, 9], [15, 5, 9])).toBeCloseTo(4, 12);
    expect(clear([-5, -3, 9], [15, -3, 9])).toBeCloseTo(5, 12);
    expect(clear([-5, -3, 2], [15, -3, 2])).toBeCloseTo(3, 12);
    expect(clear([-5, -3, 2], [15, -3, 9])).toBeCloseTo(3, 12);
    expect(clear([-5, 5, 3], [15, 5, 3])).toBeCloseTo(-2, 12);
    expect(clear([4, 4, 6], [4, 4, 12])).toBeCloseTo(1, 12);
    expect(clear([4, 4, 1], [4, 4, 12])).toBeCloseTo(-4, 12);
  });
});

describe("the room between the strings and the fronts beside them", () => {
  it.each(everyCount)(
    "of $design with $count strings is that of many places along them",
    ({ design, count }) => {
      const made = instrument(specOf(design, count), memoryStore());
      expect(made.fronts).toHaveLength(made.stringRooms.length);
      for (const [i, { plane, path, part }] of made.fronts.entries()) {
        const into = intoPlane(plane);
        let least = Number.POSITIVE_INFINITY;
        for (const { places, half } of made.stringLines) {
          for (const [k, to] of places.slice(1).entries()) {
            for (let n = 0; n <= 200; n++) {
              const at = into(on(places[k]!, to, n / 200));
              const nearest = nearestPlace(path, at);
              const away = nearest.kind === "ok" && whereabouts(path, at) !== "inside" ? nearest.distance : 0;
              least = Math.min(least, Math.hypot(away, at.z) - half);
            }
          }
        }
        const { left } = made.stringRooms[i]!;
        expect(left, part).toBeLessThan(least + 0.06);
        expect(left, part).toBeGreaterThan(least - 0.4);
      }
    },
  );

  it("is enough in every design, and refused where it is less than is wanted, with what mends it", () => {
    for (const { design, count } of everyCount)
      expect(check(specOf(design, count))).toMatchObject({
        status: "pass",
        limit: design === "bulrush" ? 12 : 8,
      });
    const narrow = { "wing.bass.pin": 2, "wing.bass.pin.depth": 2, "wing.bass.thickness": 14 };
    for (const [spec, values] of [
      [specOf("sedge", 4), { "wing.bass.cant": -50, "strings.clear": 18, ...narrow }],
      [specOf("sedge", 4), { "wing.bass.drop": 0, "strings.clear": 16 }],
      [specOf("thrift", 7), { "body.drop": -20, "strings.clear": 12 }],
    ] as const) {
      const refused = check(forced(spec, values));
      expect(refused).toMatchObject({ status: "refuse", source: expect.stringContaining("confirm") });
      const [, id, to] = /raise ([a-z.]+) to (-?[\d.]+)/.exec(refused.why)!;
      expect(check(forced(spec, { ...values, [id!]: Number(to) })).status).toBe("pass");
    }
  });
});

describe("parts in the strings' or the bow's space", () => {
  const thin = { "wing.bass.thickness": 14, "wing.bass.pin.depth": 2, "wing.bass.pin": 2 };
  it.each<[string, Spec, Record<string, number>, RegExp, string]>([
    [
      "a body whose front stands in the strings",
      specOf("thrift", 5),
      { "body.drop": -30, "body.thickness": 90 },
      /the body's front [\d.]+ mm into the space of string/,
      "body.drop",
    ],
    [
      "a body in the bow's way",
      specOf("thrift", 5),
      { "body.drop": -9, "body.thickness": 60 },
      /the body [\d.]+ mm in the bow's way/,
      "body.drop",
    ],
    [
      "a wing canted up into the bow's way",
      specOf("sedge", 5),
      { "wing.bass.cant": -30, ...thin },
      /the bass wing [\d.]+ mm in the bow's way/,
      "wing.bass.cant",
    ],
  ])("%s: told with what mends it", (_, spec, values, found, id) => {
    // What is sunk in a wing so thin, or wired to a body so low, says so itself before.
    const [problem] = told(forced(bare(spec), values));
    expect(problem).toMatchObject({ code: "contradiction", name: id, found: expect.stringMatching(found) });
    const moved = (hint: string) => Number(/raise [a-z.]+ to (-?[\d.]+)/.exec(hint)![1]);
    // Out of the strings' space, a part may still stand in the bow's, and is told that then.
    const [next] = told(forced(bare(spec), { ...values, [id]: moved(problem!.hint) }));
    if (next === undefined) return;
    expect(next.found).toContain("in the bow's way");
    expect(told(forced(bare(spec), { ...values, [id]: moved(next.hint) }))).toEqual([]);
  });
});

describe("wings that a design or an order allows too much of", () => {
  const withDesign = (design: string, from: string, to: string, more = "") => {
    const text = sampleText("designs", `${design}.yaml`);
    expect(text).toContain(from);
    const spec = resolved(orderText(design, 5, more), {}, { designs: { [design]: text.replace(from, to) } });
    return spec.ok ? told(spec.value) : spec.problems;
  };

  it.each(["splay", "cant", "rake"])(
    "a %s beyond 60 degrees, from an order or from the design's own range",
    (angle) => {
      const id = `wing.treble.${angle}`;
      const text = sampleText("designs", "sedge.yaml");
      const line = text.split("\n").findIndex((one) => one.includes(`${id}:`)) + 1;
      const [, value] = new RegExp(`${id}: \\{ value: ([\\d.]+) deg`).exec(text)!;
      const most = new RegExp(`(${id}: .*most: )[\\d.]+ deg`).exec(text)!;
      const order = resolved(orderText("sedge", 5, `set:\n  ${id}: 61 deg\n`));
      expect(order).toMatchObject({ ok: false, problems: [{ code: "range", name: id, found: "61 deg" }] });
      const [wide] = withDesign("sedge", most[0], `${most[1]}70 deg`);
      expect(wide).toMatchObject({
        ...{ code: "range", name: id, found: "most 70 deg", allowed: "-60 deg to 60 deg" },
        ...{ hint: "lower its most in the design", position: { file: "sedge.yaml", line } },
      });
      const beyond = withDesign("sedge", `${id}: { value: ${value} deg`, `${id}: { value: -61 deg`);
      expect(beyond[0]).toMatchObject({ code: "range", name: id, found: "-61 deg" });
    },
  );

  it("a wing longer than its core, and what length is left for it where it begins", () => {
    const text = sampleText("designs", "sedge.yaml");
    const [, head] = /(wing\.bass\.length: .*most: )270 mm/.exec(text)!;
    const wide = text.replace(`${head}270 mm`, `${head}400 mm`);
    const built = (length: string) => {
      const set = `set:\n  wing.bass.length: ${length} mm\n  rest.chin.along: 210 mm\n`;
      const spec = resolved(orderText("sedge", 5, set), {}, { designs: { sedge: wide } });
      if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
      return told(spec.value);
    };
    const [problem] = built("330");
    expect(problem).toMatchObject({
      ...{ code: "contradiction", name: "wing.bass.length", allowed: "a wing no longer than its core" },
      found: expect.stringMatching(/joint 330\.\d+ mm long on a core whose sides are straight over 2\d\d/),
    });
    const to = /lower wing\.bass\.length to ([\d.]+) mm/.exec(problem!.hint)![1]!;
    expect(built(to)).toEqual([]);
    // One that would go on the core further up is told to move.
    expect(built("265")[0]).toMatchObject({ hint: expect.stringContaining("or wing.bass.start by") });
  });

  it("a strip out of the core's back at its tail, with the rake that lifts it in", () => {
    const spec = specOf("sedge", 5);
    const [problem] = told(forced(spec, { "wing.bass.rake": -2 }));
    expect(problem).toMatchObject({
      name: "wing.bass.rake",
      found: expect.stringMatching(/out of the core's back at its tail end/),
    });
    const to = Number(/raise wing\.bass\.rake to (-?[\d.]+) deg/.exec(problem!.hint)![1]);
    expect(told(forced(spec, { "wing.bass.rake": to }))).toEqual([]);
  });
});
