import type { Spec } from "../../src/order/spec.ts";
import { dimensionsOf } from "../../src/report/dimensions.ts";
import type { Model } from "../../src/workshop/model.ts";
import { designs, everyCount, frettedSpec, specOf } from "../samples.ts";

/** The hands that every design is drawn for. */
export const hands = ["right", "left"] as const;

/** Every design and count for both hands, and every count with frets. */
export const every: readonly { readonly id: string; readonly spec: Spec }[] = [
  ...everyCount.flatMap(({ design, count }) =>
    hands.map((hand) => ({ id: `${design}-${count}-${hand}`, spec: specOf(design, count, "", { hand }) })),
  ),
  ...designs.thrift.map((count) => ({ id: `fretted-${count}`, spec: frettedSpec(count) })),
];

/** A dimension as dimensions.json has it. */
export function numbersOf(model: Model): (id: string) => number {
  const all = new Map(dimensionsOf(model.spec).map(({ id, of }) => [id, of]));
  return (id) => {
    const of = all.get(id);
    if (of === undefined) throw new RangeError(`no dimension ${id}`);
    return of(model);
  };
}
