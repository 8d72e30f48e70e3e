import { describe, expect, it } from "vitest";
import type { Shop } from "../../src/order/shop.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { forced } from "../forced.ts";
import { foundBy } from "../found-by.ts";
import { specOf } from "../samples.ts";

const found = (spec: Spec, id: string) => {
  const finding = foundBy(modelOf(spec, memoryStore()), id);
  if (finding === undefined) throw new Error(`no check ${id}`);
  return finding;
};
const five = specOf("sedge", 5);
const thrift = specOf("thrift", 5);
const wing = "wing-treble-saw";

const inShop = (spec: Spec, change: Partial<Shop>): Spec => ({ ...spec, shop: { ...spec.shop, ...change } });
const withBoards = (spec: Spec, keep: (board: Shop["stock"]["boards"][number]) => boolean): Spec =>
  inShop(spec, { stock: { ...spec.shop.stock, boards: spec.shop.stock.boards.filter(keep) } });

describe("the boards of all parts", () => {
  it.each<[string, Spec, string, string, RegExp]>([
    [
      "no board thick enough",
      withBoards(five, ({ wood, thickness }) => wood !== "yellow-poplar" || thickness < 20),
      `blank.stock.${wing}`,
      "refuse",
      /no board of yellow-poplar/,
    ],
    [
      "a wing thicker than its board",
      withBoards(forced(five, { "wing.treble.thickness": 39 }), () => true),
      `blank.stock.${wing}`,
      "refuse",
      /misses 1 mm of thickness/,
    ],
    [
      "no board for bridge and nut",
      withBoards(five, ({ wood }) => wood !== "african-ebony"),
      "blank.stock.small",
      "attend",
      /nut of african-ebony.*tailpiece/,
    ],
  ])("are missed where there is none: %s", (_, spec, id, status, why) => {
    expect(found(five, id).status, "as it was").toBe("pass");
    expect(found(spec, id)).toMatchObject({ status, why: expect.stringMatching(why) });
  });

  it("find a body wider than any board, and none joined from as many pieces as it may be", () => {
    const narrow = (width: number) =>
      inShop(thrift, {
        stock: {
          ...thrift.shop.stock,
          boards: thrift.shop.stock.boards.map((one) => ({ ...one, width: Math.min(one.width, width) })),
        },
      });
    expect(found(narrow(90), "blank.stock.body-saw")).toMatchObject({
      ...{ status: "pass", why: expect.stringContaining("joined edge to edge from 2 pieces") },
    });
    expect(found(narrow(40), "blank.stock.body-saw").status).toBe("refuse");
  });

  it("count boards of which one is not enough", () => {
    expect(found(five, "cut-list.boards").status).toBe("pass");
    const short = inShop(five, {
      stock: {
        ...five.shop.stock,
        boards: five.shop.stock.boards.map((one) =>
          one.id === "poplar-28" ? { ...one, length: 310, width: 100 } : one,
        ),
      },
    });
    expect(found(short, "cut-list.boards")).toMatchObject({
      status: "attend",
      found: 1,
      why: expect.stringContaining("poplar-28"),
    });
  });
});

describe("the dust of what is worked", () => {
  it("is told of every wood by its name, and of carbon where rods are cut, with the limit", () => {
    expect(found(five, "dust.wood")).toMatchObject({
      ...{ status: "attend", stake: "injury", found: 4, source: expect.stringContaining("NIOSH 1 mg/m3") },
      why: expect.stringMatching(/african-ebony, black-walnut, hard-maple, yellow-poplar.*1 mg\/m3/),
    });
    const cherry: Spec = { ...five, partWoods: { ...five.partWoods, wings: "black-cherry" } };
    expect(found(cherry, "dust.wood").why).toContain("black-cherry");
    expect(found(five, "dust.carbon")).toMatchObject({ status: "pass", found: 0 });
    expect(found(forced(five, { "rod.count": 2 }), "dust.carbon")).toMatchObject({
      ...{ status: "attend", stake: "injury", found: 2, why: expect.stringContaining("1 mg/m3") },
    });
  });
});
