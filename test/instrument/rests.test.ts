import { describe, expect, it } from "vitest";
import { facet } from "../../src/geometry/facet.ts";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import { whereabouts } from "../../src/geometry/path-measures/winding.ts";
import type { Vec3 } from "../../src/geometry/solid/vec3.ts";
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
import { everyCount, specOf } from "../samples.ts";

const store = memoryStore();
const made = (spec: Spec) => instrument(spec, store);
const boresOf = (spec: Spec) => made(spec).restMounts.map((mount) => pocketOf(mount).bore);
const sedge = specOf("sedge", 5);
const bulrush = specOf("bulrush", 5);

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
