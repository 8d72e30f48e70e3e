import { madeBody } from "../../instrument/body/body.ts";
import type { Instrument } from "../../instrument/instrument.ts";
import { underVeneers } from "../../instrument/under-veneers.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Store } from "../../step/store.ts";
import { sawRoom } from "../bandsaw/saw-room.ts";
import { type PartBlank, partBlank } from "./part-blank.ts";

/** The parts beside neck and fingerboard that are sawn to their outline. */
export type SawnPart = "wing-bass" | "wing-treble" | "body";

/** The blanks of a spec's wings, or of its body in one piece, each in its part's own plane. Parts without an outline can't be asked for. */
export function sawnBlanks(
  spec: Spec,
  made: Instrument,
  store: Store,
): readonly { readonly part: SawnPart; readonly made: () => PartBlank }[] {
  const all: { part: SawnPart; made: () => PartBlank }[] = [];
  if (made.wings !== null)
    for (const side of sides)
      all.push({
        part: `wing-${side}`,
        made: () => store.answer(partBlank, wingInput(side, spec, made)).value,
      });
  if (made.body !== null)
    all.push({ part: "body", made: () => store.answer(partBlank, bodyInput(spec, made)).value });
  return all;
}

function wingInput(side: Side, spec: Spec, made: Instrument) {
  const { outline, place } = made.wings![side];
  if (outline.kind !== "ok") throw new RangeError(`the ${side} wing has no outline: ${outline.kind}`);
  const out = dimensionOf(spec, "saw.allowance") + sawRoom.beside;
  const thickness = underVeneers(spec, `wing-${side}`);
  const bevel = (place.cut.bevel * Math.PI) / 180;
  // The joint's back arris may stand out past the front one, and a tilted blade leaves more than it does square.
  const low = out / Math.cos(bevel) + Math.max(0, -thickness * Math.tan(bevel));
  return {
    ...{ outline: outline.path, thickness, planed: sawRoom.planed, least: sawRoom.least },
    margin: { head: out, tail: out, low, high: out },
  };
}

function bodyInput(spec: Spec, made: Instrument) {
  const { outline } = madeBody(made.body!);
  const out = dimensionOf(spec, "saw.allowance") + sawRoom.beside;
  // A head end that isn't cut is the blank's own.
  const head = spec.body!.cut.includes("head") ? out : 0;
  return {
    ...{ outline: outline.path, thickness: underVeneers(spec, "body") },
    ...{ planed: sawRoom.planed, least: sawRoom.least },
    margin: { head, tail: out, low: out, high: out },
  };
}
