import { describe, expect, it } from "vitest";
import type { Shop } from "../../src/order/shop.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { foundBy } from "../found-by.ts";
import { specOf } from "../samples.ts";

const foundIn = (model: Model, id: string) => foundBy(model, id)!;
const found = (spec: Spec, id: string) => foundIn(modelOf(spec, memoryStore()), id);

/** A spec with one value that its design would not allow. */
function forced(spec: Spec, id: string, value: number): Spec {
  return { ...spec, values: { ...spec.values, [id]: { ...spec.values[id]!, value } } };
}

/** A spec in a shop that differs. */
function inShop(spec: Spec, change: Partial<Shop>): Spec {
  return { ...spec, shop: { ...spec.shop, ...change } };
}

/** A spec whose shop's bandsaw differs. */
function withSaw(spec: Spec, change: { readonly height?: number; readonly throat?: number }): Spec {
  const machines = spec.shop.machines.map((one) => (one.kind === "bandsaw" ? { ...one, ...change } : one));
  return inShop(spec, { machines });
}

const five = specOf("sedge", 5);
const cello = specOf("bulrush", 5);
const { boards, sheets } = five.shop.stock;
const thin = inShop(five, { stock: { boards: boards.filter(({ thickness }) => thickness < 60), sheets } });
const elsewhere = inShop(five, {
  stock: { boards: boards.filter(({ wood }) => /ebony|poplar/.test(wood)), sheets },
});
const sawless = inShop(five, { machines: five.shop.machines.filter(({ kind }) => kind !== "bandsaw") });

describe("the checks of the sawing", () => {
  it.each<[string, Spec, string, string, RegExp]>([
    ["no board thick enough", thin, "blank.stock", "refuse", /neck\.plies.*neck\.allowance/],
    ["no board of the design's woods", elsewhere, "blank.stock", "refuse", /hard-maple or black-walnut/],
    [
      "a blank larger than any stock",
      forced(five, "core.end", 2600),
      "blank.stock",
      "refuse",
      /mm of length/,
    ],
    [
      "one ply for a deep blank",
      forced(cello, "neck.plies", 1),
      "blank.stock",
      "refuse",
      /maple-64.*thickness/,
    ],
    ["no bandsaw", sawless, "saw.missing", "refuse", /no bandsaw/],
    ["a saw too low", withSaw(five, { height: 59 }), "saw.height", "refuse", /doesn't go under/],
    ["a saw too shallow", withSaw(five, { throat: 50 }), "saw.throat", "attend", /column/],
    [
      "a blank without side",
      forced(five, "neck.allowance.side", 1),
      "saw.line.neck-saw-plan",
      "refuse",
      /raise neck\.allowance\.side/,
    ],
    [
      "a blank with little face",
      forced(five, "neck.allowance.face", 1.7),
      "saw.line.neck-saw-side",
      "attend",
      /raise neck\.allowance\.face/,
    ],
  ])("find a planted fault: %s", (_, spec, id, status, why) => {
    expect(found(spec.design === "bulrush" ? cello : five, id).status).toBe("pass");
    expect(found(spec, id)).toMatchObject({ status, why: expect.stringMatching(why) });
  });

  it("hold back the files that are sawn to while they refuse", () => {
    for (const [spec, id] of [
      [thin, "blank.stock"],
      [sawless, "saw.missing"],
      [withSaw(five, { height: 59 }), "saw.height"],
    ] as const) {
      expect(found(spec, id).holds).toEqual(["neck-saw-plan", "neck-saw-side"]);
    }
    expect(found(five, "saw.line.neck-saw-side").holds).toEqual(["neck-saw-side"]);
  });

  it("say how much is missing of a blank that nothing holds, in mm", () => {
    // 88 wide and 106 deep: on edge in one piece out of a board of 64 it misses 24 of thickness.
    expect(found(forced(cello, "neck.plies", 1), "blank.stock").found).toBeCloseTo(24, 6);
    expect(found(cello, "blank.stock").why).toContain("glued up from 2 plies");
  });

  it("find places tighter than the blade, and none on a blade that follows them", () => {
    const blades = [{ width: 3.2, kerf: 0.8 }];
    const narrow = inShop(five, {
      machines: five.shop.machines.map((one) => (one.kind === "bandsaw" ? { ...one, blades } : one)),
    });
    expect(found(narrow, "saw.tight.neck")).toMatchObject({ status: "pass", limit: 4.8 });
    expect(found(five, "saw.tight.neck")).toMatchObject({
      ...{ status: "attend", limit: 15.9, found: expect.closeTo(8.33, 1) },
      why: expect.stringMatching(/^4 places .*relief cuts/),
    });
  });

  it("find a side that is sawn 1 mm too deep, whether the line or what is kept is wrong", () => {
    const model = modelOf(five, memoryStore());
    const { cuts } = model.sawing;
    const { side } = cuts;
    if (side.kind !== "ok") throw new Error(side.kind);
    const into = <T extends { readonly y: number }>(points: readonly T[], by: number) =>
      points.map((point) => ({ ...point, y: point.y + by }));
    const back = side.lines.map((line) =>
      line.side === "low" ? { ...line, path: { ...line.path, points: into(line.path.points, 1) } } : line,
    );
    const kept = { ...side.kept, points: into(side.kept.points, 1) };
    for (const spoilt of [
      { ...side, lines: back },
      { ...side, kept },
    ]) {
      const faulty = { ...model, sawing: { ...model.sawing, cuts: { ...cuts, side: spoilt } } };
      expect(foundIn(faulty, "saw.line.neck-saw-side")).toMatchObject({
        ...{ status: "refuse", limit: 1.6 },
        found: expect.closeTo(1, 1),
      });
    }
    const none = {
      ...model,
      sawing: { ...model.sawing, cuts: { ...cuts, side: { kind: "no-line" as const } } },
    };
    expect(foundIn(none, "saw.line.neck-saw-side")).toMatchObject({ status: "refuse", found: 0 });
  });
});
