import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pathLength } from "../../../src/geometry/measure.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { placeAlong } from "../../../src/geometry/path-measures/place-along.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { baseFrame, inBase, onBase } from "../../../src/workshop/guided/base-frame.ts";
import { guidedEdge } from "../../../src/workshop/guided/guided-edge.ts";
import { type HoldingInput, holding } from "../../../src/workshop/guided/holding.ts";
import { holdingSizes } from "../../../src/workshop/guided/holding-sizes.ts";
import { keptOf } from "../../../src/workshop/guided/kept.ts";
import { runLength } from "../../../src/workshop/guided/run-in.ts";
import { type Model, modelOf } from "../../../src/workshop/model.ts";
import { virtualCut } from "../../../src/workshop/virtual-cut/virtual-cut.ts";
import { specOf } from "../../samples.ts";
import { wingLikes } from "./wing-like.ts";

type Place = { readonly x: number; readonly y: number };
const { clamps } = specOf("sedge", 5).shop;

/** Places along a path, two millimetres apart or less, with the direction there. */
const along = (path: Path) => {
  const length = pathLength(path);
  const count = Math.ceil(length / 2);
  return Array.from({ length: count + 1 }, (_, i) =>
    placeAlong(path, path.closed ? (length * i) / (count + 1) : Math.min(length, (length * i) / count)),
  ).flatMap((at) => (at.kind === "ok" ? [at] : []));
};
const far = (a: Place, b: Place) => Math.hypot(a.x - b.x, a.y - b.y);

describe("what holds the work", () => {
  it("is never in the cutter's circle, by points alone, on random wings; and there are clamps enough or fewer are said", () => {
    const counted = { all: 0, enough: 0, few: 0 };
    fc.assert(
      fc.property(wingLikes, ({ run, outline, cutter, guide }) => {
        const [head, tail] = [outline.points[0]!, outline.points[1]!];
        const frame = baseFrame(head, tail, { x: 50, y: 10 });
        const hands = runLength(guide) + cutter / 2 + 305 + holdingSizes.hand + 1;
        const reach = hands + 40;
        const edge = guidedEdge.work({
          run,
          cutter,
          guide,
          length: runLength(guide),
          base: { way: frame.away, reach },
        });
        if (edge.kind !== "ok") return;
        counted.all++;
        const given: HoldingInput = {
          ...{
            frame,
            length: far(head, tail),
            led: edge.led,
            reach,
            back: 4,
            jointPins: [30, 70],
            clamps,
            hands,
            past: 0,
          },
        };
        const held = holding.work(given);
        if (held.clamps.length < held.wanted) counted.few++;
        else counted.enough++;
        const kept = keptOf(held, 0);
        const edgeAt = along(edge.edge);
        const middles = edgeAt
          .map(({ point, direction }) => ({
            x: point.x + (direction.y * guide) / 2,
            y: point.y - (direction.x * guide) / 2,
          }))
          .filter((middle) => edgeAt.every(({ point }) => far(point, middle) > guide / 2 - 0.02));
        // By the edge alone, as the points are: where the base flares out, the guide would stop before the edge's end.
        const cut = virtualCut.work({
          ...{ edge: edge.edge, template: edge.edge, guide, cutter, cut: [], joined: [] },
          kept: kept.map(({ id, path, margin }) => ({ id, path, margin })),
        });
        if (cut.kind !== "ok") throw new Error(cut.kind);
        for (const { id, path, margin } of kept) {
          let least = Number.POSITIVE_INFINITY;
          for (const { point } of along(path))
            for (const middle of middles) least = Math.min(least, far(point, middle) - cutter / 2);
          expect(least, id).toBeGreaterThan(margin - 1e-3);
          const { gap } = cut.kept.find((one) => one.id === id)!;
          expect(gap).toBeGreaterThan(margin - 1e-3);
          // Points two millimetres apart may pass the nearest place by a little.
          expect(least).toBeGreaterThan(gap - 0.1);
          expect(least).toBeLessThan(gap + 2.5);
        }
        // Clamps stand on the base, beside one another, and press on the work.
        for (const [i, { base, pad }] of held.clamps.entries()) {
          expect(inBase(frame, pad).h).toBeLessThan(-14);
          for (const point of base.points)
            expect(inBase(frame, point).h).toBeGreaterThan(4 + holdingSizes.batten);
          for (const other of held.clamps.slice(i + 1))
            expect(Math.abs(inBase(frame, other.pad).s - inBase(frame, pad).s)).toBeGreaterThanOrEqual(30);
        }
      }),
      { seed: 20261125, numRuns: process.env.NIGHTLY === undefined ? 25 : 600 },
    );
    expect(counted.all).toBeGreaterThan(12);
    expect(counted.enough / counted.all).toBeGreaterThan(0.1);
    expect(counted.few / counted.all).toBeGreaterThan(0.1);
  });

  it("keeps its place on the base whichever way that lies", () => {
    const frame = baseFrame({ x: 10, y: 5 }, { x: 110, y: -15 }, { x: 60, y: 40 });
    expect(frame.away.y).toBeLessThan(0);
    const at = onBase(frame, 30, 12);
    expect(inBase(frame, at).s).toBeCloseTo(30, 9);
    expect(inBase(frame, at).h).toBeCloseTo(12, 9);
    expect(baseFrame({ x: 0, y: 0 }, { x: 100, y: 0 }, { x: 50, y: -9 }).away).toEqual({ x: 0, y: 1 });
  });
});

describe("the other hand", () => {
  const store = memoryStore();
  const ofWings = (model: Model) => model.fixtures().filter(({ part }) => part.startsWith("wing-"));
  const fixtures = (hand: "right" | "left") => ofWings(modelOf(specOf("mallow", 4, "", { hand }), store));

  it("has the same numbers; its fixture lies the same, with the other face up, or mirrored, with the cut the other way round", () => {
    for (const [i, right] of fixtures("right").entries()) {
      const left = fixtures("left")[i]!;
      expect(left.setUp).toEqual(right.setUp);
      if (left.edge?.kind !== "ok" || right.edge?.kind !== "ok") throw new Error("no edge");
      const mirrored = left.up === right.up;
      const wanted = right.edge.edge.points.map(({ x, y }) => ({ x, y: mirrored ? -y : y }));
      if (mirrored) wanted.reverse();
      for (const [k, { x, y }] of left.edge.edge.points.entries())
        expect(far({ x, y }, wanted[k]!)).toBeLessThan(2e-6);
      if (left.cut?.kind !== "ok" || right.cut?.kind !== "ok") throw new Error("no cut");
      for (const [k, { gap, id }] of left.cut.kept.entries()) {
        expect(id).toBe(right.cut.kept[k]!.id);
        expect(gap).toBeCloseTo(right.cut.kept[k]!.gap, 4);
      }
      // Both are walked with the wood on the left. A spindle isn't mirrored: the face that is up sees to it that less is against the grain.
      expect(left.feed!.way).toBe(right.feed!.way);
      for (const { grain } of [left, right]) expect(grain!.against).toBeLessThan(grain!.with + 1);
      expect(left.up === right.up || left.grain!.with - right.grain!.with < 1e-4).toBe(true);
    }
  });

  it("turns a wing over where so much less is cut against the grain, by the machine's rotation", () => {
    const spec = specOf("sedge", 5);
    const turned = (rotation: "ccw" | "cw") => ({
      ...spec,
      shop: {
        ...spec.shop,
        machines: spec.shop.machines.map((one) => ("rotation" in one ? { ...one, rotation } : one)),
      },
    });
    const [ccw, cw] = (["ccw", "cw"] as const).map((rotation) =>
      ofWings(modelOf(turned(rotation), store)).map(({ up, grain }) => ({ up, against: grain!.against })),
    );
    expect(ccw!.map(({ up }) => up)).toEqual(["front", "back"]);
    expect(cw!.map(({ up }) => up)).toEqual(["back", "front"]);
    for (const [k, { against }] of cw!.entries()) expect(against).toBeCloseTo(ccw![k]!.against, 4);
  });
});

it("a collar changes only the fixture that uses it, and another's template keeps its key", () => {
  const store = memoryStore();
  const keyed = (more: string) =>
    modelOf(specOf("sedge", 5, more), store)
      .fixtures()
      .map(({ edge }) => (edge?.kind === "ok" ? edge : undefined));
  const before = keyed("");
  const after = keyed("fixtures:\n  wing-bass-router: { cutter: straight-12 }\n");
  expect(after[0]).not.toEqual(before[0]);
  // The very same answer of the store.
  expect(after[1]).toBe(before[1]);
});
