import { allInsides } from "../../order/inside-names.ts";
import type { Check } from "../check.ts";
import { cutterFeed, cutterLarge } from "../guided/cutter.ts";
import { feedClimb } from "../guided/feed-climb.ts";
import { fixtureStock } from "../guided/fixture-stock.ts";
import { clampSwept, handNear, holdNone, metal } from "../guided/kept.ts";
import { missingRules } from "../guided/missing.ts";
import { rimSpeedRule, speedMark } from "../guided/speed.ts";
import { virtualCutRule } from "../guided/virtual-cut.ts";
import { baseRests } from "./base-rests.ts";
import { insideBearing } from "./bearing.ts";
import { insideRounded, insideShort } from "./cutter.ts";
import { depthAPass } from "./depth-a-pass.ts";
import { everyOpening, type InsideRule, insideCheck } from "./inside-check.ts";
import { openingEdge, plungeRoom } from "./opening-edge.ts";
import { web } from "./web.ts";

/** Whether there are as many clamps on the plate as its length asks for. Found: how many there are. */
const plateHeld: InsideRule = {
  name: holdNone.name,
  of: ({ layout }, spec) => {
    const said = holdNone.of({ holding: layout }, spec);
    if (said.status !== "pass") return said;
    return { ...said, why: `${said.found} clamps press the plate on the work and on packings as high` };
  },
};

/** What every inside template is tried by. Grain is no choice here: a closed edge has as much against it whichever way round it is cut. */
export const insideRules: readonly InsideRule[] = [
  ...missingRules,
  ...[cutterFeed, speedMark, rimSpeedRule, fixtureStock, baseRests, web],
  plateHeld,
  ...[insideShort, insideRounded, insideBearing, depthAPass, openingEdge, plungeRoom].map(everyOpening),
  ...[cutterLarge, virtualCutRule, feedClimb, clampSwept, metal, handNear].map(everyOpening),
];

/** Every rule for every inside template. */
export const insideChecks: readonly Check[] = allInsides.flatMap((inside) =>
  insideRules.map((rule) => insideCheck(rule, inside)),
);
