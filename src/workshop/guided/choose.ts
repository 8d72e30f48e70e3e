import type { Cutter } from "../../order/shop.ts";
import { step } from "../../step/step.ts";
import { candidates, type GuidedShop, guidesFor, machinesOf } from "./candidates.ts";
import { type Fault, plain } from "./fault.ts";
import { lengthWanted } from "./into-recess.ts";
import { type CutWanted, type GuidedMachine, overLength, type SetUp } from "./set-up.ts";
import { setUpFaults } from "./set-up-faults.ts";
import { whyNot, whyThis } from "./why-chosen.ts";

/** A cut and the shop that it is made in. */
export type ChooseInput = { readonly wanted: CutWanted; readonly shop: GuidedShop };

/** Why something was taken, or why something else wasn't, in one sentence; by the shop's name for it. */
export type Reason = { readonly id: string; readonly why: string };

/**
 * What a cut is made with. `ok`: nothing is wrong with it. `refused`: it is the best that there is, and `faults` says what is wrong.
 * `none`: there is no machine, no cutter on it or no guide for it at all, or what the order names don't go together.
 */
export type Chosen =
  | {
      readonly kind: "ok" | "refused";
      readonly setUp: SetUp;
      readonly faults: readonly Fault[];
      readonly because: readonly Reason[];
      readonly others: readonly Reason[];
    }
  | { readonly kind: "none"; readonly faults: readonly [Fault] };

/** A machine, a cutter and guides for a cut, with the reasons; the order's own names go before any choice. */
export function choose({ wanted, shop }: ChooseInput): Chosen {
  const usable = usableCutters(shop, wanted.kind);
  const judged = candidates(shop, wanted)
    .map((setUp) => ({ setUp, faults: setUpFaults(setUp, wanted, usable) }))
    .sort(
      (a, b) =>
        a.faults.length - b.faults.length ||
        missBy(a.faults) - missBy(b.faults) ||
        compare(a.setUp, b.setUp, wanted),
    );
  const best = judged[0];
  if (best === undefined) return { kind: "none", faults: [missing(shop, wanted)] };
  const { setUp, faults } = best;
  return {
    ...{ kind: faults.length === 0 ? "ok" : "refused", setUp, faults },
    because: whyThis(setUp, wanted),
    others: whyNot(setUp, judged, wanted, shop),
  };
}

/** A machine, a cutter and guides for a cut. */
export const chosenSetUp = step("guided.set-up", 1, choose);

/** The cutters that a cut of a kind could be made with: fed by hand, on a machine of that kind, with a guide that rides there. */
function usableCutters(shop: GuidedShop, kind: CutWanted["kind"]): Cutter[] {
  return shop.cutters.filter(
    (cutter) =>
      cutter.feed === "manual" &&
      machinesOf(shop, kind).some(
        (machine) => cutter.fits.includes(machine.id) && guidesFor(shop, machine, cutter).length > 0,
      ),
  );
}

/**
 * Which of two as good comes first: a machine whose spindle stays in its place, or for a recess one that is lowered into it; a first guide beside
 * the final one, an edge offset least, the larger cutter, the first by name.
 */
function compare(a: SetUp, b: SetUp, { recess }: CutWanted): number {
  const name = ({ machine, cutter, guide }: SetUp) => `${machine.id} ${cutter.id} ${guide.id}`;
  return (
    (recess === undefined ? rank(a.machine) - rank(b.machine) : intoRank(a.machine) - intoRank(b.machine)) ||
    Number(a.first === null) - Number(b.first === null) ||
    Math.abs(a.offset) - Math.abs(b.offset) ||
    b.cutter.diameter - a.cutter.diameter ||
    (name(a) < name(b) ? -1 : name(a) > name(b) ? 1 : 0)
  );
}

/** By how much some faults miss, each as a share of its limit. */
function missBy(faults: readonly Fault[]): number {
  return faults.reduce((sum, { found, limit }) => sum + Math.abs(found - limit) / Math.max(limit, 1), 0);
}

function rank(machine: GuidedMachine): number {
  if (machine.kind === "shaper") return 0;
  return { table: 0, overhead: 1, hand: 2 }[machine.mount];
}

/** A machine that plunges comes before one whose work is lowered onto its bit. */
function intoRank(machine: GuidedMachine): number {
  if (machine.kind === "shaper") return 3;
  return { hand: 0, overhead: 1, table: 2 }[machine.mount];
}

function missing(shop: GuidedShop, wanted: CutWanted): Fault {
  const { kind, named } = wanted;
  const fault = (check: Fault["check"], why: string): Fault => ({
    ...{ check, found: 0, limit: 1, unit: "", why },
  });
  const machines = machinesOf(shop, kind).filter(({ id }) => (named.machine ?? id) === id);
  if (machines.length === 0) {
    const has = machinesOf(shop, kind).map(({ id }) => id);
    return fault(
      "machine.missing",
      named.machine === null
        ? `the shop has no ${kind}: add one to its machines`
        : `the order names ${named.machine}, which is no ${kind} of this shop: name ${has.join(" or ") || "another kind of cut"}`,
    );
  }
  const ids = machines.map(({ id }) => id).join(" or ");
  const fitting = machines.flatMap((machine) =>
    shop.cutters.filter(({ fits }) => fits.includes(machine.id)).map((cutter) => ({ machine, cutter })),
  );
  const cutters = fitting.filter(({ cutter: { id } }) => (named.cutter ?? id) === id);
  if (cutters.length === 0) {
    const has = [...new Set(fitting.map(({ cutter }) => cutter.id))];
    return fault(
      "cutter.missing",
      named.cutter === null
        ? `the shop has no cutter that fits ${ids}: add one that ${cutterFor(wanted)} and names it under fits`
        : `the order names ${named.cutter}, which doesn't fit ${ids}: name ${has.join(" or ") || "a cutter that does"}`,
    );
  }
  const on = [...new Set(cutters.map(({ cutter }) => cutter.id))].join(" or ");
  const guides = cutters.flatMap(({ machine, cutter }) => guidesFor(shop, machine, cutter));
  const has = [...new Set(guides.map(({ id }) => id))];
  const { diameter } = cutters[0]!.cutter;
  return fault(
    "guide.missing",
    named.guide === null
      ? `no collar, bearing, bush or pin fits ${on} or ${ids}: add one, such as a guide of ${diameter} mm for no offset`
      : `the order names ${named.guide}, which rides neither with ${on} nor on ${ids}: name ${has.join(" or ") || "a guide that does"}`,
  );
}

/** What a cutter for a cut has to do, in words, mm. */
function cutterFor({ thickness, hollow, recess }: CutWanted): string {
  const length = recess === undefined ? thickness + overLength : lengthWanted("bush", recess);
  const across = hollow === null || hollow === 0 ? "" : `, is ${plain(2 * hollow)} mm across or less`;
  return `cuts ${plain(length)} mm or more${across}`;
}
