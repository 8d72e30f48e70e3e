import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nearestPlace } from "../../src/geometry/path-measures/nearest-place.ts";
import { contradictions } from "../../src/instrument/contradictions.ts";
import { madeTailpiece } from "../../src/instrument/tailpiece/tailpiece.ts";
import { settables } from "../../src/order/catalogue.ts";
import { quantityText } from "../../src/order/quantity.ts";
import { dimensionOf, type Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { bare } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";
import { crossings, inside, polygonOf } from "../simple-ring.ts";

const runs = process.env.NIGHTLY === undefined ? 8 : 200;

/** What a tailpiece follows from, apart from its width, which follows its spread in every design and is set in half of the orders. */
const moved = [
  ...["spread", "slant", "length", "thickness", "hole", "hole.at", "wall", "clear", "height"].map(
    (id) => `tailpiece.${id}`,
  ),
  ...["afterlength", "core.slope", "core.end", "bridge.tilt", "string.clearance.end.high", "bridge.spread"],
];

/** The orders of a design and count in which all of these lie anywhere in their ranges at once. */
function orders(nominal: Spec, seed: number): readonly string[] {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const sets = fc.record(Object.fromEntries([...moved, "tailpiece.width"].map((id) => [id, share])));
  return fc.sample(sets, { seed, numRuns: runs }).map((shares, i) => {
    const ids = i % 2 === 0 ? moved : [...moved, "tailpiece.width"];
    const lines = ids.map((id) => {
      const { least, most, kind } = nominal.values[id]!;
      const value = Math.round((least + (most - least) * shares[id]!) * 100) / 100;
      return `  ${id}: ${quantityText(Math.min(most, Math.max(least, value)), kind)}\n`;
    });
    return `set:\n${lines.join("")}`;
  });
}

/** What must hold of any tailpiece that can be built, worked out apart from what it is checked with. */
function sound(model: Model): void {
  const { spec, instrument: made } = model;
  const plate = madeTailpiece(made);
  const of = (id: string) => dimensionOf(spec, id);
  const ring = polygonOf(plate.path);
  expect(crossings(ring)).toBe(0);
  for (const { exit } of plate.strings) {
    const nearest = nearestPlace(plate.path, exit);
    expect(nearest.kind === "ok" && nearest.distance).toBeLessThan(1e-6);
  }
  const least = spec.values["tailpiece.wall"]!.least;
  const holes = [...plate.strings, ...plate.posts];
  for (const [i, { at, size }] of holes.entries()) {
    // A circle wider by the least wall lies in the plate.
    const wide = polygonOf({
      closed: true,
      points: [1, -1].map((side) => ({ x: at.x + side * (size / 2 + least - 1e-3), y: at.y, bulge: 1 })),
    });
    for (const place of wide) expect(inside(ring, place)).toBe(true);
    for (const other of holes.slice(0, i))
      expect(Math.hypot(at.x - other.at.x, at.y - other.at.y)).toBeGreaterThan(
        (size + other.size) / 2 + least - 1e-5,
      );
  }
  expect(of("tailpiece.height") - of("tailpiece.thickness")).toBeGreaterThanOrEqual(
    spec.values["tailpiece.clear"]!.least - 1e-5,
  );
  for (const { id, of: value } of dimensionsOf(spec).filter(({ part }) => part === "tailpiece"))
    expect(Number.isFinite(value(model)), id).toBe(true);
}

describe("tailpieces with everything at random in its range at once", () => {
  const tally = { all: 0, built: 0, bassLonger: 0, trebleLonger: 0, ownWidth: 0 };
  const named: string[] = [];

  it.each(everyCount.map((at, i) => ({ ...at, seed: 40 + i })))(
    "$design with $count strings are sound, or name what to move",
    ({ design, count, seed }) => {
      const nominal = specOf(design, count);
      for (const more of orders(nominal, seed)) {
        // Wings and body lie along the same core, and say themselves when it is too short for them; so does what is sunk in or rests on them.
        const rests = { chin: null, mounts: [], endpin: false };
        const spec = { ...bare(specOf(design, count, more)), rests, wings: null, body: null };
        const model = modelOf(spec, memoryStore());
        const problems = contradictions(spec, model.instrument);
        tally.all++;
        for (const { name, hint } of problems) {
          expect(settables.has(name), name).toBe(true);
          expect(hint).not.toMatch(/NaN|undefined|Infinity|leave it/);
        }
        if (problems.length > 0) {
          named.push(`${design} ${count}: ${problems[0]!.name}: ${problems[0]!.found}: ${problems[0]!.hint}`);
          continue;
        }
        sound(model);
        tally.built++;
        const slant = dimensionOf(spec, "tailpiece.slant");
        if (slant > 1) tally.bassLonger++;
        if (slant < -1) tally.trebleLonger++;
        if (more.includes("tailpiece.width")) tally.ownWidth++;
      }
    },
  );

  it("nine in ten of them build, of each kind at least one in ten", () => {
    expect(tally.all).toBe(everyCount.length * runs);
    console.log(`${tally.built} of ${tally.all} build\n${named.join("\n")}`);
    expect(tally.built, named.join("\n")).toBeGreaterThanOrEqual(0.9 * tally.all);
    for (const kind of ["bassLonger", "trebleLonger", "ownWidth"] as const)
      expect(tally[kind], kind).toBeGreaterThan(tally.built / 10);
  });
});
