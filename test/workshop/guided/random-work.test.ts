import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { extentsOf } from "../../../src/geometry/measure.ts";
import { baseFrame } from "../../../src/workshop/guided/base-frame.ts";
import { guidedEdge } from "../../../src/workshop/guided/guided-edge.ts";
import { handDistances } from "../../../src/workshop/guided/hand-distances.ts";
import { keptOf } from "../../../src/workshop/guided/kept.ts";
import { pinnedHolding } from "../../../src/workshop/guided/pinned.ts";
import { reachedStretches } from "../../../src/workshop/guided/reached-stretches.ts";
import { runLength } from "../../../src/workshop/guided/run-in.ts";
import { virtualCut } from "../../../src/workshop/virtual-cut/virtual-cut.ts";
import { type Along, bodyLikes, neckLikes } from "./neck-like.ts";
import { leastTo, middlesOn } from "./swept.ts";

/** The guided edge of random work, what holds it on pins and screws, and the virtual cut of both. */
function made({ outline, run, again, edge: side, waste, cutter, guide }: Along) {
  const away = side === "low" ? 1 : -1;
  const { minX, maxX, minY, maxY } = extentsOf([outline])!;
  const y = (side === "low" ? maxY : minY) + 3 * away;
  const hands = runLength(guide) + waste[0] + cutter / 2 + handDistances.usual + 21;
  const given = {
    ...{ cutter, guide, length: runLength(guide), waste },
    base: { way: { x: 0, y: away }, reach: hands + 40 + Math.abs(y - run.path.points[0]!.y) },
  };
  const edge = guidedEdge.work({ run, ...given });
  if (edge.kind !== "ok") return { kind: edge.kind };
  const second = again === null ? null : guidedEdge.work({ run: again, ...given });
  // The first place of each screw lies toward the cut, so that some have to stand elsewhere, and the last has no other.
  const near = (maxY - minY) / 4;
  const beside = (x: number) => [-near, 0, near].map((from) => ({ x, y: away * from }));
  const held = pinnedHolding.work({
    ...{ base: { from: { x: minX, y }, to: { x: maxX, y } }, inside: run.path.points[1]!, led: edge.led },
    pins: [
      { at: { x: minX + 20, y: 0 }, diameter: 6 },
      { at: { x: maxX - 20, y: 0 }, diameter: 8 },
    ],
    ...{
      screws: [beside(minX + 60), beside(maxX - 60), beside((minX + maxX) / 2).slice(0, 1)],
      wanted: 3,
      marks: [],
    },
    ...{ screw: { what: "screw", diameter: 5 }, clamps: [], hands, past: 0, reach: hands + 40 },
  });
  const cut = virtualCut.work({
    ...{ edge: edge.edge, template: edge.template, guide, cutter, joined: [] },
    cut: [
      ...reachedStretches(run.path, edge.places),
      ...(again === null || second?.kind !== "ok" ? [] : reachedStretches(again.path, second.places)),
    ],
    kept: keptOf(held, 0).map(({ id, path, margin }) => ({ id, path, margin })),
  });
  return { kind: "ok", edge, held, cut, second } as const;
}

const runs = process.env.NIGHTLY === undefined ? 60 : 1500;

describe.each([
  ["necks", neckLikes],
  ["bodies", bodyLikes],
] as const)("random %s", (what, likes) => {
  it("come out within 0.01 mm outside of the places that are listed, both edges where there are two", () => {
    const counted = { all: 0, none: 0, hollow: 0, outward: 0, inward: 0, byHand: 0 };
    fc.assert(
      fc.property(likes, (one) => {
        counted.all++;
        const work = made(one);
        if (work.kind !== "ok") {
          counted.none++;
          return;
        }
        const { edge, cut, second } = work;
        if (edge.places.some(({ kind }) => kind === "hollow")) counted.hollow++;
        if (edge.places.some(({ kind }) => kind === "outward")) counted.outward++;
        if (edge.places.some(({ hand }) => hand)) counted.byHand++;
        if (edge.offset < 0) counted.inward++;
        if (one.again !== null) expect(second?.kind).toBe("ok");
        if (cut.kind !== "ok") throw new Error(cut.kind);
        expect(cut.deviation).toBeLessThan(0.011);
      }),
      { seed: 20261129, numRuns: runs },
    );
    expect(counted.none / counted.all).toBeLessThan(0.3);
    const hard =
      what === "necks"
        ? [counted.hollow, counted.inward, counted.byHand]
        : [counted.hollow, counted.outward, counted.inward];
    for (const count of hard) expect(count / counted.all, JSON.stringify(counted)).toBeGreaterThan(0.1);
  });

  it("have nothing that holds them in the cutter's circle, by points alone; where a screw finds no place there are fewer", () => {
    const counted = { all: 0, fewer: 0, aside: 0 };
    fc.assert(
      fc.property(likes, (one) => {
        const work = made(one);
        if (work.kind !== "ok") return;
        counted.all++;
        const { held, edge } = work;
        const screws = held.holes.filter((hole) => hole.what === "screw");
        if (screws.length < 3) counted.fewer++;
        if (screws.some(({ at }) => at.y === 0)) counted.aside++;
        const middles = middlesOn(edge.edge, one.guide);
        for (const { id, path, margin, what: kind } of keptOf(held, 0)) {
          // Pins stand where the work has them: only what is placed here is promised.
          if (kind === "pin") continue;
          expect(leastTo(path, middles) - one.cutter / 2, id).toBeGreaterThan(margin - 1e-3);
        }
      }),
      { seed: 20261129, numRuns: Math.ceil(runs / 3) },
    );
    expect(counted.all).toBeGreaterThan(runs / 6);
    for (const count of [counted.fewer, counted.aside])
      expect(count / counted.all, JSON.stringify(counted)).toBeGreaterThan(0.1);
  });
});

it("gives the line that a base begins at its far side, whichever way the work lies", () => {
  expect(baseFrame({ x: 0, y: 3 }, { x: 9, y: 3 }, { x: 4, y: -20 }).away).toEqual({ x: 0, y: 1 });
});
