import { beforeAll, describe, expect, it } from "vitest";
import { type Kernel, loadKernel } from "../../../src/geometry/kernel.ts";
import { clash } from "../../../src/geometry/solid/clash.ts";
import { meshMeasures } from "../../../src/geometry/solid/mesh-measures.ts";
import type { Solid } from "../../../src/geometry/solid/solid.ts";
import { type Key, pieceOf } from "../../../src/workshop/jigs/piece.ts";
import { piecesOf } from "../../../src/workshop/jigs/pieces.ts";
import { printed } from "../../../src/workshop/jigs/print-rules.ts";
import { asSolid, box, inBoth, meshed, piecesIn } from "./look.ts";

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const key: Key = { y: 2, root: 8, end: 12, reach: 9, top: null };
const bar = box([0, -12, 0], [100, 16, 6]);

function halves(own: Key, jig: Solid = bar): [Solid, Solid] {
  const cut = { number: 1, of: 2 };
  const [first, second] = [
    pieceOf(jig, { ...cut, from: null, to: 40 }, own),
    pieceOf(jig, { ...cut, from: 40, to: null, number: 2 }, own),
  ];
  return [asSolid(meshed(kernel, first)), asSolid(meshed(kernel, second))];
}

/** The second half moved along. */
function moved(solid: Solid, x: number, z = 0): Solid {
  const frame = {
    ...{ u: { x: 1, y: 0, z: 0 }, v: { x: 0, y: 1, z: 0 }, w: { x: 0, y: 0, z: 1 } },
    origin: { x, y: 0, z },
  };
  return { kind: "place", solid, frame };
}

describe.each([
  { ...key, name: "right through" },
  { ...key, top: 4, name: "under a part of its height" },
])("two pieces keyed $name", (own) => {
  it("meet at the cut, go together from above, and can't be drawn apart by more than the clearance", () => {
    const [first, second] = halves(own);
    for (const half of [first, second]) expect(piecesIn(meshed(kernel, half))).toBe(1);
    const found = clash(kernel, first, second);
    if (found.kind !== "ok") throw new Error(JSON.stringify(found));
    expect(found.interference).toBeLessThan(1e-2);
    expect(found.contact).toBeGreaterThan(28 * 6 - 12 * 6 - 10);
    // Up and away it goes; along, its flanks catch after the clearance has been taken up.
    expect(inBoth(kernel, first, moved(second, 0, 3))).toBeLessThan(1e-2);
    expect(inBoth(kernel, first, moved(second, 0.9))).toBeLessThan(1e-2);
    expect(inBoth(kernel, first, moved(second, 2))).toBeGreaterThan(1);
  });

  it("have the slide clearance between key and socket", () => {
    const [first, second] = halves(own);
    // The key alone, off the faces that meet.
    const tongue: Solid = { kind: "intersect", solids: [first, box([40.5, -20, -1], [60, 20, 20])] };
    const found = clash(kernel, tongue, second);
    expect(found.kind === "ok" && found.gap).toBeCloseTo(printed.clearance.slide, 2);
  });

  it("add up to the whole but for the clearance", () => {
    const volumes = halves(own).map((half) => meshMeasures(meshed(kernel, half)).volume);
    const lost = 100 * 28 * 6 - volumes[0]! - volumes[1]!;
    const high = own.top ?? 6;
    expect(lost).toBeGreaterThan(0.2 * 30 * high * 0.9);
    expect(lost).toBeLessThan(0.25 * 32 * high + 0.25 * 120);
  });
});

describe("where a jig is cut apart", () => {
  const lengths = (pieces: ReturnType<typeof piecesOf>, from: number, to: number, reach: number) =>
    pieces!.map((piece) => (piece.to === null ? to : piece.to + reach) - (piece.from ?? from));

  it("is nowhere while it fits", () => {
    expect(piecesOf({ from: 5, to: 215 }, 210, 9)).toEqual([{ from: null, to: null, number: 1, of: 1 }]);
  });

  it.each([211, 300, 419, 420, 650, 1200])("holds every piece of %d with its key within 210", (length) => {
    const pieces = piecesOf({ from: 0, to: length }, 210, 9)!;
    expect(pieces.at(-1)!.number).toBe(pieces.length);
    expect(Math.max(...lengths(pieces, 0, length, 9))).toBeLessThanOrEqual(210);
    expect(pieces.slice(1).every(({ from }, i) => from === pieces[i]!.to)).toBe(true);
  });

  it("avoids the stretches that may not be cut, and makes more pieces where they want it", () => {
    const uncut = [{ from: 130, to: 230 }];
    const pieces = piecesOf({ from: 0, to: 300 }, 210, 9, uncut)!;
    for (const { to } of pieces) expect(to === null || to <= 130 || to >= 230).toBe(true);
    const tight = piecesOf({ from: 0, to: 300 }, 210, 9, [{ from: 100, to: 205 }])!;
    expect(Math.max(...lengths(tight, 0, 300, 9))).toBeLessThanOrEqual(210);
    for (const { to } of tight) expect(to === null || to <= 100 || to >= 205).toBe(true);
  });

  it("is told where it can't be: a bed shorter than keys, a jig that may be cut nowhere", () => {
    expect(piecesOf({ from: 0, to: 300 }, 17, 9)).toBeNull();
    expect(piecesOf({ from: 0, to: 300 }, 210, 9, [{ from: 0, to: 300 }])).toBeNull();
  });
});
