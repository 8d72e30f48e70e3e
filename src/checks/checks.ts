import type { Overrule } from "../order/spec.ts";
import type { Model } from "../workshop/model.ts";
import { blankStock, boardBlankStock, sawnBlankStocks } from "./blank-stock.ts";
import { boardsEnough } from "./boards-enough.ts";
import { bowAngle } from "./bow-angle.ts";
import { bowBoard, bowClear } from "./bow-clear.ts";
import { bridgeFriction } from "./bridge-friction.ts";
import { bridgeResultant } from "./bridge-resultant.ts";
import { bridgeShear } from "./bridge-shear.ts";
import { bridgeSunk } from "./bridge-sunk.ts";
import type { Check, Finding } from "./check.ts";
import { coreJoinery } from "./core-joinery.ts";
import { dustOfCarbon, dustOfWood } from "./dust.ts";
import { fretOpen, fretStopped } from "./fret-clear.ts";
import { guidedChecks } from "./guided/guided-checks.ts";
import { headWall } from "./head-wall.ts";
import { includedAngle } from "./included-angle.ts";
import { insideChecks } from "./inside/inside-checks.ts";
import { nutPitch } from "./nut-pitch.ts";
import { bendOverNut, splayOverNut } from "./over-nut.ts";
import { pinClear } from "./pin-clear.ts";
import { playableGap } from "./playable-gap.ts";
import { printedJigs } from "./printed-jigs.ts";
import { recessReach } from "./recess-reach.ts";
import { recessWall } from "./recess-wall.ts";
import { restChinClear, restChinGrip } from "./rest-chin.ts";
import { endpinWall, restWall } from "./rest-wall.ts";
import { rodWall } from "./rod-wall.ts";
import { sawLine } from "./saw-line.ts";
import { sawHeight, sawMissing, sawThroat } from "./saw-machine.ts";
import { sawTight } from "./saw-tight.ts";
import { sawnChecks } from "./sawn/sawn-checks.ts";
import { smallStock } from "./small-stock.ts";
import { stringBears } from "./string-bears.ts";
import { stringPastPost } from "./string-past-post.ts";
import { stringStrength } from "./string-strength.ts";
import { stringsClear } from "./strings-clear.ts";
import { tailpieceClear } from "./tailpiece-clear.ts";
import { tailpieceWall } from "./tailpiece-wall.ts";
import { tensionRange } from "./tension-range.ts";
import { tensionTotal } from "./tension-total.ts";
import { tunerClear } from "./tuner-clear.ts";
import { wallBetween } from "./wall-between.ts";
import { wingPin } from "./wing-pin.ts";

/** Every check that there is. */
export const checks: readonly Check[] = [
  playableGap("nut"),
  playableGap("bridge"),
  nutPitch,
  wallBetween("nut"),
  wallBetween("bridge"),
  stringBears("nut"),
  stringBears("bridge"),
  fretOpen,
  fretStopped,
  includedAngle,
  tailpieceWall,
  tailpieceClear,
  ...[bridgeResultant, bridgeFriction, bridgeShear, tensionRange, tensionTotal, stringStrength],
  ...[bowAngle, bowClear("bass"), bowClear("treble"), bowBoard("bass"), bowBoard("treble")],
  bendOverNut,
  splayOverNut,
  headWall,
  tunerClear,
  stringPastPost,
  rodWall,
  pinClear,
  bridgeSunk,
  coreJoinery,
  blankStock,
  boardBlankStock,
  sawMissing,
  sawHeight,
  sawThroat,
  sawTight,
  sawLine("plan"),
  sawLine("side"),
  wingPin,
  ...[recessWall, recessReach],
  stringsClear,
  printedJigs,
  ...[restChinClear, restChinGrip, restWall, endpinWall],
  ...guidedChecks,
  ...[...sawnBlankStocks, smallStock, boardsEnough, ...sawnChecks],
  ...[dustOfWood, dustOfCarbon],
  ...insideChecks,
];

/** What every check finds in a model, by id; a refusal that the order overrules carries the reason. */
export function findings(model: Model, all: readonly Check[] = checks): Finding[] {
  return all
    .filter(({ applies }) => applies?.(model.spec) ?? true)
    .map(({ id, of }): Finding => ({ id, ...of(model) }))
    .map((finding) => overruled(finding, model.spec.overrule))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** A finding with the reason of whoever overruled it, if it refuses and the order does. */
export function overruled(finding: Finding, overrules: readonly Overrule[]): Finding {
  const reason = overrules.find(({ check }) => check === finding.id)?.reason;
  return finding.status === "refuse" && reason !== undefined ? { ...finding, overruled: reason } : finding;
}

/** Whether a finding, as a check or a report has it, keeps its files from being written: it refuses and nobody overruled it. */
export function refuses({ status, overruled }: Pick<Finding, "status" | "overruled">): boolean {
  return status === "refuse" && overruled === undefined;
}
