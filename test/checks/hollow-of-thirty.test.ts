import { describe, expect, it } from "vitest";
import { cutterLarge } from "../../src/checks/guided/cutter.ts";
import { virtualCutRule } from "../../src/checks/guided/virtual-cut.ts";
import type { Path } from "../../src/geometry/path.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { guidedFixture } from "../../src/workshop/guided/guided-fixture.ts";
import { specOf } from "../samples.ts";

const store = memoryStore();
const five = specOf("sedge", 5);
/** The spec with a shaper's cutter named, or with cutters left out of its shop. */
const named = (cutter: string | null, without: readonly string[] = []): Spec => ({
  ...five,
  fixtures: cutter === null ? {} : { plain: { machine: null, cutter, guide: null } },
  shop: {
    ...five.shop,
    cutters: five.shop.cutters.filter(({ id }) => !without.includes(id)),
    guides: five.shop.guides.filter(({ fits }) => !fits.every((one) => without.includes(one))),
  },
});

/** How wide the hollow's mouth is, mm. */
const mouth = 40;

/** A piece 400 long whose lower edge has a hollow of a radius in its middle, mm, cut on the shaper from end to end. */
function piece(radius: number, spec: Spec) {
  const half = Math.asin(mouth / 2 / radius);
  const points = [
    ...[
      { x: 0, y: 0 },
      { x: 200 - mouth / 2, y: 0, bulge: -Math.tan(half / 2) },
    ],
    ...[
      { x: 200 + mouth / 2, y: 0 },
      { x: 400, y: 0 },
      { x: 400, y: 60 },
      { x: 0, y: 60 },
    ],
  ].map((point) => ({ bulge: 0, ...point }));
  const outline: Path = { closed: true, points };
  return guidedFixture(
    {
      ...{ file: "plain", part: "plain", kind: "shaper", up: "front", outline, again: null },
      uses: points.map((_, i) => (i < 3 ? "cut" : "joined")),
      ...{ thickness: 30, allowance: 2, joined: [], waste: [10, 10] },
      base: { from: { x: -10, y: 60 }, to: { x: 410, y: 60 } },
      held: {
        ...{ by: "pins", pins: [], screws: [], screw: { what: "screw", diameter: 5 }, clamps: true },
        ...{ wanted: 2, said: [], marks: [] },
      },
    },
    spec,
    store,
  );
}

const told = (radius: number, spec: Spec) => cutterLarge.of(piece(radius, spec), spec);

describe("a hollow of radius 30 with a cutter of 100", () => {
  it("is refused, with its place, how deep, and the largest owned cutter of 60 or less that would do", () => {
    const finding = told(30, named("block-100"));
    // The cutter rests on the mouth's corners: what it leaves is the difference of the two arcs' heights.
    const rise = (radius: number) => radius - Math.sqrt(radius ** 2 - (mouth / 2) ** 2);
    expect(finding).toMatchObject({ status: "refuse", stake: "spoilage" });
    expect(finding.found).toBeCloseTo(rise(30) - rise(50), 4);
    const [, x, y, deep] = /at ([\d.]+), ([\d.]+) over [\d.]+ mm, ([\d.]+) deep/
      .exec(finding.why)!
      .map(Number);
    expect(x).toBeCloseTo(200, 1);
    expect(y).toBeCloseTo(rise(30), 1);
    expect(deep).toBeCloseTo(rise(30) - rise(50), 2);
    expect(finding.why).toContain("block-100, 100 mm, can't touch a hollow of radius 30");
    expect(finding.why).toContain("the largest owned cutter that would do is block-60, 60 mm, on shaper");
  });

  it("names none that is for another machine, that nothing guides, or that is too short", () => {
    expect(told(30, named("block-100", ["block-60"])).why).toContain(
      "a cutter of 60 mm or less would do, the shop owns none for a shaper",
    );
    const { shop, ...rest } = named("block-100");
    const other = (cutters: Spec["shop"]["cutters"], guides = shop.guides): Spec => ({
      ...rest,
      shop: { ...shop, cutters, guides },
    });
    const shorter = shop.cutters.map((one) => (one.id === "block-60" ? { ...one, length: 30 } : one));
    expect(told(30, other(shorter)).why).toContain("of those owned block-60 is the largest, but too short");
    const unguided = shop.guides.filter(({ fits }) => !fits.includes("block-60"));
    expect(told(30, other(shop.cutters, unguided)).why).toContain("owns none for a shaper");
    const driven = shop.cutters.map((one) =>
      one.id === "block-60" ? { ...one, feed: "mechanical" as const } : one,
    );
    expect(told(30, other(driven)).why).toContain("owns none for a shaper");
  });

  it("is taken by the 60 cutter when that is left to choose, and a hollow of 50 by the 100 one", () => {
    for (const [radius, spec, cutter] of [
      [30.5, named(null), "block-60"],
      [50.5, named("block-100"), "block-100"],
    ] as const) {
      const fixture = piece(radius, spec);
      expect(fixture.setUp?.cutter.id).toBe(cutter);
      expect(cutterLarge.of(fixture, spec).status, cutter).toBe("pass");
      expect(virtualCutRule.of(fixture, spec).status, cutter).toBe("pass");
    }
    expect(told(49.5, named("block-100")).status).toBe("refuse");
  });
});
