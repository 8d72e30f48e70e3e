import type { TailpieceOutline } from "../instrument/tailpiece/outline.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import { type Dimension, length } from "./dimension.ts";

const part = "tailpiece";

type Made = Extract<TailpieceOutline, { readonly kind: "ok" }>;

/** What is worked out of the tailpiece and of the strings' ends there. */
export function tailpieceDimensions({ strings }: Spec): Dimension[] {
  const plate = (id: string, label: string, of: (plate: Made) => number) =>
    length(part, id, label, ({ instrument: { tailpiece } }) => {
      return tailpiece.kind === "ok" ? of(tailpiece) : Number.NaN;
    });
  return [
    ...strings.map(({ name }, i) => {
      const label = `${name}: from the bridge to its exit from the tailpiece, seen from the side`;
      return length("strings", `string.${name}.afterlength`, label, ({ instrument }) => {
        return instrument.exits.afterlengths[i]!;
      });
    }),
    plate(
      "tailpiece.exit",
      "Tailpiece's front on the centreline, along the core from its start",
      ({ front }) => front,
    ),
    plate(
      "tailpiece.end",
      "Tailpiece's end on the centreline, along the core from its start",
      ({ end }) => end,
    ),
    length(
      part,
      "tailpiece.gap",
      "Least gap between two neighbouring strings at their exits, along y",
      ({ spec, instrument }) => {
        const { across } = instrument.exits;
        const skins = spec.strings.map(({ diameter }, i) => ({ y: across[i]!, half: diameter / 2 }));
        return Math.min(...skins.slice(1).map(({ y, half }, i) => skins[i]!.y - skins[i]!.half - y - half));
      },
    ),
    length(
      part,
      "tailpiece.clearance",
      "Gap between the tailpiece and the core's front under it",
      (model) => {
        return dimensionOf(model.spec, "tailpiece.height") - dimensionOf(model.spec, "tailpiece.thickness");
      },
    ),
  ];
}
