import { extentsOf } from "../../geometry/measure.ts";
import { madeInlays } from "../../instrument/fingerboard/inlays.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import type { InsideName } from "../../order/inside-names.ts";
import type { Shop } from "../../order/shop.ts";
import type { Spec } from "../../order/spec.ts";
import { lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { chosenSetUp } from "../guided/choose.ts";
import { depthPasses, passDepth } from "../guided/depth-passes.ts";
import { pastCutter } from "../guided/past-cutter.ts";
import { reachedStretches } from "../guided/reached-stretches.ts";
import { type CutWanted, type SetUp, templateThickness } from "../guided/set-up.ts";
import { sheetFor } from "../guided/sheet-for.ts";
import { virtualCut } from "../virtual-cut/virtual-cut.ts";
import { guidedOpening } from "./guided-opening.ts";
import type { Inside, Opening } from "./inside.ts";
import { insideBends } from "./inside-bends.ts";
import { openingFeed } from "./opening-feed.ts";
import { openingsOf, outlineUnder, seenOpening, type ToRout } from "./openings-of.ts";
import { keptOnPlate } from "./plate-kept.ts";
import { plateLayout } from "./plate-layout.ts";
import { platesFor } from "./plates.ts";

/** The inside template of a face of a part, with what the order names for it and what the spec's shop owns. */
export function insideTemplate(name: InsideName, spec: Spec, made: Instrument, store: Store): Inside {
  const { file, face } = name;
  const { machines, cutters, guides, clamps, stock } = spec.shop;
  const all = openingsOf(name, made);
  const inside: Inside = lazy<Inside>({
    ...{ file: () => file, part: () => name.part, face: () => face },
    up: () => (fromBelow(inside.setUp) ? (face === "front" ? "back" : "front") : face),
    under: () =>
      seenOpening(outlineUnder(name, spec, made), (inside.up === "back") !== (spec.hand === "left")),
    packing: () =>
      name.part === "fingerboard"
        ? Math.max(...madeInlays(made).map(({ floor, thickness }) => floor + thickness))
        : null,
    chosen: () => {
      const named = spec.fixtures[file] ?? { machine: null, cutter: null, guide: null };
      const depth = Math.max(...all.map((one) => one.depth));
      const wanted: CutWanted = {
        ...{
          kind: "router",
          thickness: depth,
          allowance: 0,
          ...store.answer(
            insideBends,
            all.map(({ path }) => path),
          ).value,
        },
        ...{ named, recess: { depth, template: thinnest(stock) } },
      };
      return store.answer(chosenSetUp, { wanted, shop: { machines, cutters, guides } }).value;
    },
    setUp: () => (inside.chosen.kind === "none" ? null : inside.chosen.setUp),
    layout: () => {
      const edges = edgesOf(inside.openings);
      if (edges === null) return null;
      const setUp = inside.setUp!;
      const held = setUp.machine.moves === "work";
      const { minY, maxY } = extentsOf([inside.under])!;
      const work = { low: minY, high: maxY };
      return store.answer(plateLayout, { edges, work, past: pastEdge(setUp), held, clamps }).value;
    },
    kept: () => (inside.layout === null ? [] : keptOnPlate(inside.layout, pastCutter(inside.setUp!))),
    sheet: () => {
      if (inside.layout === null) return null;
      const least = leastThickness(inside.setUp!);
      return store.answer(sheetFor, { template: inside.layout.plate, least, sheets: stock.sheets }).value;
    },
    openings: () => all.map((one) => openingFor(one, inside, spec, store)),
    plates: () => {
      const edges = edgesOf(inside.openings);
      return edges === null ? null : store.answer(platesFor, edges).value;
    },
  });
  return inside;
}

function openingFor({ id, path, depth }: ToRout, inside: Inside, spec: Spec, store: Store): Opening {
  const opening: Opening = lazy<Opening>({
    ...{ id: () => id, depth: () => depth },
    recess: () => seenOpening(path, (inside.up === "back") !== (spec.hand === "left")),
    passes: () => (inside.setUp === null ? [] : depthPasses(depth, inside.setUp.cutter.diameter)),
    edge: () => {
      if (inside.setUp === null) return null;
      const { cutter, guide, first } = inside.setUp;
      const sizes = { cutter: cutter.diameter, guide: guide.diameter, first: first?.diameter ?? null };
      return store.answer(guidedOpening, { recess: opening.recess, ...sizes }).value;
    },
    feed: () =>
      opening.edge?.kind === "ok"
        ? openingFeed(opening.edge.edge, inside.setUp!.machine, inside.setUp!.guide.diameter / 2)
        : null,
    cut: () => {
      if (opening.edge?.kind !== "ok") return null;
      const { edge, run, places } = opening.edge;
      const { cutter, guide } = inside.setUp!;
      return store.answer(virtualCut, {
        ...{ edge, template: edge, guide: guide.diameter, cutter: cutter.diameter, joined: [] },
        cut: reachedStretches(run.path, places),
        kept: inside.kept.map(({ id: what, path: outline, margin }) => ({ id: what, path: outline, margin })),
      }).value;
    },
  });
  return opening;
}

/** The guided edges of all openings; nothing while one has none. */
function edgesOf(openings: readonly Opening[]) {
  const edges = openings.flatMap(({ edge }) => (edge?.kind === "ok" ? [edge.edge] : []));
  return edges.length === openings.length && edges.length > 0 ? edges : null;
}

/** Whether the bit comes from below, so that the face it cuts into lies down. */
function fromBelow(setUp: SetUp | null): boolean {
  return setUp !== null && setUp.machine.moves === "work";
}

/** How far a hand-held router's base reaches past the opening's edge while its guide touches that, mm; 0 on other machines. */
function pastEdge(setUp: SetUp): number {
  return Math.max(0, pastCutter(setUp) + setUp.cutter.diameter / 2 - setUp.guide.diameter / 2);
}

/** How thick the template is at least, mm: twelve, more than a bush stands out by 1, and enough for a bearing to ride on it from the first pass on. */
function leastThickness({ cutter, guide }: SetUp): number {
  if (guide.kind === "bush") return Math.max(templateThickness, guide.height + 1);
  if (guide.kind !== "bearing") return templateThickness;
  return Math.max(templateThickness, cutter.length + guide.height / 2 - passDepth(cutter.diameter));
}

/** The thinnest sheet that the shop has for a template, mm; what one is at least where it has none. */
function thinnest({ sheets }: Shop["stock"]): number {
  const thick = sheets
    .filter(({ material, thickness }) => thickness >= templateThickness && /plywood|mdf/.test(material))
    .map(({ thickness }) => thickness);
  return thick.length === 0 ? templateThickness : Math.min(...thick);
}
