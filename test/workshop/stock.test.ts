import { describe, expect, it } from "vitest";
import { memoryStore } from "../../src/step/store.ts";
import { type StockInput, stockFor } from "../../src/workshop/stock/stock-for.ts";

type Board = StockInput["boards"][number];

const board = (id: string, wood: string, width: number, thickness: number, length = 2400): Board => {
  return { id, wood, width, thickness, length };
};
const blank = { length: 600, width: 50, thickness: 62 };
const of = (boards: readonly Board[], given: Partial<StockInput> = {}) =>
  memoryStore().answer(stockFor, { blank, plies: 1, woods: ["maple", "walnut"], boards, ...given }).value;

describe("the board for a blank", () => {
  it("holds it flat, or turned a quarter where it isn't thick enough", () => {
    expect(of([board("a", "maple", 100, 64)])).toMatchObject({
      ...{ kind: "ok", way: { board: "a", lies: "flat", plies: 1, ply: 50 } },
    });
    expect(of([board("a", "maple", 100, 52)])).toMatchObject({ kind: "ok", way: { lies: "turned" } });
    expect(of([board("a", "maple", 62, 50)])).toMatchObject({ kind: "ok", way: { lies: "turned" } });
  });

  it("never has its grain across: a board too short is too short, however wide", () => {
    expect(of([board("a", "maple", 900, 64, 500)])).toMatchObject({
      ...{ kind: "too-small", nearest: { missing: { length: 100, width: 0, thickness: 0 } } },
    });
  });

  it("is of the first wood that will do, then of the fewest plies, then with the least waste, then the first name", () => {
    const boards = [
      board("w", "walnut", 100, 64),
      board("m-thick", "maple", 100, 70),
      board("m-b", "maple", 100, 64),
      board("m-a", "maple", 100, 64),
      board("m-thin", "maple", 100, 27),
    ];
    const chosen = (left: readonly Board[]) => {
      const stock = of(left, { plies: 3 });
      return stock.kind === "ok" ? [stock.way.board, stock.way.plies] : stock.kind;
    };
    expect(chosen(boards)).toEqual(["m-a", 1]);
    expect(chosen(boards.filter(({ id }) => id !== "m-a"))).toEqual(["m-b", 1]);
    expect(chosen(boards.filter(({ id }) => !/m-[ab]/.test(id)))).toEqual(["m-thick", 1]);
    expect(chosen([boards[0]!, boards[4]!])).toEqual(["m-thin", 2]);
    expect(chosen([boards[0]!])).toEqual(["w", 1]);
  });

  it("is glued from plies that a face is planed off, as many as one board gives", () => {
    const two = { plies: 2 };
    expect(of([board("a", "maple", 70, 26)], two)).toMatchObject({ kind: "ok", way: { plies: 2, ply: 25 } });
    expect(of([board("a", "maple", 70, 25.9)], two)).toMatchObject({
      ...{ kind: "too-small", nearest: { missing: { thickness: expect.closeTo(0.1, 9) } } },
    });
    // Two lengths of 600 and what the saw takes between them, or two widths of 62.
    expect(of([board("a", "maple", 70, 26, 1204)], two)).toMatchObject({ kind: "too-small" });
    expect(of([board("a", "maple", 70, 26, 1205)], two)).toMatchObject({ kind: "ok" });
    expect(of([board("a", "maple", 129, 26, 600)], two)).toMatchObject({ kind: "ok" });
  });

  it("is missing where the shop has none of the woods", () => {
    expect(of([board("a", "ebony", 100, 64)])).toEqual({ kind: "no-wood" });
    expect(of([])).toEqual({ kind: "no-wood" });
  });
});
