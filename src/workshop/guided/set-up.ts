import type { Cutter, Guide, Router, Shaper } from "../../order/shop.ts";
import type { Pass } from "./passes.ts";
import type { SpeedBound } from "./spindle-speed.ts";

/** A machine that a guide and a template are used on. */
export type GuidedMachine = Shaper | Router;

/**
 * What one cut along a guided edge is made with: machine, cutter, final guide and, where there is one, a first guide 2.0 larger; the
 * offset of the guided edge from the finished one, mm; the passes; the speed set, what bounds it (rpm) and the rim's speed, m/s.
 */
export type SetUp = {
  readonly machine: GuidedMachine;
  readonly cutter: Cutter;
  readonly guide: Guide;
  readonly first: Guide | null;
  readonly offset: number;
  /** None of a recess, which is cut in passes by depth. */
  readonly passes: readonly Pass[];
  readonly speed: { readonly rpm: number; readonly bound: SpeedBound; readonly rim: number };
};

/** What the cut asks for, mm: the machine's kind, the thickness there, the allowance that the saw left, and how tightly its edges bend. */
export type CutWanted = {
  readonly kind: "shaper" | "router";
  readonly thickness: number;
  readonly allowance: number;
  /** The least radius of the hollow bends of its cut edges, 0 at a corner; null where nothing is hollow. */
  readonly hollow: number | null;
  /** The same of its outward bends. */
  readonly outward: number | null;
  /** What the order names for it, by the shop's own names; null where the program chooses. */
  readonly named: {
    readonly machine: string | null;
    readonly cutter: string | null;
    readonly guide: string | null;
  };
  /** What is cut is a recess so deep, through a template so thick, mm, and no edge right through: it is taken out in passes by depth. */
  readonly recess?: { readonly depth: number; readonly template: number };
};

/** By how much a cutter's cutting length is more than the thickness that it cuts, mm (G: default, confirm). */
export const overLength = 3;

/** By how much a bit clears the bush that it runs in, on diameter, mm (S). */
export const bushClearance = 1.6;

/** How thick a template's edge is at least, mm: twelve plies or MDF (S). */
export const templateThickness = 12;

/** How thick the base of a shaper's fixture is at least, mm, layers glued on one another counted together (S). */
export const baseThickness = 25;
