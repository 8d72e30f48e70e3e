import { describe, expect, it } from "vitest";
import type { Sheet } from "../../../src/drawing/sheet/sheet.ts";
import { pathLength } from "../../../src/geometry/measure.ts";
import { nearestPlace } from "../../../src/geometry/path-measures/nearest-place.ts";
import { routerCautions } from "../../../src/workshop/cautions/router.ts";
import { openingsOf } from "../../../src/workshop/inside/openings-of.ts";
import { cellBeside, middleOf, pathsOf, thinArrows, wordsOf } from "./read-pages.ts";
import { handedSamples, type SampleSetUps, sampleSetUps } from "./sample-set-ups.ts";

type Routed = SampleSetUps["sheets"][number];

/** What checks, shop and instrument say of a set-up with an inside template: rpm, m/s, mm. */
type InsideFacts = {
  readonly rpm: number;
  readonly rim: number;
  readonly rotation: "ccw" | "cw";
  readonly cautions: readonly { readonly text: string }[];
  readonly openings: readonly { readonly id: string; readonly depth: number }[];
};

function factsOf({ model, found }: SampleSetUps, { step }: Routed): InsideFacts {
  const { file } = step.setUp;
  const check = (name: string) => found.find(({ id }) => id === `${name}.${file}`)!.found;
  const inside = model.insides().find((one) => one.file === file)!;
  const owned = model.spec.shop.machines.find(({ id }) => id === inside.setUp!.machine.id)!;
  if (owned.kind !== "router") throw new Error(owned.kind);
  return {
    ...{ rpm: check("speed.mark"), rim: check("rim-speed"), rotation: owned.rotation },
    cautions: routerCautions(owned.moves, "opening"),
    openings: openingsOf(inside, model.instrument),
  };
}

function insideFaults(pages: readonly Sheet[], facts: InsideFacts): string[] {
  const faults: string[] = [];
  const words = wordsOf(pages);
  if (!cellBeside(pages, "SPINDLE SPEED")?.startsWith(`${facts.rpm} RPM`)) faults.push("speed");
  if (cellBeside(pages, "RIM SPEED") !== `${Math.round(facts.rim * 100) / 100} M/S`)
    faults.push("rim's speed");
  for (const { text } of facts.cautions) if (!words.includes(text)) faults.push(`without: ${text}`);
  for (const { id, depth } of facts.openings) {
    const name = id.toUpperCase();
    // Cells may break a name: without spaces it is whole again. A plate's number has one digit.
    const row = new RegExp(`${name}\\d${depth.toFixed(2)}[\\d.,]*${depth.toFixed(2)}(?![\\d,])`);
    if (!row.test(words.replaceAll(" ", ""))) faults.push(`${id} not set to ${depth.toFixed(2)}`);
  }
  return [...faults, ...arrowFaults(pages[0]!, facts)];
}

/** Arrows in every opening against the rotation, and a place where the bit goes in. */
function arrowFaults(page: Sheet, { rotation, openings }: InsideFacts): string[] {
  const edges = pathsOf(page, "station").filter((path) => path.closed && pathLength(path) > 5);
  if (edges.length !== openings.length) return [`${edges.length} edges for ${openings.length} openings`];
  const plunges = pathsOf(page, "cut").flatMap((path) => middleOf(path) ?? []);
  if (plunges.length !== openings.length) return [`${plunges.length} places to plunge`];
  const turn = rotation === "ccw" ? 1 : -1;
  const beside = edges.map(() => 0);
  const climbing = thinArrows(page).flatMap(({ from, to }) => {
    const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const near = edges
      .map((edge, i) => ({ i, place: nearestPlace(edge, at) }))
      .flatMap(({ i, place }) => (place.kind === "ok" ? [{ i, ...place }] : []))
      .sort(
        (a, b) =>
          Math.hypot(a.point.x - at.x, a.point.y - at.y) - Math.hypot(b.point.x - at.x, b.point.y - at.y),
      );
    beside[near[0]!.i]! += 1;
    // An arrow of one opening may lie as near to another's edge: it must go right beside one of the two nearest.
    const fits = near.slice(0, 2).some(({ point }) => {
      const tooth = { x: point.x - at.x, y: point.y - at.y };
      return (0 - tooth.y * (to.x - from.x) + tooth.x * (to.y - from.y)) * turn > 0;
    });
    return fits ? [] : ["an arrow climbs"];
  });
  return [...climbing, ...(thinArrows(page).length < 2 * openings.length ? ["too few arrows"] : [])];
}

describe("the sheets of set-ups with inside templates", () => {
  it.each(handedSamples)("agree with checks and recesses: $name, other hand: $turned", (sample) => {
    const made = sampleSetUps(sample);
    const routed = made.sheets.filter(({ step }) => step.setUp.kind === "inside");
    expect(routed.map(({ step }) => step.setUp.file).sort()).toEqual(
      made.model
        .insides()
        .map(({ file }) => file)
        .sort(),
    );
    expect(routed.length).toBeGreaterThan(0);
    for (const sheet of routed) {
      const faults = insideFaults(sheet.pages, factsOf(made, sheet));
      expect({ sheet: sheet.name, faults }).toEqual({ sheet: sheet.name, faults: [] });
    }
  });

  const made = sampleSetUps(handedSamples.find(({ name }) => name === "SY-0417")!);
  const sheet = made.sheets.find(({ name }) => name === "set-up-inlays-inside")!;
  const facts = factsOf(made, sheet);
  const reworded = (from: string | RegExp, to: string) =>
    sheet.pages.map((page) => ({
      ...page,
      texts: page.texts.map((one) => ({ ...one, text: one.text.replace(from, to) })),
    }));

  it.each<[string, () => readonly string[], RegExp]>([
    ["a speed", () => insideFaults(reworded(/^\d+ RPM/, "23000 RPM"), facts), /^speed/],
    ["a depth", () => insideFaults(reworded(/^\d+\.\d\d$/, "9.99"), facts), /not set to/],
    [
      "a caution cut short",
      () => insideFaults(reworded("PLUNGE AT THE MARK", "PLUNGE"), facts),
      /without: PLUNGE/,
    ],
    [
      "a spindle that turns the other way",
      () => insideFaults(sheet.pages, { ...facts, rotation: facts.rotation === "cw" ? "ccw" : "cw" }),
      /climbs/,
    ],
    [
      "no place to plunge",
      () =>
        insideFaults(
          sheet.pages.map((page) => ({
            ...page,
            lines: page.lines.filter(({ weight }) => weight !== "cut"),
          })),
          facts,
        ),
      /places to plunge/,
    ],
  ])("are told when they are wrong: %s", (_, planted, fault) => {
    expect(insideFaults(sheet.pages, facts)).toEqual([]);
    expect(planted().some((one) => fault.test(one))).toBe(true);
  });
});
