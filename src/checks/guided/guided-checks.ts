import { allFixtures } from "../../order/fixture-names.ts";
import type { Check } from "../check.ts";
import { collarUnder } from "./collar-under.ts";
import { cutterFeed, cutterLarge, cutterShort, guideLarge } from "./cutter.ts";
import { exitUnsupported } from "./exit-unsupported.ts";
import { feedClimb } from "./feed-climb.ts";
import { type FixtureRule, fixtureCheck } from "./fixture-check.ts";
import { fixtureStock, grainAgainst } from "./fixture-stock.ts";
import { guideBearing } from "./guide-bearing.ts";
import { holdNone } from "./hold-none.ts";
import { clampSwept, handNear, metal } from "./kept.ts";
import { laserMaterial } from "./laser-material.ts";
import { missingRules } from "./missing.ts";
import { printedGuide } from "./printed-guide.ts";
import { removal } from "./removal.ts";
import { runInMissing } from "./run-in.ts";
import { rimSpeedRule, speedMark } from "./speed.ts";
import { startCorner } from "./start-corner.ts";
import { tip } from "./tip.ts";
import { trapped } from "./trapped.ts";
import { edgeNone, virtualCutRule } from "./virtual-cut.ts";
import { workSmall } from "./work-small.ts";

/** What every fixture with a guided edge is tried by. */
export const fixtureRules: readonly FixtureRule[] = [
  ...missingRules,
  ...[cutterShort, cutterLarge, cutterFeed, guideLarge, guideBearing, speedMark, rimSpeedRule, removal],
  ...[edgeNone, virtualCutRule, feedClimb, runInMissing, clampSwept, metal, handNear, holdNone],
  ...[fixtureStock, grainAgainst],
  ...[trapped, tip, startCorner, exitUnsupported, workSmall, collarUnder, printedGuide, laserMaterial],
];

/** Every rule for every fixture. */
export const guidedChecks: readonly Check[] = allFixtures.flatMap(({ file, applies }) =>
  fixtureRules.map((rule) => fixtureCheck(rule, file, applies)),
);
