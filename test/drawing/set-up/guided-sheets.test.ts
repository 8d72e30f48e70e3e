import { describe, expect, it } from "vitest";
import type { Finding } from "../../../src/checks/check.ts";
import type { SetUpSheet } from "../../../src/drawing/sheet/set-up/set-up-sheets.ts";
import type { Sheet } from "../../../src/drawing/sheet/sheet.ts";
import { dimensionsOf } from "../../../src/report/dimensions.ts";
import { routerCautions } from "../../../src/workshop/cautions/router.ts";
import { shaperCautions } from "../../../src/workshop/cautions/shaper.ts";
import type { Model } from "../../../src/workshop/model.ts";
import { apart, thinArrows } from "./read-pages.ts";
import { handedSamples, sampleSetUps } from "./sample-set-ups.ts";
import { type GuidedFacts, sheetFaults } from "./sheet-faults.ts";

/** What the checks found of a set-up's file, by the check's name without it. */
function numberFrom(found: readonly Finding[], file: string) {
  return (name: string) => found.find(({ id }) => id === `${name}.${file}`)!.found;
}

function factsOf(model: Model, found: readonly Finding[], { step }: SetUpSheet): GuidedFacts {
  const { file } = step.setUp;
  const check = numberFrom(found, file);
  const { machine } = model.fixtures().find((fixture) => fixture.file === file)!.setUp!;
  const owned = model.spec.shop.machines.find(({ id }) => id === machine.id)!;
  if (owned.kind !== "shaper" && owned.kind !== "router") throw new Error(owned.kind);
  return {
    ...{ rpm: check("speed.mark"), rim: check("rim-speed"), firstPass: check("removal") },
    offset: dimensionsOf(model.spec)
      .find(({ id }) => id === `fixture.${file}.offset`)!
      .of(model),
    thickness: step.thickness!,
    hand: owned.moves === "tool" ? null : check("hand.near"),
    ...{ rotation: owned.rotation, moves: owned.moves },
    cautions: owned.kind === "shaper" ? shaperCautions("over") : routerCautions(owned.moves),
  };
}

describe("the set-ups of every sample", () => {
  it.each(handedSamples)(
    "have each its sheet with the checks' numbers: $name, other hand: $turned",
    (sample) => {
      const { model, found, sheets, refused } = sampleSetUps(sample);
      expect(refused).toEqual([]);
      const guided = sheets.filter(({ step }) => step.setUp.kind === "fixture");
      const at = guided.map(({ step }) => step.setUp.file);
      const fixtures = model.fixtures().map((fixture) => fixture.file);
      expect([...new Set(at)].sort()).toEqual(fixtures.sort());
      expect(at.filter((one) => one === "neck-shaper")).toHaveLength(2);
      for (const sheet of guided) {
        const faults = sheetFaults(sheet.pages, factsOf(model, found, sheet));
        expect({ sheet: sheet.name, faults }).toEqual({ sheet: sheet.name, faults: [] });
      }
    },
  );
});

describe("a set-up's sheet that is wrong", () => {
  const { model, found, sheets } = sampleSetUps(handedSamples.find(({ name }) => name === "SY-0417")!);
  const sheet = sheets.find(({ name }) => name === "set-up-wing-bass-router")!;
  const { pages } = sheet;
  const facts = factsOf(model, found, sheet);
  const reworded = (from: string, to: string) =>
    pages.map((page) => ({
      ...page,
      texts: page.texts.map((one) => ({ ...one, text: one.text.replace(from, to) })),
    }));
  /** The first page with every thin arrow turned end for end, its head at what was its beginning. */
  const climbing = () => {
    const [first, ...rest] = pages;
    const arrows = thinArrows(first!);
    const lines = first!.lines.map((line) => {
      const { path } = line;
      const own = arrows.find(({ from, to }) =>
        line.weight === "arrow"
          ? apart(path.points[0]!, to) < 1e-6
          : line.weight === "edge" && path.points.length === 2 && apart(path.points[0]!, from) < 1e-6,
      );
      if (own === undefined) return line;
      if (line.weight !== "arrow") return { ...line, path: { ...path, points: [...path.points].reverse() } };
      const [dx, dy] = [own.from.x - own.to.x, own.from.y - own.to.y];
      return {
        ...line,
        path: { ...path, points: path.points.map((p) => ({ ...p, x: p.x + dx, y: p.y + dy })) },
      };
    });
    return [{ ...first!, lines }, ...rest];
  };

  it("is right before anything is planted", () => {
    expect(sheetFaults(pages, facts)).toEqual([]);
    expect(facts.rpm).toBeGreaterThan(0);
  });

  it.each<[string, () => readonly Sheet[], RegExp]>([
    ["a speed", () => reworded("16000 RPM", "18000 RPM"), /SPINDLE SPEED reads 18000/],
    ["a rim's speed", () => reworded("15.96 M/S", "14.96 M/S"), /RIM SPEED/],
    ["an offset", () => reworded("0.00:", "+1.00:"), /^D reads/],
    ["a handhold's distance", () => reworded("HANDHOLD, 3", "HANDHOLD, 2"), /handholds at 2/],
    ["a caution that is cut short", () => reworded("NEVER CLIMB", "DON'T CLIMB"), /without: NEVER CLIMB/],
    ["a lesser signal word", () => reworded("DANGER", "NOTICE"), /miscounted: DANGER/],
    [
      "no other page",
      () => pages.map((page, i) => (i === 0 ? page : { ...page, texts: [] })),
      /THICKNESS OF THE WORK THERE/,
    ],
    ["arrows that climb", climbing, /an arrow climbs/],
    [
      "no arrows",
      () => [{ ...pages[0]!, lines: pages[0]!.lines.filter(({ weight }) => weight !== "arrow") }],
      /arrows/,
    ],
    [
      "a cutter at the other end",
      () => [
        {
          ...pages[0]!,
          lines: pages[0]!.lines.map((line) =>
            line.weight === "cut"
              ? {
                  ...line,
                  path: { ...line.path, points: line.path.points.map((p) => ({ ...p, x: p.x - 400 })) },
                }
              : line,
          ),
        },
        ...pages.slice(1),
      ],
      /begins at the other end|pushes the other way/,
    ],
  ])("is told: %s", (_, plant, fault) => {
    expect(sheetFaults(plant(), facts).some((one) => fault.test(one))).toBe(true);
  });

  it("is told: a spindle that turns the other way, a tool that moves where the work is pushed", () => {
    const other = facts.rotation === "ccw" ? ("cw" as const) : ("ccw" as const);
    expect(sheetFaults(pages, { ...facts, rotation: other })).toContain("an arrow climbs");
    const moves = facts.moves === "work" ? ("tool" as const) : ("work" as const);
    expect(sheetFaults(pages, { ...facts, moves })).toContain("the broad arrow pushes the other way");
  });
});
