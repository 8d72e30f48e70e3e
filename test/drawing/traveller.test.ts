import { describe, expect, it } from "vitest";
import { findings } from "../../src/checks/checks.ts";
import { filedOf } from "../../src/drawing/sheet/bench/filed-of.ts";
import { inCapitals } from "../../src/drawing/sheet/bench/in-capitals.ts";
import { setUpSheets } from "../../src/drawing/sheet/set-up/set-up-sheets.ts";
import { travellerOf } from "../../src/drawing/sheet/traveller/traveller-of.ts";
import { travellerSheet } from "../../src/drawing/sheet/traveller/traveller-sheet.ts";
import type { TravellerWords } from "../../src/drawing/sheet/traveller/traveller-words.ts";
import { memoryStore } from "../../src/step/store.ts";
import { boughtOf } from "../../src/workshop/bought.ts";
import { type Model, modelOf } from "../../src/workshop/model.ts";
import { workSequence } from "../../src/workshop/sequence/sequence.ts";
import { frettedSpec, specOf } from "../samples.ts";
import { wordsOf } from "./set-up/read-pages.ts";

const fingerprint = "0123456789ab";

function travellerFor(model: Model): TravellerWords {
  const found = findings(model);
  const held = [{ file: "nut", check: "wall.nut", why: "wood breaks out" }];
  return travellerOf(model, { fingerprint, found, held, ...setUpSheets(model, found), notLookedAt: [] });
}

const cases = [
  { name: "sedge, revision B", model: modelOf(specOf("sedge", 5, "revision: B\n"), memoryStore()) },
  { name: "thrift with frets", model: modelOf(frettedSpec(7), memoryStore()) },
  { name: "bulrush", model: modelOf(specOf("bulrush", 4), memoryStore()) },
];

describe.each(cases)("the traveller of $name", ({ model }) => {
  const words = travellerFor(model);
  const pages = memoryStore().answer(travellerSheet, words).value;
  const written = wordsOf(pages);

  it("says whose it is, with every part, its wood and blank", () => {
    const { spec } = model;
    expect(words.head[0]).toEqual(["Order", spec.revision === null ? "T-1" : "T-1, revision B"]);
    for (const { name, wood } of model.masses.parts) {
      expect(words.parts.find(([part]) => part === name)?.[1], name).toBe(wood);
      expect(written).toContain(inCapitals(name));
    }
    const { length, width, thickness } = model.instrument.neckBlank;
    expect(words.parts[0]![2]).toBe(`${length} x ${width} x ${thickness}`);
  });

  it("has each piece of the cut list once, with its place on its board", () => {
    const { boards, leaves, missing } = model.blanks.cutList;
    const pieces = boards.flatMap((board) => board.pieces);
    expect(words.cuts).toHaveLength(pieces.length + leaves.length);
    expect(words.cuts.map(([, part]) => part)).toEqual([...pieces, ...leaves].map(({ part }) => part));
    expect(words.cutRemarks.length).toBe(boards.length + 1 + missing.length);
    for (const { wood } of boards) expect(written).toContain(inCapitals(wood));
  });

  it("lists every string, tuner and item of a recess that is bought, each with its count", () => {
    const { spec } = model;
    const bought = boughtOf(model);
    expect(words.bought).toHaveLength(bought.length);
    const count = (pattern: RegExp) =>
      bought.filter(({ what }) => pattern.test(what)).reduce((sum, one) => sum + one.count, 0);
    expect(count(/^string /)).toBe(spec.count);
    expect(count(/^(tuner|peg)/)).toBe(spec.count);
    expect(count(/^fret,/)).toBe(spec.frets?.count ?? 0);
    const items = spec.recesses.filter(({ holds }) => holds.kind === "item");
    for (const { id } of items) expect(count(new RegExp(`^${id}: `)), id).toBe(1);
    expect(count(/^screw$/)).toBe(
      model.instrument.covers.reduce((sum, { recess }) => sum + recess.cover!.screws.length, 0),
    );
  });

  it("has every step in its order, numbered, with what it needs from an earlier number and its sheet", () => {
    const steps = workSequence(model, filedOf(model));
    expect(words.steps.map(([number, at]) => [number, at])).toEqual(
      steps.map(({ at }, i) => [String(i + 1), at]),
    );
    for (const [i, row] of words.steps.entries()) {
      for (const [, number] of row[6]!.matchAll(/(?:^|; )(\d+) /g))
        expect(Number(number)).toBeLessThan(i + 1);
      if (steps[i]!.setUp !== null) expect(row[5]).toMatch(/^set-up-/);
      expect(row.slice(-2)).toEqual(["", ""]);
    }
    expect(written.indexOf("SEQUENCE OF WORK")).toBeGreaterThan(written.indexOf("BOUGHT:"));
  });

  it("names files held back, and attended checks by id", () => {
    expect(written).toContain("NUT: WALL.NUT: WOOD BREAKS OUT");
    for (const line of words.attended) expect(written).toContain(inCapitals(line.split(":")[0]!));
    expect(words.attended.length).toBeGreaterThan(0);
  });

  it("bears the order's fingerprint and the deference on each page", () => {
    for (const page of pages) {
      const own = wordsOf([page]);
      expect(own).toContain(`FINGERPRINT OF THE ORDER ${fingerprint}`);
      expect(own).toContain("LOCAL CODES, THE MACHINE'S MANUAL AND A COMPETENT PERSON COME FIRST");
    }
  });
});

describe("a traveller that lacks something", () => {
  it("shows it: a board that the shop doesn't have, on small paper", () => {
    const spec = specOf("sedge", 5);
    const small = spec.shop.paper.filter(({ id }) => id === "A4");
    const boards = spec.shop.stock.boards.filter(({ id }) => !id.startsWith("ebony"));
    const shop = { ...spec.shop, paper: small, stock: { ...spec.shop.stock, boards } };
    const words = travellerFor(modelOf({ ...spec, shop }, memoryStore()));
    const pages = memoryStore().answer(travellerSheet, words).value;
    expect(pages[0]!.paper).toEqual({ id: "A4", width: 297, height: 210 });
    expect(wordsOf(pages)).toContain("NO BOARD OF ITS WOOD");
    expect(words.cutRemarks.some((line) => line.startsWith("No board holds the blank of fingerboard"))).toBe(
      true,
    );
  });
});
