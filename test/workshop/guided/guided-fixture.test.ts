import { describe, expect, it } from "vitest";
import { findings } from "../../../src/checks/checks.ts";
import { guidedChecks } from "../../../src/checks/guided/guided-checks.ts";
import { fixtureFlats } from "../../../src/drawing/flat/fixture-flats.ts";
import { extentsOf } from "../../../src/geometry/measure.ts";
import { mirrored } from "../../../src/geometry/mirror.ts";
import type { Path } from "../../../src/geometry/path.ts";
import type { Spec } from "../../../src/order/spec.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { cutRuns } from "../../../src/workshop/guided/cut-runs.ts";
import type { Fixture } from "../../../src/workshop/guided/fixture.ts";
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

describe("the fixtures of neck and body", () => {
  const flats = (one: Spec) => {
    const model = modelOf(one, store);
    const files = fixtureFlats.filter(({ applies }) => applies!(one));
    return new Map(files.map((file) => [file.name, file.of(model, store)]));
  };

  it("lie the same for a left hand, with the edges' names and their order turned round", () => {
    const [right, left] = (["right", "left"] as const).map((hand) => {
      const model = modelOf(specOf("sedge", 5, "", { hand }), store);
      return model.fixtures().find(({ file }) => file === "neck-shaper")!;
    });
    if (right!.edge?.kind !== "ok" || left!.edge?.kind !== "ok") throw new Error("no edge");
    for (const [k, { x, y }] of left!.edge.edge.points.entries())
      expect(Math.hypot(x - right!.edge.edge.points[k]!.x, y - right!.edge.edge.points[k]!.y)).toBeLessThan(
        2e-6,
      );
    expect(left!.feed!.tool.every(({ way }) => way.x < 0)).toBe(true);
    expect(right!.said[0]).toMatch(/front up, bass edge .* back up, treble edge/);
    expect(left!.said[0]).toMatch(/front up, treble edge .* back up, bass edge/);
  });

  it("lay the other edge at the cutter on a spindle that turns the other way, so that the cut still runs to the nut", () => {
    const machines = spec.shop.machines.map((one) =>
      "rotation" in one ? { ...one, rotation: "cw" as const } : one,
    );
    const [usual, other] = [spec, { ...spec, shop: { ...spec.shop, machines } }].map((one) =>
      fixtureOf(one, "neck-shaper"),
    );
    const side = ({ run }: Fixture) => Math.sign(run.path.points[3]!.y);
    for (const { feed, grain } of [usual!, other!]) {
      expect(feed!.tool.every(({ way }) => way.x < 0)).toBe(true);
      expect(grain!.with).toBeGreaterThan(grain!.against);
    }
    expect([side(usual!), side(other!)]).toEqual([-1, 1]);
    expect(usual!.said[0]).toMatch(/front up, bass edge/);
    expect(other!.said[0]).toMatch(/front up, treble edge/);
  });

  it("change with a collar's diameter where they use it, and nowhere else", () => {
    // Both of a pair, worn alike, so that they stay a pair.
    const pair = ["collar-60", "collar-62"];
    const worn = spec.shop.guides.map((one) =>
      pair.includes(one.id) ? { ...one, diameter: one.diameter - 0.2 } : one,
    );
    const [before, after] = [flats(spec), flats({ ...spec, shop: { ...spec.shop, guides: worn } })];
    for (const [name, { key }] of after)
      expect(key === before.get(name)!.key, name).toBe(name !== "neck-shaper");
    const neck = fixtureOf({ ...spec, shop: { ...spec.shop, guides: worn } }, "neck-shaper");
    expect(neck.setUp!.offset).toBeCloseTo(0.1, 9);
    expect(neck.cut?.kind === "ok" && neck.cut.deviation).toBeLessThan(1e-4);
  });

  it("are as many as a body has edges that are cut, and keep off an end that isn't", () => {
    const thrift = specOf("thrift", 5);
    const withCut = (cut: readonly ("head" | "bass" | "treble")[]) => ({
      ...thrift,
      body: { ...thrift.body!, cut },
    });
    const names = (one: Spec) => [...flats(one).keys()].filter((name) => name.startsWith("body-"));
    expect(names(withCut(["head", "bass", "treble"]))).toEqual(["body-bass-router", "body-treble-router"]);
    expect(names(withCut(["treble"]))).toEqual(["body-treble-router"]);
    const whole = fixtureOf(thrift, "body-treble-router");
    const rimOnly = fixtureOf(withCut(["treble"]), "body-treble-router");
    expect(whole.said[0]).toMatch(/two set-ups: this one the treble half, from the head end's middle/);
    expect(rimOnly.said[0]).toMatch(/this side alone: the treble half, from the head end's corner/);
    expect(rimOnly.run.path.points.length).toBe(whole.run.path.points.length - 1);
    for (const { cut } of [whole, rimOnly]) {
      if (cut?.kind !== "ok") throw new Error(cut?.kind);
      expect(cut.deviation).toBeLessThan(0.01);
      expect(cut.joint).toBeLessThan(1e-6);
    }
  });

  it("hold a body by nothing where its core's room is too shallow for a screw, and that is refused", () => {
    const thrift = specOf("thrift", 5);
    const { value, ...depth } = thrift.values["core.depth"]!;
    const shallow = {
      ...thrift,
      values: { ...thrift.values, "core.depth": { ...depth, value: value - 11 } },
    };
    const fixture = fixtureOf(shallow, "body-bass-router");
    expect(fixture.holding!.holes.filter(({ what }) => what === "screw")).toEqual([]);
    const finding = findings(modelOf(shallow, store), guidedChecks).find(
      ({ id }) => id === "hold.none.body-bass-router",
    );
    expect(finding).toMatchObject({ status: "refuse", found: 0, stake: "injury" });
  });
});

/** A fixture of a spec by its file. */
function fixtureOf(one: Spec, name: string) {
  return modelOf(one, store)
    .fixtures()
    .find(({ file }) => file === name)!;
}

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
