import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { restChinClear, restChinGrip } from "../../src/checks/rest-chin.ts";
import { endpinWall, restWall } from "../../src/checks/rest-wall.ts";
import { facet } from "../../src/geometry/facet.ts";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../src/geometry/path-measures/winding.ts";
import type { Vec3 } from "../../src/geometry/solid/vec3.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { instrument } from "../../src/instrument/instrument.ts";
import { fromPlane, intoPlane } from "../../src/instrument/own-plane.ts";
import { groundOf } from "../../src/instrument/rest/grounds.ts";
import { mountWalls } from "../../src/instrument/rest/mount-walls.ts";
import { pocketOf } from "../../src/instrument/rest/mounts.ts";
import { slotEnds, slotPath } from "../../src/instrument/rest/slot.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { onEndpin } from "../../src/physics/mass/on-endpin.ts";
import { momentAbout } from "../../src/physics/mass/piece.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { everyCount, orderText, resolved, sampleText, specOf } from "../samples.ts";

const store = memoryStore();
const made = (spec: Spec) => instrument(spec, store);
const boresOf = (spec: Spec) => made(spec).restMounts.map((mount) => pocketOf(mount).bore);
const told = (spec: Spec) => contradictions(spec, made(spec));
const sedge = specOf("sedge", 5);
const thrift = specOf("thrift", 5);
const bulrush = specOf("bulrush", 5);

/** Thrift with a chin rest that is screwed on. */
const screwed = (() => {
  const dimension = (id: string, value: string) =>
    `          rest.chin.screw.${id}: { value: ${value}, least: 1 mm, most: 20 mm, tolerance: 0.5 mm, for: a test }\n`;
  const hold =
    `    hold:\n      screws:\n        dimensions:\n${dimension("depth", "4 mm")}${dimension("wall", "2 mm")}` +
    "        holes: [{ id: a, at: [0.2, 0.5], size: 6 mm }, { id: b, at: [0.8, 0.5], size: 6 mm }]\n    face:\n";
  const text = sampleText("designs", "thrift.yaml").replace(
    / {4}hold:\n {6}clamp:\n(.*\n){3} {4}face:\n/,
    hold,
  );
  const spec = resolved(orderText("thrift", 5), {}, { designs: { thrift: text } });
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
  return spec.value;
})();

const on = (a: Vec3, b: Vec3, share: number): Vec3 => {
  const at = (axis: "x" | "y" | "z") => a[axis] + (b[axis] - a[axis]) * share;
  return { x: at("x"), y: at("y"), z: at("z") };
};

describe("mounts for rests", () => {
  it.each(everyCount)(
    "of $design with $count strings have the wood round them that many places have",
    ({ design, count }) => {
      const spec = specOf(design, count);
      const own = made(spec);
      expect(own.restMounts.length).toBeGreaterThanOrEqual(2);
      for (const mount of own.restMounts) {
        const { part } = mount;
        const pocket = pocketOf(mount);
        const ground = groundOf(part, spec, own);
        const depth = pocket.depth as number;
        const levels = Array.from({ length: 5 }, (_, i) => {
          const down = (depth * i) / 4;
          return pocket.from === "back" ? down - ground.thickness : -down;
        });
        const corners = facet(pocket.path, 0.01).points;
        const round = corners.flatMap((corner, i) => {
          const next = corners[(i + 1) % corners.length]!;
          return Array.from({ length: 6 }, (_, k) => on({ ...corner, z: 0 }, { ...next, z: 0 }, k / 6));
        });
        const places = round.flatMap(({ x, y }) => levels.map((z) => ({ x, y, z })));
        const told = mountWalls.work({ ...mount, ground });
        // The instrument tells no wall that is far away, and no other number for one that is near.
        const near = own.mountWalls.filter(
          (wall) => wall.part === part && wall.between.startsWith(`${mount.what} and`),
        );
        for (const { left, between } of told) {
          const same = near.find((wall) => wall.between === between);
          if (same === undefined) expect(left, between).toBeGreaterThan(Math.max(8, mount.wall) - 0.3);
          else expect(same.left, between).toBeCloseTo(left, 5);
        }
        for (const border of ground.borders) {
          const away = round.map((place) => {
            const nearest = nearestPlace(border.path, place);
            return nearest.kind === "ok" ? nearest.distance : 0;
          });
          const { left } = told.find(({ between }) => between.endsWith(border.what))!;
          expect(Math.abs(left - (Math.min(...away) - border.eased[pocket.from])), border.what).toBeLessThan(
            0.07,
          );
          expect(round.every((place) => whereabouts(ground.within, place) === "inside")).toBe(true);
        }
        for (const taken of ground.taken) {
          if (taken.kind !== "bored") continue;
          let least = Number.POSITIVE_INFINITY;
          for (let i = 0; i <= 20; i++) {
            const axis = on(taken.axis.from, taken.axis.to, i / 20);
            for (const { x, y, z } of places)
              least = Math.min(least, Math.hypot(x - axis.x, y - axis.y, z - axis.z));
          }
          const { left } = told.find(({ between }) => between.endsWith(taken.what))!;
          expect(left, taken.what).toBeLessThan(least - taken.radius + 0.06);
          expect(left, taken.what).toBeGreaterThan(least - taken.radius - 0.3);
        }
      }
    },
  );

  it("are slots as long as their travel and width, closed and counter-clockwise, holes where nothing travels", () => {
    const slot = { at: { x: 10, y: -5 }, width: 8, travel: 20, turn: 30 };
    const [from, to] = slotEnds(slot);
    expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(20, 9);
    for (const point of facet(slotPath(slot), 0.001).points) {
      const away = nearestPlace(
        { closed: false, points: [from, to].map((at) => ({ ...at, bulge: 0 })) },
        point,
      );
      expect(away.kind === "ok" && away.distance).toBeCloseTo(4, 2);
    }
    expect(boresOf(forced(sedge, { "rest.shoulder.travel": 0 }))).toEqual([8, 8]);
    expect(boresOf(sedge)).toEqual([null, null]);
  });

  it("stand where the report says, in the part's back, the bass one's on the bass side", () => {
    const model = modelOf(sedge, store);
    const of = (id: string) =>
      dimensionsOf(sedge)
        .find((one) => one.id === id)!
        .of(model);
    expect(of("rest.shoulder.bass.y")).toBeLessThan(-dimensionOf(sedge, "core.width") / 2);
    expect(of("rest.shoulder.treble.y")).toBeGreaterThan(dimensionOf(sedge, "core.width") / 2);
    for (const { plane, at } of model.instrument.mountPlaces) {
      const back = intoPlane(plane)(fromPlane(plane, at));
      for (const axis of ["x", "y", "z"] as const) expect(back[axis]).toBeCloseTo(at[axis], 9);
    }
  });
});

describe("rests that can't be built", () => {
  it("are none of the designs' own", () => {
    for (const { design, count } of everyCount) expect(told(specOf(design, count))).toEqual([]);
  });

  it.each<[string, Spec, Record<string, number>, string, RegExp]>([
    [
      "a slot through the front",
      sedge,
      { "rest.shoulder.depth": 23 },
      "rest.shoulder.depth",
      /front: they overlap/,
    ],
    ["a slot out of the edge", sedge, { "rest.shoulder.travel": 120 }, "rest.shoulder.travel", /edge/],
    [
      "a mount through a pin",
      sedge,
      { "rest.shoulder.travel": 0, "rest.shoulder.hole": 70 },
      "rest.shoulder.hole",
      /overlap/,
    ],
    [
      "a chin rest over the edge",
      sedge,
      { "rest.chin.out": 50 },
      "rest.chin.out",
      /past the flat of the wing-bass, over the wing's edge/,
    ],
    ["a chin rest over the joint", sedge, { "rest.chin.out": 10 }, "rest.chin.out", /over the joint/],
    [
      "a chin rest over the core's room",
      thrift,
      { "rest.chin.out": -30 },
      "rest.chin.out",
      /past the flat of the body/,
    ],
    [
      "screws through a wire's bore",
      screwed,
      { "rest.chin.screw.depth": 12 },
      "rest.chin.screw.depth",
      /the chin rest's screw [ab] and the bore/,
    ],
    [
      "a bore out of the front",
      bulrush,
      { "endpin.down": 8 },
      "endpin.down",
      /endpin's bore and the core's front/,
    ],
    [
      "a bore out of the back",
      bulrush,
      { "endpin.angle": -20 },
      "endpin.angle",
      /endpin's bore and the core's back/,
    ],
    [
      "a bore into the lower pin",
      bulrush,
      { "endpin.depth": 700, "endpin.angle": 1 },
      "endpin.depth",
      /endpin's bore and/,
    ],
  ])("%s", (_, spec, values, name, found) => {
    const problems = told(forced(spec, values));
    expect(problems.map(({ found: said }) => said).join("; ")).toMatch(found);
    for (const problem of problems) {
      expect(problem).toMatchObject({ code: "contradiction", name });
      expect(problem.hint).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it("with what is told to move can be built", () => {
    for (const [spec, values] of [
      [sedge, { "rest.shoulder.depth": 23 }],
      [bulrush, { "endpin.down": 9 }],
    ] as const) {
      const [problem] = told(forced(spec, values));
      const [, id, to] = /(?:raise|lower) ([a-z.]+) to (-?[\d.]+) mm/.exec(problem!.hint)!;
      expect(told(forced(spec, { ...values, [id!]: Number(to) }))).toEqual([]);
    }
  });

  it("are told in the design where a part, a voice or a name is wrong", () => {
    const wrong = (design: string, from: string, to: string) => {
      const text = sampleText("designs", `${design}.yaml`);
      expect(text).toContain(from);
      const spec = resolved(orderText(design, 5), {}, { designs: { [design]: text.replace(from, to) } });
      return spec.ok ? told(spec.value) : spec.problems;
    };
    expect(wrong("sedge", "in: wing-treble, at", "in: body, at")[0]).toMatchObject({
      ...{ code: "contradiction", name: "rest.shoulder.treble", allowed: "neck, wing-bass, wing-treble" },
    });
    expect(wrong("thrift", "    on: body", "    on: wing-bass")[0]).toMatchObject({ name: "rest.chin" });
    expect(wrong("sedge", "voice: violin", "voice: cello").map(({ name }) => name)).toContain("rests.chin");
    expect(wrong("bulrush", "voice: cello", "voice: violin").map(({ name }) => name)).toContain(
      "rests.endpin",
    );
    expect(wrong("sedge", "{ id: treble, in: wing-treble", "{ id: bass, in: wing-treble")[0]).toMatchObject({
      ...{ code: "id", name: "rest.shoulder.bass" },
    });
    expect(
      wrong(
        "sedge",
        "{ id: outer, to: [0, 1], corner: 8 mm }",
        "{ id: outer, to: [0, 1], corner: 40 mm }",
      )[0],
    ).toMatchObject({
      found: expect.stringContaining("edge outer can't be made"),
    });
    const [mount] = wrong(
      "sedge",
      "in: wing-bass, at: [0.885, 0.44], turn",
      "in: wing-bass, at: [0.885, 0.98], turn",
    );
    expect(mount).toMatchObject({
      name: "rest.shoulder.hole",
      hint: expect.stringContaining("move the shoulder mount bass"),
    });
    expect(mount!.position.file).toBe("sedge.yaml");
  });
});

describe("the checks of rests find a planted fault", () => {
  const found = (spec: Spec, id: string) =>
    findings(modelOf(spec, store), [restChinClear, restChinGrip, restWall, endpinWall]).find(
      (one) => one.id === id,
    );

  it.each<[string, Spec, Record<string, number>, string, RegExp]>([
    [
      "a rest near the tailpiece",
      thrift,
      { "rest.chin.clear": 13 },
      "rest.chin.clear",
      /near to the tailpiece: lower rest\.chin\.out to -/,
    ],
    [
      "an edge too thick for the clamp",
      sedge,
      { "rest.chin.grip.most": 21.9 },
      "rest.chin.grip",
      /lower wing\.bass\.thickness/,
    ],
    [
      "an edge too thin for the clamp",
      sedge,
      { "rest.chin.grip.least": 22.1 },
      "rest.chin.grip",
      /raise wing\.bass\.thickness/,
    ],
    [
      "a thin floor over a slot",
      sedge,
      { "rest.shoulder.depth": 20 },
      "rest.wall",
      /lower rest\.shoulder\.depth to 19\.5 mm/,
    ],
    [
      "screws near a recess",
      screwed,
      { "rest.chin.screw.wall": 6 },
      "rest.wall",
      /the chin rest's screw [ab] and/,
    ],
    [
      "a thin wall over the endpin",
      bulrush,
      { "endpin.wall": 9 },
      "endpin.wall",
      /splits under the weight: lower endpin\.depth to/,
    ],
  ])("%s", (_, spec, values, id, why) => {
    expect(found(spec, id)).toMatchObject({ status: "pass", source: expect.stringContaining("confirm") });
    const refused = found(forced(spec, values), id)!;
    expect(refused).toMatchObject({ status: "refuse", why: expect.stringMatching(why) });
    expect(refused.holds.length).toBeGreaterThan(0);
    const moved = /(?:raise|lower) ([a-z.]+) to (-?[\d.]+) mm/.exec(refused.why);
    if (moved !== null)
      expect(found(forced(spec, { ...values, [moved[1]!]: Number(moved[2]) }), id)!.status).toBe("pass");
  });

  it("and say nothing of what an instrument doesn't have", () => {
    expect(found(sedge, "endpin.wall")).toBeUndefined();
    expect(found(bulrush, "rest.chin.clear")).toBeUndefined();
    expect(found(screwed, "rest.chin.grip")).toBeUndefined();
  });
});

describe("an endpin", () => {
  it("leaves the tail where it is set, and points back by its angle to the core's front", () => {
    const { mouth, way, tip } = made(bulrush).endpin!;
    const of = (id: string) => dimensionOf(bulrush, id);
    expect(mouth.x).toBeCloseTo(of("core.end"), 9);
    const slope = (of("core.slope") * Math.PI) / 180;
    const front = -of("core.drop") - (mouth.x - of("core.start")) * Math.tan(slope);
    // Square from the core's front, not along z.
    expect((front - mouth.z) * Math.cos(slope)).toBeCloseTo(of("endpin.down"), 9);
    expect((Math.atan2(way.z, -way.x) * 180) / Math.PI).toBeCloseTo(of("endpin.angle") + of("core.slope"), 9);
    expect(Math.hypot(tip.x - mouth.x, tip.z - mouth.z)).toBeCloseTo(of("endpin.length"), 9);
  });

  it("bears the weight by m g d, d found by turning the instrument onto it", () => {
    const { masses, instrument: own } = modelOf(bulrush, store);
    const { tip } = own.endpin!;
    for (const lean of [0, 30, 55, 90]) {
      const { away, moment } = onEndpin(tip, lean, masses.whole);
      // The instrument turned about y so that x points down by the lean; the player is at the far side of -x.
      const [c, s] = [Math.cos((lean * Math.PI) / 180), Math.sin((lean * Math.PI) / 180)];
      const level = ({ x, z }: Vec3) => x * c + z * s;
      expect(away).toBeCloseTo(level(tip) - level(masses.whole.centre), 9);
      expect(moment).toBeCloseTo((masses.whole.mass / 1000) * 9.80665 * away, 6);
    }
    expect(onEndpin(tip, 0, masses.whole).moment).toBeCloseTo(momentAbout(tip.x, masses.whole), 9);
  });
});
