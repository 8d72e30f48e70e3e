import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { closedForm } from "../../../src/geometry/solid/closed-form.ts";
import { mesh } from "../../../src/geometry/solid/mesh.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import type { Section, Solid } from "../../../src/geometry/solid/solid.ts";
import { circle, moved, polygon, raised, rectangle, rounded, sectionAt } from "./recipes.ts";

const tipAt = (x: number, y: number, z: number): Section => ({ kind: "point", at: { x, y, z } });
const loft = (...sections: Section[]): Solid => ({ kind: "loft", sections });

/** Solids with volume and centre from the books. */
const known: readonly (readonly [string, Solid, number, readonly [number, number, number]])[] = [
  ["box", moved(raised(rectangle(4, 6), 10), 1, 2, 3), 240, [3, 5, 8]],
  ["cylinder", raised(circle(5, 2, 3), 8), 200 * Math.PI, [2, 3, 4]],
  ["tube", raised(circle(5), 8, [circle(3)]), 128 * Math.PI, [0, 0, 4]],
  ["wedge", raised(polygon([0, 0], [6, 0], [0, 9]), 5), 135, [2, 3, 2.5]],
  ["cone", loft(sectionAt(0, circle(6)), tipAt(0, 0, 12)), 144 * Math.PI, [0, 0, 3]],
  ["leaning cone", loft(sectionAt(0, circle(6)), tipAt(8, 0, 12)), 144 * Math.PI, [2, 0, 3]],
  ["cone on its tip", loft(tipAt(0, 0, 0), sectionAt(12, circle(6))), 144 * Math.PI, [0, 0, 9]],
  ["frustum", loft(sectionAt(0, circle(6)), sectionAt(9, circle(3))), 189 * Math.PI, [0, 0, (9 * 99) / 252]],
  ["pyramid", loft(sectionAt(0, rectangle(6, 6)), tipAt(3, 3, 10)), 120, [3, 3, 2.5]],
];

describe("the closed form", () => {
  it.each(known)("of a %s is that of the books", (_, solid, volume, [x, y, z]) => {
    const found = closedForm(solid);
    if (found.kind !== "ok") throw new Error(found.kind);
    expect(found.measures.volume).toBeCloseTo(volume, 8);
    for (const [axis, value] of Object.entries({ x, y, z })) {
      expect(found.measures.centre[axis as "x" | "y" | "z"]).toBeCloseTo(value, 9);
    }
  });

  it("is none where walls aren't ruled between level, like sections", () => {
    const tilted: Section = {
      ...{ kind: "path", path: circle(3) },
      frame: {
        origin: { x: 0, y: 0, z: 9 },
        u: { x: 1, y: 0, z: 0 },
        v: { x: 0, y: 0, z: 1 },
        w: { x: 0, y: -1, z: 0 },
      },
    };
    for (const solid of [
      loft(sectionAt(0, circle(6)), tilted),
      loft(
        sectionAt(0, rounded(10, 8, 2)),
        sectionAt(5, {
          ...rounded(10, 8, 2),
          points: rounded(10, 8, 2).points.map((p) => ({ ...p, bulge: p.bulge / 2 })),
        }),
      ),
      loft(sectionAt(0, circle(6)), sectionAt(5, circle(5)), sectionAt(2, circle(4))),
      loft(sectionAt(0, circle(6)), sectionAt(0, circle(5))),
      { kind: "union", solids: [raised(circle(5), 8)] } as const,
    ]) {
      expect(closedForm(solid)).toEqual({ kind: "none" });
    }
  });

  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await loadKernel();
  });

  it("of random lofts of three sections agrees with their fine mesh", () => {
    const size = (least: number, most: number) =>
      fc.integer({ min: least * 100, max: most * 100 }).map((n) => n / 100);
    const section = fc.record({ scale: size(0.5, 2), x: size(-3, 3), y: size(-3, 3), high: size(2, 9) });
    const shape = fc.constantFrom<Path>(
      circle(6),
      rounded(14, 9, 2),
      rectangle(7, 5),
      polygon([0, 0], [6, 0], [0, 9]),
    );
    fc.assert(
      fc.property(shape, fc.tuple(section, section, section), (path, parts) => {
        let z = 0;
        const solid = loft(
          ...parts.map(({ scale, x, y, high }) => {
            z += high;
            const points = path.points.map((p) => ({
              x: p.x * scale + x,
              y: p.y * scale + y,
              bulge: p.bulge,
            }));
            return sectionAt(z, { closed: true, points });
          }),
        );
        const [exact, made] = [closedForm(solid), mesh(kernel, solid, 0.002)];
        if (exact.kind !== "ok" || made.kind !== "ok") throw new Error(`${exact.kind} ${made.kind}`);
        const fine = meshMeasures(made.mesh);
        expect(Math.abs(fine.volume / exact.measures.volume - 1)).toBeLessThan(5e-4);
        for (const axis of ["x", "y", "z"] as const) {
          expect(Math.abs(fine.centre[axis] - exact.measures.centre[axis])).toBeLessThan(5e-3);
          expect(Math.abs(fine.least[axis] - exact.measures.least[axis])).toBeLessThan(5e-3);
          expect(Math.abs(fine.most[axis] - exact.measures.most[axis])).toBeLessThan(5e-3);
        }
      }),
      { seed: 12, numRuns: 120 },
    );
  });
});
