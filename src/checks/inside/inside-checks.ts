import { allInsides } from "../../order/inside-names.ts";
import type { Check } from "../check.ts";
import { cutterFeed, cutterLarge } from "../guided/cutter.ts";
import { feedClimb } from "../guided/feed-climb.ts";
import { fixtureStock } from "../guided/fixture-stock.ts";
import { clampSwept, handNear, metal } from "../guided/kept.ts";
import { laserMaterial } from "../guided/laser-material.ts";
import { missingRules } from "../guided/missing.ts";
import { printedGuide } from "../guided/printed-guide.ts";
import { rimSpeedRule, speedMark } from "../guided/speed.ts";
import { virtualCutRule } from "../guided/virtual-cut.ts";
import { baseRests } from "./base-rests.ts";
import { insideBearing } from "./bearing.ts";
import { insideRounded, insideShort } from "./cutter.ts";
import { depthAPass } from "./depth-a-pass.ts";
import { everyOpening, type InsideRule, insideCheck } from "./inside-check.ts";
import { openingEdge, plungeRoom } from "./opening-edge.ts";
import { plateHeld } from "./plate-held.ts";
import { web } from "./web.ts";

/** Whether hands are far enough from the cutter; handholds have to lie on the plate. */
const plateHands = everyOpening({
  name: handNear.name,
  of: ({ cut, kept, setUp, layout }, spec) => {
    const edge = layout === null ? null : ({ kind: "ok", template: layout.plate } as const);
    return handNear.of({ cut, kept, setUp, edge }, spec);
  },
});

/** What every inside template is tried by. Grain is no choice here: a closed edge has as much against it whichever way round it is cut. */
export const insideRules: readonly InsideRule[] = [
  ...missingRules,
  ...[cutterFeed, speedMark, rimSpeedRule, fixtureStock, baseRests, web],
  ...[plateHeld, plateHands, printedGuide, laserMaterial],
  ...[insideShort, insideRounded, insideBearing, depthAPass, openingEdge, plungeRoom].map(everyOpening),
  ...[cutterLarge, virtualCutRule, feedClimb, clampSwept, metal].map(everyOpening),
];

/** Every rule for every inside template. */
export const insideChecks: readonly Check[] = allInsides.flatMap((inside) =>
  insideRules.map((rule) => insideCheck(rule, inside)),
);
