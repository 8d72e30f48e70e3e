import { describe, expect, it } from "vitest";
import { flatsOf } from "../../src/drawing/flat/flats.ts";
import { fewerSheets } from "../../src/drawing/tiles/fewer-sheets.ts";
import { fullSize } from "../../src/drawing/tiles/full-size.ts";
import type { Page } from "../../src/drawing/tiles/tile-page.ts";
import { fullSizePackFile } from "../../src/pack/full-size-pack-file.ts";
import { memoryStore } from "../../src/step/store.ts";
import { modelOf } from "../../src/workshop/model.ts";
import { specOf } from "../samples.ts";
import { pageFaults } from "./page-clear.ts";

const spec = specOf("thrift", 5);
const store = memoryStore();
const model = modelOf(spec, store);
const title = {
  order: "T-1",
  part: "part",
  fingerprint: "0123456789ab",
  hand: "right",
  seenFrom: "front",
} as const;

function drawing(name: string) {
  const file = flatsOf(spec).find((flat) => flat.name === name)!;
  const answer = file.of(model, store);
  const fromNumbers = file.fromNumbers?.(spec);
  const given = {
    flat: answer.value,
    remarks: file.remarks?.(model, store),
    title: { ...title, name, overruled: [] },
    paper: spec.paper,
    fromNumbers,
  };
  return { file, answer, given };
}

const isSheet = ({ groups }: Page) => groups[0]!.name !== "remarks";
const wordsOf = ({ groups }: Page) =>
  groups.flatMap(({ marks }) => marks.texts.map(({ text }) => text)).join(" ");
const { paper: papers } = spec.shop;
const plate = drawing("body-back-inside");

describe("a drawing that takes many sheets of its paper", () => {
  const fewer = fewerSheets(plate.given, papers)!;

  it("names the paper of the shop that takes fewest, with as many sheets as it then takes", () => {
    const sheets = (id: string) => {
      const paper = papers.find((each) => each.id === id)!;
      return fullSize({ ...plate.given, paper }).pages.filter(isSheet).length;
    };
    const counts = papers.map(({ id }) => sheets(id));
    expect(counts[0]).toBeGreaterThan(8);
    expect(fewer.sheets).toBe(Math.min(...counts));
    expect(sheets(fewer.paper)).toBe(fewer.sheets);
    expect(fewer.paper).toBe("roll-610");
  });

  it("says so at the foot of each of its sheets, over nothing else", () => {
    const { pages, plan } = fullSize({ ...plate.given, fewer });
    const words = `${fewer.sheets === 1 ? "ONE SHEET" : `${fewer.sheets} SHEETS`} ON ROLL-610`;
    const own = pages.filter(isSheet);
    for (const page of own) {
      expect(wordsOf(page)).toContain(words);
      expect(pageFaults(page, plan!.inside)).toEqual([]);
    }
    expect(wordsOf(fullSize(plate.given).pages[0]!)).not.toContain("FEWER JOINS");
  });

  it("says so where the pack lists it", async () => {
    const { file, answer, given } = plate;
    const made = (await fullSizePackFile({ file, answer }, model, store, given.title, undefined))[0]!;
    const sheets = fewer.sheets === 1 ? "one sheet" : `${fewer.sheets} sheets`;
    expect(made.what).toMatch(
      new RegExp(`^full size on \\d+ sheets of A4 \\(${sheets} with paper: roll-610 in the order\\): `),
    );
    const without = { ...spec, shop: { ...spec.shop, paper: papers.slice(0, 1) } };
    const plain = (
      await fullSizePackFile({ file, answer }, { ...model, spec: without }, store, given.title, undefined)
    )[0]!;
    expect(plain.what).toMatch(/^full size on \d+ sheets of A4: /);
    expect(plain.fingerprint).not.toBe(made.fingerprint);
  });
});

describe("no other paper is named", () => {
  it.each([
    ["of a drawing of few sheets", drawing("nut").given, papers],
    ["on the roll itself", { ...plate.given, paper: papers.find(({ id }) => id === "roll-610")! }, papers],
    ["where the shop has no other", plate.given, papers.slice(0, 1)],
    [
      "where the other takes more than half as many",
      plate.given,
      [papers[0]!, { ...papers[0]!, id: "A4-wide", width: 215 }],
    ],
    ["of a drawing without lines", { ...plate.given, flat: { shapes: [], notes: [] } }, papers],
  ])("%s", (_, given, shops) => {
    expect(fewerSheets(given, shops)).toBeNull();
  });
});
