import { describe, expect, it } from "vitest";
import { extentsOf } from "../../../src/geometry/measure.ts";
import { mirrored } from "../../../src/geometry/mirror.ts";
import type { Path } from "../../../src/geometry/path.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { cutRuns } from "../../../src/workshop/guided/cut-runs.ts";
import { guidedFixture } from "../../../src/workshop/guided/guided-fixture.ts";
import type { GuidedWork } from "../../../src/workshop/guided/guided-work.ts";
import { longEdgeUses } from "../../../src/workshop/guided/half-run.ts";
import { sheetFor } from "../../../src/workshop/guided/sheet-for.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { specOf } from "../../samples.ts";

const store = memoryStore();
const spec = specOf("sedge", 5);
const board = () => {
  const { board: made } = modelOf(spec, store).instrument;
  if (made.kind !== "ok") throw new Error(made.kind);
  return made.path;
};

/** A board as plain work, whose second edge lies `off` from where the first one does; mm. */
function work(off: number, more: Partial<GuidedWork> = {}): GuidedWork {
  const path = board();
  const uses = (outline: Path) => longEdgeUses(outline, "low", [0, 266], null);
  const turned = mirrored(path, "y");
  const moved = { ...turned, points: turned.points.map((point) => ({ ...point, y: point.y + off })) };
  return {
    ...{ file: "plain", part: "plain", kind: "router", up: "front", outline: path, uses: uses(path) },
    ...{ thickness: 14, allowance: 2, joined: [], waste: [10, 15] },
    base: { from: { x: -10, y: 30 }, to: { x: 280, y: 30 } },
    again: cutRuns(moved, uses(moved))[0]!,
    held: {
      ...{ by: "pins", pins: [], screws: [], screw: { what: "screw", diameter: 5 }, clamps: true },
      ...{ wanted: 2, said: [], marks: [] },
    },
    ...more,
  };
}

const cutOf = (one: GuidedWork, within: Spec = spec) => {
  const { cut } = guidedFixture(one, within, store);
  if (cut?.kind !== "ok") throw new Error(cut?.kind);
  return cut;
};

describe("a fixture that is used twice", () => {
  it("is tried against both edges: one that lies 0.02 off is found", () => {
    expect(cutOf(work(0)).deviation).toBeLessThan(1e-5);
    expect(cutOf(work(0.02)).deviation).toBeCloseTo(0.02, 4);
    expect(cutOf(work(-0.02)).deviation).toBeCloseTo(0.02, 4);
    expect(cutOf(work(0.02, { again: null })).deviation).toBeLessThan(1e-5);
  });

  it("serves a neck whose plan is its own mirror image to the last digit", () => {
    for (const [design, count] of [
      ["sedge", 6],
      ["mallow", 4],
      ["bulrush", 5],
    ] as const) {
      const { plan } = modelOf(specOf(design, count), store).instrument.neckProfile;
      const turned = mirrored(plan, "y").points;
      for (const { x, y } of plan.points)
        expect(Math.min(...turned.map((at) => Math.hypot(at.x - x, at.y - y)))).toBeLessThan(1e-9);
      const { minY, maxY } = extentsOf([plan])!;
      expect(minY + maxY).toBeCloseTo(0, 9);
    }
  });
});

it("presses what it has clamps for, behind the line that its base begins at, and holds the work with the template on the wood's side", () => {
  const fixture = guidedFixture(work(0), spec, store);
  expect(fixture.holding!.clamps.length).toBeGreaterThan(0);
  for (const { base, pad } of fixture.holding!.clamps) {
    expect(pad.y).toBeLessThan(30);
    for (const { y } of base.points) expect(y).toBeGreaterThan(30);
  }
  expect(
    guidedFixture(work(0), { ...spec, shop: { ...spec.shop, clamps: [] } }, store).holding!.clamps,
  ).toEqual([]);
});

it("stands a cello board's clamps between the bolts at its ends, evenly", () => {
  const cello = modelOf(specOf("bulrush", 5), store)
    .fixtures()
    .find(({ file }) => file === "fingerboard-router")!;
  const bolts = cello.holding!.holes.filter(({ what }) => what === "bolt").map(({ at }) => at.x);
  const pads = cello.holding!.clamps.map(({ pad }) => pad.x);
  expect(bolts).toHaveLength(2);
  expect(pads).toHaveLength(2);
  const all = [...bolts, ...pads].sort((a, b) => a - b);
  for (const [i, x] of all.slice(1).entries()) expect(x - all[i]!).toBeLessThan(300);
});

it("leads the edge on past the wood that goes on at either end, each for itself", () => {
  const { edge } = guidedFixture(work(0), spec, store);
  if (edge?.kind !== "ok") throw new Error(edge?.kind);
  const { minX, maxX } = extentsOf([edge.edge])!;
  expect(minX).toBeCloseTo(-10 - 50, 0);
  expect(maxX).toBeGreaterThan(280 + 49);
});

describe("the sheet that a base comes out of", () => {
  const template = board();
  const sheet = (id: string, thickness: number) => ({
    ...{ id, material: "birch-plywood", length: 1500, width: 1500, thickness },
  });
  it.each([
    [[sheet("b12", 12), sheet("b18", 18)], 25, "b18", 36, 2],
    [[sheet("b12", 12), sheet("b30", 30)], 25, "b30", 30, undefined],
    [[sheet("b12", 12), sheet("b18", 18)], 0, "b12", 12, undefined],
    [[sheet("b9", 9), sheet("b13", 13)], 25, "b13", 26, 2],
  ] as const)(
    "is glued up of as few layers as make a shaper's 25: %#",
    (sheets, base, id, thickness, layers) => {
      const found = sheetFor.work({ template, least: 12, sheets, ...(base > 0 ? { base } : {}) });
      expect(found).toMatchObject({ kind: "ok", sheet: id, thickness });
      expect(found.kind === "ok" && found.layers).toBe(layers);
    },
  );

  it("is none where each layer is thinner than a template's edge", () => {
    expect(sheetFor.work({ template, least: 12, sheets: [sheet("b9", 9)], base: 25 })).toEqual({
      ...{ kind: "too-thin", least: 12 },
    });
  });
});
