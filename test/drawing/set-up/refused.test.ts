import { describe, expect, it } from "vitest";
import { findings, refuses } from "../../../src/checks/checks.ts";
import { setUpSheets } from "../../../src/drawing/sheet/set-up/set-up-sheets.ts";
import { travellerOf } from "../../../src/drawing/sheet/traveller/traveller-of.ts";
import { travellerSheet } from "../../../src/drawing/sheet/traveller/traveller-sheet.ts";
import { memoryStore } from "../../../src/step/store.ts";
import { modelOf } from "../../../src/workshop/model.ts";
import { specOf } from "../../samples.ts";
import { wordsOf } from "./read-pages.ts";

const store = memoryStore();

function madeOf(more: string) {
  const model = modelOf(specOf("sedge", 5, more), store);
  const found = findings(model);
  const { sheets, refused } = setUpSheets(model, found);
  const held = found
    .filter(refuses)
    .flatMap(({ id, why, holds }) => holds.map((file) => ({ file, check: id, why })));
  const given = { fingerprint: "0123456789ab", found, held, sheets, refused, notLookedAt: [] };
  return {
    model,
    found,
    sheets,
    refused,
    words: wordsOf(store.answer(travellerSheet, travellerOf(model, given)).value),
  };
}

describe("a refused set-up", () => {
  const { found, sheets, refused, words } = madeOf(
    "fixtures:\n  wing-treble-router: { machine: hand-router, cutter: straight-6, guide: bush-16 }\n",
  );

  it("has no sheet, and every other one has", () => {
    expect(found.some((one) => refuses(one) && one.holds.includes("wing-treble-router"))).toBe(true);
    expect(refused.map(({ step }) => step.setUp.file)).toEqual(["wing-treble-router"]);
    expect(sheets.map(({ name }) => name)).not.toContain("set-up-wing-treble-router");
    expect(sheets.map(({ name }) => name)).toContain("set-up-wing-bass-router");
  });

  it("is named in the traveller with the check and its reason, and where it comes in the work", () => {
    const { check, why } = refused[0]!;
    const named = words.slice(words.indexOf("SET-UPS THAT ARE REFUSED"), words.indexOf("FILES HELD BACK"));
    expect(named).toContain(check.toUpperCase());
    expect(named).toContain(why.toUpperCase().slice(0, 30));
    expect(words).toContain("REFUSED, NO SHEET:");
    expect(words).not.toContain("NONE IS REFUSED");
  });

  it("leaves the traveller saying so where nothing is refused", () => {
    const other = madeOf("");
    expect(other.refused).toEqual([]);
    expect(other.words).toContain("NONE IS REFUSED");
    expect(other.words).not.toContain("REFUSED, NO SHEET");
  });
});

describe("a set-up that nothing can be drawn of", () => {
  it("is named among those without a sheet, though no check refuses it", () => {
    const model = modelOf(specOf("sedge", 5), store);
    const fixtures = model.fixtures().map((fixture) => {
      if (fixture.file !== "wing-bass-router") return fixture;
      const { file, part, up, thickness } = fixture;
      return { file, part, up, thickness, setUp: null, edge: null } as unknown as typeof fixture;
    });
    const { sheets, refused } = setUpSheets({ ...model, fixtures: () => fixtures }, []);
    expect(refused.map(({ step, check }) => [step.setUp.file, check])).toEqual([
      ["wing-bass-router", "nothing drawn"],
    ]);
    expect(sheets.map(({ step }) => step.setUp.file)).not.toContain("wing-bass-router");
  });
});

describe("an overruled refusal", () => {
  const reason = "two light passes by the eye, tried on scrap";
  const fixture =
    "fixtures:\n  wing-bass-router: { machine: table-router, cutter: straight-12, guide: pin-12 }\n";
  const overrule = `overrule:\n  - { check: removal.wing-bass-router, reason: "${reason}" }\n`;

  it("keeps its sheet, with the reason on it and on the traveller; without it there is no sheet", () => {
    const refusedNames = madeOf(fixture).refused.map(({ step }) => step.setUp.file);
    expect(refusedNames).toEqual(["wing-bass-router"]);
    const { sheets, refused, words } = madeOf(fixture + overrule);
    expect(refused).toEqual([]);
    const sheet = sheets.find(({ name }) => name === "set-up-wing-bass-router")!;
    const written = wordsOf(sheet.of(store).value);
    expect(written).toContain("OVERRULED BY A PERSON, WITH THE REASON");
    expect(written).toContain(reason.toUpperCase());
    expect(words).toContain(reason.toUpperCase());
    const others = sheets.filter(({ name }) => name !== "set-up-wing-bass-router");
    for (const other of others) expect(wordsOf(other.of(store).value)).not.toContain(reason.toUpperCase());
  });
});
