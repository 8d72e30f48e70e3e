import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { circle } from "../../../src/geometry/circle.ts";
import { placeAlong } from "../../../src/geometry/path-measures/place-along.ts";
import { reversedPath } from "../../../src/geometry/reversed-path.ts";
import { againstRotation, alongWood, wayAlong } from "../../../src/workshop/guided/direction.ts";
import { flipped, grainAt, grainLengths, grainStretches } from "../../../src/workshop/guided/grain.ts";
import { specOf } from "../../samples.ts";

type Vector = { readonly x: number; readonly y: number };
const { machines } = specOf("sedge", 5).shop;
const spindle = (id: string) => {
  const found = machines.find((machine) => machine.id === id);
  if (found === undefined || !("rotation" in found)) throw new Error(id);
  return found;
};
const overhead = { rotation: "cw", moves: "tool" } as const;

/** Whether going along a way at a place turns clockwise round the origin. */
const clockwise = (place: Vector, way: Vector) => place.x * way.y - place.y * way.x < 0;
const round = Array.from({ length: 24 }, (_, i) => ({ x: Math.cos(i / 3.8), y: Math.sin(i / 3.8) }));

describe("feed, as the trade has it", () => {
  it.each(["table-router", "shaper"])(
    "%s: right to left along the front, where the wood lies before the cutter",
    (id) => {
      // The person stands at the front, the wood between them and the cutter: out of the wood is away from them.
      const { feed, tool } = againstRotation({ x: 0, y: 1 }, spindle(id));
      expect(feed).toEqual({ x: -1, y: 0 });
      expect(tool).toEqual({ x: 1, y: 0 });
    },
  );

  it.each(["table-router", "shaper"])(
    "%s: the tool goes clockwise round an outside edge, counter-clockwise in an opening",
    (id) => {
      for (const place of round) {
        expect(clockwise(place, againstRotation(place, spindle(id)).tool)).toBe(true);
        const inward = { x: -place.x, y: -place.y };
        expect(clockwise(place, againstRotation(inward, spindle(id)).tool)).toBe(false);
      }
    },
  );

  it.each([
    ["hand-held", spindle("hand-router")],
    ["overhead", overhead],
  ])(
    "%s router: counter-clockwise round an outside edge, clockwise in an opening, pushed that way",
    (_, machine) => {
      for (const place of round) {
        const outside = againstRotation(place, machine);
        expect(clockwise(place, outside.tool)).toBe(false);
        expect(outside.feed).toEqual(outside.tool);
        expect(clockwise(place, againstRotation({ x: -place.x, y: -place.y }, machine).tool)).toBe(true);
      }
    },
  );

  it("is against the rotation: the rim's own motion at the wood, worked out by turning the cutter a little", () => {
    for (const rotation of ["ccw", "cw"] as const)
      for (const normal of round) {
        const [radius, turn] = [50, rotation === "ccw" ? 1e-6 : -1e-6];
        // A tooth that touches the wood stands at -n from the cutter's middle.
        const tooth = { x: -normal.x * radius, y: -normal.y * radius };
        const later = {
          x: tooth.x * Math.cos(turn) - tooth.y * Math.sin(turn),
          y: tooth.x * Math.sin(turn) + tooth.y * Math.cos(turn),
        };
        const along = alongWood(normal, rotation);
        expect(((later.x - tooth.x) * along.x + (later.y - tooth.y) * along.y) / 5e-5).toBeCloseTo(1, 4);
        // The work comes to meet it.
        const { feed } = againstRotation(normal, { rotation, moves: "work" });
        expect(feed.x * along.x + feed.y * along.y).toBeCloseTo(-1, 9);
      }
  });

  it("goes the same way along every edge that has the wood on its left", () => {
    for (const rotation of ["ccw", "cw"] as const)
      for (const t of round) {
        const { tool } = againstRotation({ x: t.y, y: -t.x }, { rotation, moves: "tool" });
        expect(tool.x * t.x + tool.y * t.y > 0).toBe(wayAlong(rotation) === "along");
      }
  });
});

describe("the grain", () => {
  it("classes a disc as a pie", () => {
    const disc = circle({ x: 0, y: 0 }, 180 / Math.PI);
    for (const way of ["along", "back"] as const) {
      const lengths = grainLengths(grainStretches(disc, way, { x: 1, y: 0 }));
      expect(lengths.along).toBeCloseTo(8, 9);
      expect(lengths["end grain"]).toBeCloseTo(120, 9);
      expect(lengths.with).toBeCloseTo(116, 9);
      expect(lengths.against).toBeCloseTo(116, 9);
    }
    const stretches = grainStretches(disc, "along", { x: 1, y: 0 });
    const at = (angle: number) => stretches.find(({ from, to }) => from <= angle && angle < to)!.grain;
    const angles = [5, 45, 89, 91, 135, 179, 181, 225, 315];
    expect(angles.map(at)).toEqual(angles.map(expected));
    expect([45, 135, 225, 315].map(at)).toEqual(["against", "with", "against", "with"]);
  });

  /** By the notes' own words, at an angle on the disc, cut counter-clockwise with the fibres along x. */
  function expected(degrees: number) {
    const angle = (degrees * Math.PI) / 180;
    const [n, c] = [
      { x: Math.cos(angle), y: Math.sin(angle) },
      { x: -Math.sin(angle), y: Math.cos(angle) },
    ];
    const g = c.x > 0 ? 1 : -1;
    const out = (Math.asin(Math.abs(g * n.x)) * 180) / Math.PI;
    if (out <= 2) return "along";
    if (out > 60) return "end grain";
    return g * n.x > 0 ? "with" : "against";
  }

  it("says at every place of a path what its stretch says, and flipping changes with for against", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            x: fc.integer({ min: -50, max: 50 }),
            y: fc.integer({ min: -50, max: 50 }),
            bulge: fc.double({ min: -1, max: 1, noNaN: true }),
          }),
          { minLength: 2, maxLength: 6 },
        ),
        fc.double({ min: 0, max: 6.3, noNaN: true }),
        fc.constantFrom("along" as const, "back" as const),
        (points, turn, way) => {
          const path = { closed: false, points };
          const fibre = { x: Math.cos(turn), y: Math.sin(turn) };
          const stretches = grainStretches(path, way, fibre);
          for (const { grain, from, to } of stretches) {
            for (const share of [0.03, 0.5, 0.97]) {
              const at = placeAlong(path, from + share * (to - from));
              if (at.kind !== "ok" || to - from < 1e-3) continue;
              const { x, y } = at.direction;
              const cut = way === "along" ? { x, y } : { x: -x, y: -y };
              const angle = (Math.asin(Math.min(1, Math.abs(fibre.x * y - fibre.y * x))) * 180) / Math.PI;
              if (Math.abs(angle - 2) > 0.01 && Math.abs(angle - 60) > 0.01)
                expect(grainAt(cut, { x: y, y: -x }, fibre)).toBe(grain);
            }
          }
          const lengths = grainLengths(stretches);
          // Turned over, the part is seen mirrored and walked the other way, the wood still on its left.
          const over = reversedPath({
            closed: false,
            points: points.map((p) => ({ ...p, x: 0 - p.x, bulge: 0 - p.bulge })),
          });
          const again = grainLengths(grainStretches(over, way, { x: -fibre.x, y: fibre.y }));
          for (const [grain, length] of Object.entries(flipped(lengths)))
            expect(again[grain as keyof typeof again]).toBeCloseTo(length, 5);
        },
      ),
      { seed: 20261125, numRuns: process.env.NIGHTLY === undefined ? 200 : 3000 },
    );
  });
});
