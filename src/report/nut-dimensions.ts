import type { Spec } from "../order/spec.ts";
import { angle, type Dimension, length } from "./dimension.ts";

/** What is worked out of the nut's slots and of its blank. */
export function nutDimensions({ strings }: Spec): Dimension[] {
  const slots = strings.flatMap(({ name }, i): Dimension[] => [
    angle("nut", `nut.${name}.fall`, `${name}: fall behind the nut, from the side, to z = 0`, (model) => {
      return model.instrument.nutFalls[i]!;
    }),
    length("nut", `nut.${name}.slot`, `${name}: width of its slot`, ({ instrument }) => {
      return instrument.nut.slots[i]!.width;
    }),
    length("nut", `nut.${name}.depth`, `${name}: depth of its slot under the blank's top`, (model) => {
      return model.instrument.nut.slots[i]!.depth;
    }),
  ]);
  return [
    ...slots,
    length("nut", "nut.blank.length", "Blank: length across the board", ({ instrument }) => {
      return instrument.nutStock.length;
    }),
    length("nut", "nut.blank.height", "Blank: height", ({ instrument }) => instrument.nutStock.width),
    length("nut", "nut.blank.thickness", "Blank: thickness toward the head", ({ instrument }) => {
      return instrument.nutStock.thickness;
    }),
  ];
}
