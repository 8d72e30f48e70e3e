import type { Problem } from "../order/problem.ts";
import { dimensionOf, type Spec, type SpecValue } from "../order/spec.ts";
import type { Contradiction, Look } from "./at-odds/at-odds.ts";
import { besideStringsAtOdds, bowAtOdds } from "./at-odds/beside-strings.ts";
import { boardAtOdds } from "./at-odds/board.ts";
import { bodyAtOdds } from "./at-odds/body.ts";
import { bridgeFastenedAtOdds, bridgeFootAtOdds, bridgeSunkAtOdds } from "./at-odds/bridge.ts";
import { dotsAtOdds } from "./at-odds/dots.ts";
import { fretsAtOdds } from "./at-odds/frets.ts";
import { headAtOdds, headStringsAtOdds } from "./at-odds/head.ts";
import { inlaysAtOdds } from "./at-odds/inlays.ts";
import { joineryAtOdds } from "./at-odds/joinery.ts";
import { neckAtOdds, neckOutlinesAtOdds } from "./at-odds/neck.ts";
import { holesAtOdds, outlinesAtOdds } from "./at-odds/outlines.ts";
import { pinsAtOdds, pinWallsAtOdds } from "./at-odds/pins.ts";
import { recessesAtOdds } from "./at-odds/recesses.ts";
import { restsAtOdds } from "./at-odds/rests.ts";
import { rodsAtOdds, rodWallsAtOdds } from "./at-odds/rods.ts";
import {
  crownsAtOdds,
  heightsAtOdds,
  lengthsAtOdds,
  spacingAtOdds,
  surfaceAtOdds,
} from "./at-odds/strings.ts";
import { tailpieceAtOdds } from "./at-odds/tailpiece.ts";
import { wingsAtOdds } from "./at-odds/wings.ts";
import { wiresAtOdds } from "./at-odds/wires.ts";
import type { Instrument } from "./instrument.ts";

/** In the order in which the instrument is worked out: what rests on numbers that are wrong already is not asked. */
const looks: readonly Look[] = [
  ...[
    lengthsAtOdds,
    wiresAtOdds,
    spacingAtOdds,
    surfaceAtOdds,
    crownsAtOdds,
    heightsAtOdds,
    fretsAtOdds,
    boardAtOdds,
    outlinesAtOdds,
    inlaysAtOdds,
    dotsAtOdds,
    holesAtOdds,
  ],
  ...[neckAtOdds, headAtOdds, headStringsAtOdds, neckOutlinesAtOdds, rodsAtOdds, pinsAtOdds],
  ...[bridgeFootAtOdds, bridgeFastenedAtOdds, bridgeSunkAtOdds, tailpieceAtOdds],
  ...[wingsAtOdds, rodWallsAtOdds, joineryAtOdds, pinWallsAtOdds, bodyAtOdds, recessesAtOdds],
  ...[besideStringsAtOdds, bowAtOdds, restsAtOdds],
];

/**
 * Problems of dimensions that are each in range and yet contradict each other, so that no such instrument can be made.
 *
 * Looked at in the order in which the instrument is worked out: what rests on numbers that are wrong already is not asked.
 * Each problem stands at the dimension that the order or an option changed, if any, or else at the first one named.
 */
export function contradictions(spec: Spec, made: Instrument): Problem[] {
  for (const look of looks) {
    const found = look((id) => dimensionOf(spec, id), made);
    if (found.length > 0) return found.map((contradiction) => problemOf(spec, contradiction));
  }
  return [];
}

function problemOf(spec: Spec, { ids, place, found, allowed, hint }: Contradiction): Problem {
  const values = ids.map((id) => spec.values[id]).filter((value): value is SpecValue => value !== undefined);
  // The number of frets is asked for in the order and is no dimension.
  if (ids.includes("frets") && spec.frets !== null)
    return { code: "contradiction", position: spec.frets.position, name: "frets", found, allowed, hint };
  const at = place === undefined ? undefined : spec.places[place];
  if (ids.length === 0 && place !== undefined && at !== undefined)
    return { code: "contradiction", position: at, name: place, found, allowed, hint };
  const changed = values.find(({ source }) => source === "order" || source === "command line");
  const { id, position } = changed ?? values[0]!;
  const inDesign = changed === undefined ? at : undefined;
  return { code: "contradiction", position: inDesign ?? position, name: id, found, allowed, hint };
}
