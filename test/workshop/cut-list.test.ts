import { describe, expect, it } from "vitest";
import { extentsOf } from "../../src/geometry/measure.ts";
import type { Spec } from "../../src/order/spec.ts";
import { memoryStore } from "../../src/step/store.ts";
import { cutList } from "../../src/workshop/cut-list.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { bare, forced } from "../forced.ts";
import { everyCount, specOf } from "../samples.ts";

const blanksOf = (spec: Spec) => modelOf(spec, memoryStore()).blanks;

describe("the cut list", () => {
  it.each(everyCount)("of $design with $count strings has every part on a board that holds it", (at) => {
    const spec = specOf(at.design, at.count);
    const { boards, missing, leaves, yield: share } = blanksOf(spec).cutList;
    expect(missing).toEqual([]);
    const parts = new Set(boards.flatMap(({ pieces }) => pieces.map(({ part }) => part)));
    const sides = spec.wings === null ? ["body"] : ["wing-bass", "wing-treble"];
    for (const part of ["neck", "fingerboard", "bridge", "nut", "tailpiece", ...sides])
      expect(parts).toContain(part);
    for (const { id, cover } of spec.recesses) expect(parts.has(`cover-${id}`)).toBe(cover);
    expect(leaves).toHaveLength(spec.veneers.length);
    for (const { board, width, thickness, used, pieces, length } of boards) {
      expect(used, board).toBeLessThanOrEqual(length);
      for (const piece of pieces) {
        expect(piece.x + piece.length, piece.part).toBeLessThanOrEqual(used + 1e-6);
        expect(piece.y + piece.width, piece.part).toBeLessThanOrEqual(width + 1e-6);
        expect(piece.thickness, piece.part).toBeLessThanOrEqual(thickness + 1e-6);
      }
    }
    // Worked out anew, by board and in all.
    const area = ({ pieces }: (typeof boards)[number]) =>
      pieces.reduce((sum, { length: a, width: b }) => sum + a * b, 0);
    for (const board of boards) expect(board.yield).toBeCloseTo(area(board) / (board.used * board.width), 9);
    const used = boards.reduce((sum, one) => sum + one.used * one.width, 0);
    expect(share).toBeCloseTo(boards.reduce((sum, one) => sum + area(one), 0) / used, 9);
    expect(share).toBeGreaterThan(0.2);
    expect(share).toBeLessThan(1);
  });

  it("has a glued-up neck as its plies, and a body wider than any board joined edge to edge", () => {
    const cello = blanksOf(specOf("bulrush", 5)).cutList.boards;
    const plies = cello.flatMap(({ pieces }) => pieces).filter(({ part }) => part === "neck");
    expect(plies).toHaveLength(2);
    const spec = specOf("thrift", 5);
    const boards = spec.shop.stock.boards.filter(({ wood }) => wood !== "yellow-poplar");
    const narrow = { id: "narrow", wood: "yellow-poplar", length: 1000, width: 90, thickness: 28 };
    const stock = { ...spec.shop.stock, boards: [...boards, narrow] };
    const { sawn, cutList: list } = blanksOf({ ...spec, shop: { ...spec.shop, stock } });
    expect(sawn[0]!.stock).toMatchObject({ kind: "ok", way: { lies: "joined", plies: 2 } });
    const halves = list.boards.find(({ board }) => board === "narrow")!.pieces;
    // Both edges that are glued are planed by 1 first.
    expect(halves.map(({ width }) => width)).toEqual([
      sawn[0]!.blank.width / 2 + 1,
      sawn[0]!.blank.width / 2 + 1,
    ]);
  });

  it("counts a board again when one of its kind is not enough, and names what no board holds", () => {
    const stock = { kind: "ok", way: { lies: "flat", plies: 1, ply: 50, board: "b" } } as never;
    const blank = { length: 900, width: 50, thickness: 20 };
    const board = { id: "b", wood: "w", length: 1000, width: 60, thickness: 25 };
    const given = [
      { part: "one", blank, stock },
      { part: "two", blank, stock },
      { part: "three", blank, stock: { kind: "no-wood" } as const },
    ];
    const { boards, missing, yield: share } = cutList.work({ parts: given, leaves: [], boards: [board] });
    expect(boards.map(({ number, used }) => [number, used])).toEqual([
      [1, 900],
      [2, 900],
    ]);
    expect(missing).toEqual([{ part: "three", blank }]);
    expect(share).toBeCloseTo(50 / 60, 9);
    expect(cutList.work({ parts: [], leaves: [], boards: [board] }).yield).toBe(0);
  });
});

describe("the blanks of wings and bodies", () => {
  it.each(everyCount)("of $design with $count strings lie round their parts with room for the saw", (at) => {
    const spec = bare(specOf(at.design, at.count));
    const { instrument, blanks } = modelOf(spec, memoryStore());
    for (const { part, blank, place, planed } of blanks.sawn) {
      const outline =
        part === "body"
          ? instrument.body!.outline
          : instrument.wings![part === "wing-bass" ? "bass" : "treble"].outline;
      if (outline.kind !== "ok") throw new Error(outline.kind);
      const box = extentsOf([outline.path])!;
      const out = spec.values["saw.allowance"]!.value + 1.5;
      expect(box.minX - place.minX, part).toBeGreaterThan(out);
      expect(place.maxX - box.maxX, part).toBeGreaterThan(out);
      expect(box.minY - place.minY, part).toBeGreaterThan(out);
      expect(place.maxY - box.maxY, part).toBeGreaterThan(out);
      expect(place.maxX - place.minX).toBeCloseTo(blank.length, 9);
      expect(place.maxY - place.minY).toBeCloseTo(blank.width, 9);
      expect(blank.length).toBeGreaterThanOrEqual(305);
      expect(blank.length % 5).toBe(0);
      expect(blank.thickness - planed).toBeGreaterThanOrEqual(2);
    }
  });

  it("grow by what a wing grows", () => {
    const five = specOf("sedge", 5);
    const wing = (spec: Spec) => blanksOf(spec).sawn[1]!.blank;
    const wider = wing(specOf("sedge", 5, "set:\n  wing.treble.width: 63 mm\n"));
    expect(wider.width - wing(five).width).toBe(5);
    expect(wing(forced(five, { "wing.treble.thickness": 24 })).thickness).toBe(26);
  });
});
