import { describe, expect, it } from "vitest";
import { circle } from "../../src/geometry/circle.ts";
import { rectangle } from "../../src/geometry/rectangle.ts";
import { closedForm } from "../../src/geometry/solid/closed-form.ts";
import { upright } from "../../src/geometry/solid/frame.ts";
import type { Solid } from "../../src/geometry/solid/solid.ts";
import { wholeOf } from "../../src/physics/mass/piece.ts";
import { type At, away } from "./mass-faults.ts";

describe("a closed form", () => {
  const at = { origin: { x: 7, y: -3, z: 11 }, u: upright.u, v: upright.v, w: upright.w };
  const triangle = {
    closed: true,
    points: [
      { x: 0, y: 0, bulge: 0 },
      { x: 20, y: 0, bulge: 0 },
      { x: 0, y: 12, bulge: 0 },
    ],
  };
  const cases: readonly [string, Solid, number, At][] = [
    [
      "box",
      { kind: "extrude", outlines: [{ outer: rectangle(0, 0, 30, 20), holes: [] }], height: 10 },
      6000,
      { x: 15, y: 10, z: 5 },
    ],
    [
      "cylinder",
      { kind: "extrude", outlines: [{ outer: circle({ x: 2, y: 1 }, 5), holes: [] }], height: 40 },
      1000 * Math.PI,
      { x: 2, y: 1, z: 20 },
    ],
    [
      "wedge",
      { kind: "extrude", outlines: [{ outer: triangle, holes: [] }], height: 30 },
      3600,
      { x: 20 / 3, y: 4, z: 15 },
    ],
    [
      "cone",
      {
        kind: "loft",
        sections: [
          { kind: "path", path: circle({ x: 0, y: 0 }, 6), frame: upright },
          { kind: "point", at: { x: 0, y: 0, z: 16 } },
        ],
      },
      192 * Math.PI,
      { x: 0, y: 0, z: 4 },
    ],
  ];

  it.each(cases)("weighs a %s exactly, wherever it stands", (_, solid, volume, centre) => {
    const exact = closedForm({ kind: "place", solid, frame: at });
    if (exact.kind !== "ok") throw new Error("no closed form");
    expect(exact.measures.volume).toBeCloseTo(volume, 5);
    const moved = { x: centre.x + 7, y: centre.y - 3, z: centre.z + 11 };
    expect(away(exact.measures.centre, moved)).toBeLessThan(1e-6);
    const piece = {
      name: "one",
      kind: "part",
      mass: exact.measures.volume * 705e-6,
      centre: exact.measures.centre,
    } as const;
    const both = wholeOf([
      piece,
      { ...piece, name: "other", mass: 2 * piece.mass, centre: { x: 0, y: 0, z: 0 } },
    ]);
    expect(both.mass).toBeCloseTo(3 * volume * 705e-6, 6);
    expect(both.centre.x).toBeCloseTo(moved.x / 3, 6);
  });
});
