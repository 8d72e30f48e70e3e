import { describe, expect, it } from "vitest";
import type { Path } from "../../src/geometry/path.ts";
import { pointOn } from "../../src/geometry/path-measures/segment-places.ts";
import type { Point } from "../../src/geometry/point.ts";
import { segmentsOf } from "../../src/geometry/segment.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { distanceTo } from "../geometry/random/distance.ts";
import { everyCount, specOf } from "../samples.ts";
import { inside, polygonOf } from "../simple-ring.ts";

const round = (value: number) => Math.round(value * 1e6) / 1e6;

/** An outline as a step sees it: rounded to 1e-6. */
function finished({ instrument }: Model, view: "plan" | "side"): Path {
  const made = view === "plan" ? instrument.neckPlan : instrument.neckSide;
  if (made.kind !== "ok") throw new Error(made.kind);
  const points = made.path.points.map(({ x, y, bulge }) => ({
    x: round(x),
    y: round(y),
    bulge: round(bulge),
  }));
  return { ...made.path, points };
}

function sawnOf({ sawing }: Model, view: "plan" | "side") {
  const sawn = sawing.cuts[view];
  if (sawn.kind !== "ok") throw new Error(sawn.kind);
  return sawn;
}

function kerfOf({ sawing: { cuts } }: Model): number {
  return cuts.saw.kind === "ok" ? cuts.saw.blade.kerf : Number.NaN;
}

function rectangleOf({ sawing: { place } }: Model, view: "plan" | "side") {
  const { minX, maxX, minY, maxY, minZ, maxZ } = place;
  return view === "plan" ? { minX, maxX, minY, maxY } : { minX, maxX, minY: minZ, maxY: maxZ };
}

/** Places all along a path, none farther from the next than half a millimetre. */
function along(path: Path): Point[] {
  return segmentsOf(path).flatMap((segment) => {
    const chord = Math.hypot(segment.to.x - segment.from.x, segment.to.y - segment.from.y);
    const count = Math.ceil(2 * chord) + 2;
    return Array.from({ length: count + 1 }, (_, i) => pointOn(segment, i / count));
  });
}

/** A saw line that runs on 50 mm past the blank at both ends. */
function ledOnBothWays(path: Path): Path {
  const segments = segmentsOf(path);
  const beyond = (at: Point, from: Point) => {
    const length = Math.hypot(at.x - from.x, at.y - from.y);
    return {
      x: at.x + (50 * (at.x - from.x)) / length,
      y: at.y + (50 * (at.y - from.y)) / length,
      bulge: 0,
    };
  };
  const [first, last] = [segments[0]!, segments.at(-1)!];
  if (first.kind === "arc" || last.kind === "arc")
    throw new Error("a saw line that leaves the blank in an arc");
  return {
    closed: false,
    points: [beyond(first.from, first.to), ...path.points, beyond(last.to, last.from)],
  };
}

/** How far a place is inside a rectangle; negative outside. */
function depthIn(blank: ReturnType<typeof rectangleOf>, { x, y }: Point): number {
  return Math.min(x - blank.minX, blank.maxX - x, y - blank.minY, blank.maxY - y);
}

/** The least wood outside a finished outline by what is kept, by a distance of the test's own. */
function leastWood(outline: Path, kept: Path): number {
  const ring = polygonOf(kept);
  const places = along(outline);
  if (!places.every(({ x, y }) => inside(ring, [x, y]))) return 0;
  return Math.min(...places.map(({ x, y }) => distanceTo([kept], x, y)));
}

describe.each(everyCount)("the sawing of $design with $count strings", ({ design, count }) => {
  const model = modelOf(specOf(design, count), memoryStore());
  const of = (id: string) => model.spec.values[id]!.value;

  it("comes out of a board of the shop, the blank's middle in the middle of the neck's box", () => {
    expect(model.sawing.stock.kind).toBe("ok");
    const { length, width, thickness } = model.instrument.neckBlank;
    const { place } = model.sawing;
    expect([place.maxX - place.minX, place.maxY - place.minY, place.maxZ - place.minZ]).toEqual([
      expect.closeTo(length, 9),
      expect.closeTo(width, 9),
      expect.closeTo(thickness, 9),
    ]);
    const xs = finished(model, "plan").points.map(({ x }) => x);
    expect(Math.min(...xs) - place.minX).toBeCloseTo(place.maxX - Math.max(...xs), 5);
    expect(Math.min(...xs) - place.minX).toBeGreaterThanOrEqual(of("neck.allowance.end") - 1e-6);
  });

  it.each(["plan", "side"] as const)("leaves its allowance outside every place of the %s", (view) => {
    const { kept } = sawnOf(model, view);
    const outline = finished(model, view);
    const allowance = of("saw.allowance");
    expect(leastWood(outline, kept)).toBeGreaterThanOrEqual(allowance - 1e-6);
    const blank = rectangleOf(model, view);
    const sawn = along(kept).filter((place) => depthIn(blank, place) > 1e-3);
    const xs = outline.points.map(({ x }) => x);
    const [minX, maxX] = [Math.min(...xs), Math.max(...xs)];
    const beside = sawn.filter(({ x }) => x > minX + 10 && x < maxX - 10);
    const spare = beside.map(({ x, y }) => distanceTo([outline], x, y) - allowance);
    expect(spare.length).toBeGreaterThan(200);
    // Half of what is sawn, at least, has just the allowance; the rest runs out through a face or round a mitred corner.
    expect(spare.filter((more) => Math.abs(more) < 2e-6).length).toBeGreaterThan(spare.length / 2);
    for (const more of spare) expect(more).toBeGreaterThan(-1e-6);
  });

  it.each(["plan", "side"] as const)("saws the %s half a kerf outside what is kept", (view) => {
    const { kept, lines } = sawnOf(model, view);
    const blank = rectangleOf(model, view);
    const half = kerfOf(model) / 2;
    const paths = lines.map(({ path }) => path);
    // Where a line runs out through a face at a slant, its kerf's inner edge leaves the blank farther on.
    const led = paths.map(ledOnBothWays);
    const cut = along(kept).filter((place) => depthIn(blank, place) > 1e-3);
    expect(cut.length).toBeGreaterThan(200);
    for (const { x, y } of cut) {
      const away = distanceTo(led, x, y);
      expect(Math.abs(away - half)).toBeLessThan(1e-6);
    }
    const ring = polygonOf(kept);
    for (const { x, y } of paths.flatMap(along)) {
      expect(inside(ring, [x, y])).toBe(false);
      expect(distanceTo([kept], x, y)).toBeGreaterThan(half - 1e-6);
    }
  });

  it.each(["plan", "side"] as const)(
    "leads every line of the %s from the blank's edge to its edge",
    (view) => {
      const blank = rectangleOf(model, view);
      for (const { path } of sawnOf(model, view).lines) {
        for (const end of [path.points[0]!, path.points.at(-1)!])
          expect(Math.abs(depthIn(blank, end))).toBeLessThan(2e-6);
        for (const place of along(path)) expect(depthIn(blank, place)).toBeGreaterThan(-2e-6);
      }
    },
  );

  it.each(["plan", "side"] as const)("relieves each tight place of the %s through waste alone", (view) => {
    const { kept, lines, tight } = sawnOf(model, view);
    const blank = rectangleOf(model, view);
    const ring = polygonOf(kept);
    const half = kerfOf(model) / 2;
    for (const { x, y, relief } of tight) {
      const paths = lines.map(({ path }) => path);
      expect(distanceTo(paths, x, y)).toBeLessThan(1e-6);
      expect(relief.kind).not.toBe("none");
      if (relief.kind !== "cut") continue;
      const [edge, end] = [relief.path.points[0]!, relief.path.points[1]!];
      expect(Math.abs(depthIn(blank, edge))).toBeLessThan(1e-6);
      expect(Math.hypot(end.x - x, end.y - y)).toBeLessThan(1e-6);
      for (const place of along(relief.path)) {
        expect(inside(ring, [place.x, place.y])).toBe(false);
        expect(distanceTo([kept], place.x, place.y)).toBeGreaterThan(half - 1e-6);
      }
    }
  });

  it("marks every arc and corner that its blade can't follow, and no other", () => {
    const { saw } = model.sawing.cuts;
    const least = saw.kind === "ok" ? saw.blade.radius : 0;
    let bends = 0;
    for (const view of ["plan", "side"] as const) {
      const { lines, tight } = sawnOf(model, view);
      for (const { path } of lines) {
        const arcs = segmentsOf(path).filter((one) => one.kind === "arc" && one.radius < least - 1e-6);
        for (const arc of arcs) {
          bends++;
          const middle = pointOn(arc, 0.5);
          const near = tight.map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y));
          expect(Math.min(...near)).toBeLessThan(2 * least);
        }
      }
      for (const { radius } of tight) expect(radius).toBeLessThan(least);
    }
    // A bare head hardly widens from the nut; every other one has shoulders that no blade here follows.
    if (model.spec.tuners === "tail") expect(bends).toBe(0);
    else expect(bends).toBeGreaterThan(2);
  });

  it("finds a side line that is 1 mm too deep, by the test's own measure", () => {
    const { kept } = sawnOf(model, "side");
    const deep = { ...kept, points: kept.points.map((point) => ({ ...point, y: point.y - 1 })) };
    expect(leastWood(finished(model, "side"), deep)).toBeLessThan(of("saw.allowance") - 0.9);
  });
});
