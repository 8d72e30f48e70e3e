import { describe, expect, it } from "vitest";
import type { Sheet } from "../../../src/drawing/sheet/sheet.ts";
import { extentsOf, pathLength } from "../../../src/geometry/measure.ts";
import { dimensionsOf } from "../../../src/report/dimensions.ts";
import { bandsawCautions } from "../../../src/workshop/cautions/bandsaw.ts";
import { sawnBlankCautions } from "../../../src/workshop/cautions/sawn-blank.ts";
import { cellBeside, pathsOf, thinArrows, wordsOf } from "./read-pages.ts";
import { handedSamples, type SampleSetUps, sampleSetUps } from "./sample-set-ups.ts";

/** What a cut at the bandsaw must say, mm and degrees: worked out from the report's numbers, not from the set-up. */
type SawFacts = {
  readonly tilt: number;
  readonly thickness: number;
  /** How high the work stands at the blade at least. */
  readonly least: number;
  readonly cautions: readonly { readonly text: string }[];
};

type Sawn = SampleSetUps["sheets"][number];

function factsOf({ model }: SampleSetUps, { step }: Sawn): SawFacts {
  const value = (id: string) =>
    dimensionsOf(model.spec)
      .find((one) => one.id === id)!
      .of(model);
  const joint = step.setUp.kind === "saw" && step.setUp.cut === "joint";
  const tilt = joint ? value(`${step.part.replace("-", ".")}.table`) : 0;
  const thickness = step.thickness!;
  const own = step.part === "neck" ? [] : sawnBlankCautions.always;
  return {
    ...{ tilt, thickness, least: thickness / Math.cos((tilt * Math.PI) / 180) },
    cautions: [...own, ...(tilt === 0 ? [] : [sawnBlankCautions.tilted]), ...bandsawCautions],
  };
}

function sawFaults(pages: readonly Sheet[], facts: SawFacts): string[] {
  const faults: string[] = [];
  const table = cellBeside(pages, "TABLE") ?? "";
  const wanted = facts.tilt === 0 ? "0 DEGREES" : `TILTED ${facts.tilt.toFixed(2)} DEGREES`;
  if (!table.startsWith(wanted)) faults.push(`table ${table}`);
  const words = wordsOf(pages);
  const number = (pattern: RegExp) => Number.parseFloat(pattern.exec(words)?.[1] ?? "");
  const [guide, work] = [number(/([\d.]+) OVER THE TABLE AT MOST/), number(/([\d.]+) HIGH AT THE BLADE/)];
  if (!(work >= facts.least - 0.006)) faults.push(`work ${work} high`);
  if (facts.tilt === 0 && Math.abs(work - facts.thickness) > 0.006) faults.push(`work ${work} high, flat`);
  // The upper guide stands within 13 mm of the work (S).
  if (!(Math.abs(guide - work - 13) < 0.011)) faults.push(`guide at ${guide} over work of ${work}`);
  for (const { text } of facts.cautions) if (!words.includes(text)) faults.push(`without: ${text}`);
  return [...faults, ...entryFaults(pages[0]!)];
}

/** Every line of the cut is led into from outside the blank, and ends inside its border. */
function entryFaults(page: Sheet): string[] {
  // The sign of a caution has a short stroke of the same weight.
  const lines = pathsOf(page, "station").filter((path) => pathLength(path) > 5);
  const blank = pathsOf(page, "edge").find(({ closed, points }) => closed && points.length === 4);
  if (blank === undefined || lines.length === 0) return ["no blank or no saw line"];
  const { minX, maxX, minY, maxY } = extentsOf([blank])!;
  const inside = ({ x, y }: { x: number; y: number }) =>
    x > minX + 1e-6 && x < maxX - 1e-6 && y > minY + 1e-6 && y < maxY - 1e-6;
  const arrows = thinArrows(page);
  if (arrows.length !== lines.length) return [`${arrows.length} arrows for ${lines.length} lines`];
  return arrows.flatMap(({ from, to }) => {
    if (inside(from) || inside(to)) return ["an arrow begins or ends in the wood"];
    const on = { x: to.x + (to.x - from.x) / 20, y: to.y + (to.y - from.y) / 20 };
    return inside(on) ? [] : ["an arrow leads past the wood"];
  });
}

describe("the sheets of cuts at the bandsaw", () => {
  it.each(handedSamples)(
    "say table, guide and cautions as the report has them: $name, other hand: $turned",
    (sample) => {
      const made = sampleSetUps(sample);
      const sawn = made.sheets.filter(({ step }) => step.setUp.kind === "saw");
      expect(sawn.length).toBeGreaterThanOrEqual(5);
      for (const sheet of sawn) {
        const faults = sawFaults(sheet.pages, factsOf(made, sheet));
        expect({ sheet: sheet.name, faults }).toEqual({ sheet: sheet.name, faults: [] });
      }
    },
  );

  const made = sampleSetUps(handedSamples.find(({ name }) => name === "SY-0417")!);
  const joint = made.sheets.find(({ name }) => name === "set-up-wing-treble-saw-joint")!;
  const facts = factsOf(made, joint);
  const reworded = (from: string | RegExp, to: string) =>
    joint.pages.map((page) => ({
      ...page,
      texts: page.texts.map((one) => ({ ...one, text: one.text.replace(from, to) })),
    }));

  it.each<[string, () => readonly Sheet[], RegExp]>([
    ["a square table where it is tilted", () => reworded(/^TILTED .* DEGREES,/, "0 DEGREES,"), /^table/],
    ["a guide too high", () => reworded(/^[\d.]+ OVER THE TABLE/, "99 OVER THE TABLE"), /^guide at 99/],
    ["a missing caution", () => reworded("TABLE TILTED:", "TABLE:"), /without: TABLE TILTED/],
    [
      "arrows end for end",
      () =>
        joint.pages.map((page) => ({
          ...page,
          lines: page.lines.filter(({ weight }) => weight !== "arrow"),
        })),
      /arrows for/,
    ],
  ])("are told when they are wrong: %s", (_, plant, fault) => {
    expect(sawFaults(joint.pages, facts)).toEqual([]);
    expect(sawFaults(plant(), facts).some((one) => fault.test(one))).toBe(true);
  });

  it.each([false, true])(
    "lie as the hand of the order has them, front up, head at the left; other hand: %s",
    (turned) => {
      const own = handedSamples.find((one) => one.name === "SY-0417" && one.turned === turned)!;
      const over = (name: string) => {
        const { pages } = sampleSetUps(own).sheets.find((sheet) => sheet.name === name)!;
        const middle = (weight: "station" | "outline") => {
          const path = pathsOf(pages[0]!, weight).sort((a, b) => pathLength(b) - pathLength(a))[0]!;
          const { minY, maxY } = extentsOf([path])!;
          return (minY + maxY) / 2;
        };
        return middle("station") - middle("outline");
      };
      // The core lies to the treble side of the bass wing, which is up for a right hand.
      const up = turned ? -1 : 1;
      expect(Math.sign(over("set-up-wing-bass-saw-joint"))).toBe(up);
      expect(Math.sign(over("set-up-wing-treble-saw-joint"))).toBe(-up);
    },
  );
});
