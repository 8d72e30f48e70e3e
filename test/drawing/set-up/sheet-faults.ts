import type { Sheet } from "../../../src/drawing/sheet/sheet.ts";
import { nearestPlace } from "../../../src/geometry/path-measures/nearest-place.ts";
import {
  apart,
  broadArrows,
  cellBeside,
  type Drawn,
  middleOf,
  pathsOf,
  thinArrows,
  wordsOf,
} from "./read-pages.ts";

/** What the checks and the shop's file say of a set-up with a guided edge, mm, rpm and m/s. */
export type GuidedFacts = {
  readonly rpm: number;
  readonly rim: number;
  readonly offset: number;
  readonly thickness: number;
  /** The most that a pass takes off before the last, or the last where there is one pass alone. */
  readonly firstPass: number;
  /** The least distance of a handhold from the cutter; null where nobody holds the fixture. */
  readonly hand: number | null;
  readonly rotation: "ccw" | "cw";
  readonly moves: "work" | "tool";
  readonly cautions: readonly { readonly signal: string; readonly text: string }[];
};

const places = (value: number) => String(Math.round(value * 100) / 100);

/** What of a set-up's sheet disagrees with the facts, read back from what is drawn and written on it. */
export function sheetFaults(pages: readonly Sheet[], facts: GuidedFacts): string[] {
  return [...numberFaults(pages, facts), ...cautionFaults(pages, facts), ...arrowFaults(pages[0]!, facts)];
}

function numberFaults(pages: readonly Sheet[], facts: GuidedFacts): string[] {
  const faults: string[] = [];
  const is = (name: string, start: string) => {
    const found = cellBeside(pages, name);
    if (found?.startsWith(start) !== true) faults.push(`${name} reads ${found}, not ${start}`);
  };
  is("SPINDLE SPEED", `${facts.rpm} RPM`);
  is("RIM SPEED", `${places(facts.rim)} M/S`);
  is("D", `${facts.offset > 0 ? "+" : ""}${facts.offset.toFixed(2)}`);
  is("THICKNESS OF THE WORK THERE", places(facts.thickness));
  is("SPEED READ AT THE MACHINE", `${facts.rpm} RPM`);
  const words = wordsOf(pages);
  const takes = words.match(/\bLEAVES DONE 1 \S+ [\d.]+ \([\d-]+\) [+-]?[\d.]+ ([\d.]+) /)?.[1];
  if (takes !== places(facts.firstPass)) faults.push(`the first pass takes ${takes}, not ${facts.firstPass}`);
  const hands = [...words.matchAll(/HANDHOLD, ([\d.]+) FROM THE CUTTER/g)].map(([, far]) => Number(far));
  const near = hands.length === 0 ? null : Math.min(...hands);
  if (near !== null && facts.hand !== null ? Math.abs(near - facts.hand) > 0.006 : near !== facts.hand)
    faults.push(`handholds at ${near}, not ${facts.hand}`);
  return faults;
}

/** Every caution in full, and as many of its signal word as there are of that gravity. */
function cautionFaults(pages: readonly Sheet[], { cautions }: GuidedFacts): string[] {
  const words = wordsOf(pages);
  const own = pages.flatMap(({ texts }) => texts.map(({ text }) => text));
  const missing = cautions.filter(({ text }) => !words.includes(text)).map(({ text }) => `without: ${text}`);
  const miscounted = ["DANGER", "WARNING", "CAUTION", "NOTICE"].filter(
    (word) =>
      own.filter((text) => text === word).length !== cautions.filter(({ signal }) => signal === word).length,
  );
  const first = words.includes("LOCAL CODES, THE MACHINE'S MANUAL AND A COMPETENT PERSON COME FIRST");
  return [...missing, ...miscounted.map((word) => `miscounted: ${word}`), ...(first ? [] : ["no deference"])];
}

/** Arrows beside the guided edge against the rotation, the first at the cutter that is drawn, and the way to push. */
function arrowFaults(page: Sheet, { rotation, moves }: GuidedFacts): string[] {
  const faults: string[] = [];
  const edge = pathsOf(page, "station").sort((a, b) => b.points.length - a.points.length)[0];
  const cutter = pathsOf(page, "cut").flatMap((path) => middleOf(path) ?? [])[0];
  if (edge === undefined || cutter === undefined) return ["no guided edge or no cutter"];
  const arrows = thinArrows(page);
  if (arrows.length < 2) faults.push(`only ${arrows.length} arrows`);
  const turn = rotation === "ccw" ? 1 : -1;
  for (const { from, to } of arrows) {
    const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const nearest = nearestPlace(edge, at);
    if (nearest.kind !== "ok") return ["an arrow beside nothing"];
    const tooth = { x: nearest.point.x - at.x, y: nearest.point.y - at.y };
    // The tooth's own motion, a quarter turn from its arm.
    const along = (0 - tooth.y * (to.x - from.x) + tooth.x * (to.y - from.y)) * turn;
    if (along <= 0) faults.push("an arrow climbs");
  }
  const first = nearestArrow(arrows, cutter);
  const [push, more] = broadArrows(page);
  if (push === undefined || more !== undefined || first === undefined)
    return [...faults, "no one way to push"];
  const [a, b] = [wayOf(first), wayOf(push)];
  const same = (a.x * b.x + a.y * b.y) * (moves === "tool" ? 1 : -1);
  if (same < 0.9) faults.push("the broad arrow pushes the other way");
  // The cutter stands where the cut begins: the arrows lead away from it.
  const last = nearestArrow(arrows, cutter, -1)!;
  if (apart(first.from, cutter) >= apart(last.to, cutter)) faults.push("the cut begins at the other end");
  return faults;
}

function nearestArrow(arrows: readonly Drawn[], to: Drawn["from"], sign = 1): Drawn | undefined {
  return [...arrows].sort((a, b) => sign * (apart(a.from, to) - apart(b.from, to)))[0];
}

function wayOf({ from, to }: Drawn) {
  const long = apart(from, to);
  return { x: (to.x - from.x) / long, y: (to.y - from.y) / long };
}
