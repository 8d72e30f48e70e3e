import type { Wing } from "../../instrument/wing/wings.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { caulKey, caulPiece } from "./caul.ts";
import { type CaulPlaceInput, caul, caulPlace } from "./caul-place.ts";
import { handOnly, type Jig, jigOf } from "./jig.ts";
import type { Stretch } from "./pieces.ts";
import type { PrintRules } from "./print-rules.ts";
import { isTurned } from "./wing-jigs.ts";

const heat = "PLA softens at 55 to 65 C: glue cold";

/**
 * The cauls that wings are glued with: one for each, and one that sits on the wing glued first, that with the longer joint, while the other is glued. A wing whose rim stands out too
 * little has none.
 */
export function caulJigs(model: Model, rules: PrintRules): Jig[] {
  const { wings } = model.instrument;
  if (wings === null) return [];
  const [first, second]: readonly Side[] =
    wings.treble.joint.length > wings.bass.joint.length ? ["treble", "bass"] : ["bass", "treble"];
  const behind = caulPlace(placing(model, first!, second!));
  return [
    ...sides.flatMap((side) => {
      const clamps = side === first ? "all" : (behind?.along ?? "none");
      const against =
        side === first
          ? `clamped across the bare core, before the ${second} wing is on`
          : `clamped against the caul on the ${first} wing, glued before it`;
      return caulOf(model, rules, { name: `caul-${side}`, held: side, glued: side, clamps, against });
    }),
    ...caulOf(model, rules, {
      ...{ name: `caul-${first}-in-place`, held: first!, glued: second!, clamps: "all" },
      against: `on the ${first} wing in place, its clamp face parallel to the ${second} joint, while that is glued`,
    }),
  ];
}

function placing({ spec, instrument: { wings } }: Model, held: Side, glued: Side): CaulPlaceInput {
  const [own, other]: [Wing, Wing] = [wings![held], wings![glued]];
  const { place, over } = own.solidInput;
  const { length, deep } = other.joint;
  return {
    ...{ held: place, over, thickness: dimensionOf(spec, `wing.${held}.thickness`) },
    own: { length: own.joint.length, deep: own.joint.deep },
    ...{ pressing: other.solidInput.place, joint: { length, deep } },
  };
}

type Asked = {
  readonly name: string;
  readonly held: Side;
  readonly glued: Side;
  readonly clamps: Stretch | "all" | "none";
  readonly against: string;
};

function caulOf(model: Model, rules: PrintRules, { name, held, glued, clamps, against }: Asked): Jig[] {
  const { spec } = model;
  const input = placing(model, held, glued);
  const place = caulPlace(input);
  if (place === null || clamps === "none") return [];
  const { along, across, high } = place;
  const marked =
    clamps === "all" ? along : { from: Math.max(along.from, clamps.from), to: Math.min(along.to, clamps.to) };
  if (marked.to <= marked.from) return [];
  const lines = [spec.order, held === glued ? `CAUL ${held.toUpperCase()}` : `ON ${held.toUpperCase()}`];
  const room = high - caul.floor;
  return [
    jigOf(
      {
        ...{ name, part: `wing-${held}`, along, wide: across.to - across.from, high },
        ...{ key: caulKey(place) },
        what: `printed caul on the ${held} wing's rim, ${against}: clamps on the line in its face alone, which lies in the middle of the joint's depth; ${heat}; it holds for gluing, away from any machine, and ${handOnly}`,
      },
      rules,
      caulPiece,
      {
        ...{ ...input, clamps: marked, mirrored: isTurned(held, spec.hand) },
        lines: room >= 15 ? lines : [lines.join(" ")],
      },
    ),
  ];
}
