import { dimensionOf, type Spec } from "../order/spec.ts";
import type { Model } from "../workshop/model.ts";
import type { Check } from "./check.ts";

/**
 * Whether the wood between two neighbouring slots of the nut, or notches of the bridge, and outside the outer ones, is thick
 * enough not to break out.
 */
export function wallBetween(part: "nut" | "bridge"): Check {
  return {
    id: `wall.${part}`,
    of: (model) => {
      const { spec } = model;
      const [inner, outer] = [Math.min(...between(model, part)), Math.min(...outside(model, part))];
      const [found, limit] = [Math.min(inner, outer), dimensionOf(spec, `${part}.wall`)];
      const move = inner <= outer ? (part === "nut" ? "nut.gap" : "bridge.spread") : `${part}.margin`;
      const where = inner <= outer ? "between two strings" : "outside an outer string";
      // A wall that is just the limit, but for the last digit of a sum, is enough.
      const thin = found < limit - 1e-6;
      return {
        ...{ status: thin ? "refuse" : "pass", stake: "spoilage", subject: part, found, limit, unit: "mm" },
        why: thin
          ? `the wood ${where} breaks out: raise ${move}`
          : "enough wood between any two strings and outside them",
        source: `design ${spec.design}, ${part}.wall (general trade knowledge: default, confirm)`,
        holds: [part],
      };
    },
  };
}

function slotsOf({ instrument }: Model, part: "nut" | "bridge") {
  return part === "nut" ? instrument.nut.slots : instrument.crownFace.notches;
}

function between(model: Model, part: "nut" | "bridge"): number[] {
  const slots = slotsOf(model, part);
  return slots.slice(1).map(({ y, width }, i) => slots[i]!.y - y - (slots[i]!.width + width) / 2);
}

/** What is left from an outer slot to the end of the crown, less the corner that is rounded off there. */
function outside(model: Model, part: "nut" | "bridge"): number[] {
  const slots = slotsOf(model, part);
  const corner = part === "nut" ? 0 : crownCorner(model.spec);
  const margin = dimensionOf(model.spec, `${part}.margin`) - corner;
  return [slots[0]!, slots.at(-1)!].map(({ width }) => margin - width / 2);
}

function crownCorner({ bridgeFace }: Spec): number {
  return Math.max(
    0,
    ...bridgeFace.edges.filter(({ follows }) => follows === "bridge.crown").map(({ corner }) => corner),
  );
}
