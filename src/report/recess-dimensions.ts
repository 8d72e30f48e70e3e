import { thinnest } from "../instrument/wall.ts";
import type { Spec } from "../order/spec.ts";
import type { Model } from "../workshop/model.ts";
import { type Dimension, length } from "./dimension.ts";

/** What is worked out of recesses and wires' bores; nothing on an instrument without. */
export function recessDimensions({ recesses, bores }: Spec): Dimension[] {
  return [
    ...recesses.flatMap(({ id, in: part, holds }) => {
      const own = (name: string) => `recess.${id}.${name}`;
      return [
        length(part, own("depth"), `Depth of recess ${id} from the face that it is sunk from`, (model) => {
          return recessNamed(model, id).depth;
        }),
        length(part, own("wall"), `Least wood round recess ${id}`, (model) => leastOf(model, `recess.${id}`)),
        ...(holds.kind === "item" && holds.item.thread !== null
          ? [
              length(
                part,
                own("through"),
                `Wood that what leads out of recess ${id} goes through`,
                (model) => {
                  return model.instrument.threadHoles[id]!.through;
                },
              ),
            ]
          : []),
      ];
    }),
    ...bores.flatMap(({ id }) => [
      length("instrument", `bore.${id}.length`, `Wood that bore ${id} runs through`, ({ instrument }) => {
        const found = instrument.wireBores.find((one) => one.id === id)!;
        return found.kind === "ok" ? found.length : Number.NaN;
      }),
      length("instrument", `bore.${id}.wall`, `Least wood round bore ${id}`, (model) =>
        leastOf(model, `bore.${id}`),
      ),
    ]),
  ];
}

function recessNamed({ instrument }: Model, id: string) {
  const found = instrument.recesses.find((one) => one.id === id);
  if (found?.kind !== "ok") throw new RangeError(`no recess ${id} is made`);
  return found;
}

/** No number for a bore that misses its recess, as for its length: it is drilled nowhere, and no wood is round it. */
function leastOf({ instrument }: Model, of: string): number {
  const walls = instrument.recessWalls.filter((wall) => wall.of === of);
  return walls.length === 0 ? Number.NaN : thinnest(walls).left;
}
