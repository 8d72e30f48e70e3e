import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { FlatFile } from "./flat-file.ts";
import { restChinFlat } from "./rest-chin.ts";

/** The file of a design's chin rest, on the part that carries it. */
export function restFlats({ rests: { chin } }: Spec): FlatFile[] {
  if (chin === null) return [];
  return [
    {
      ...{ name: "rest-chin", folder: "outlines", part: chin.on, seenFrom: "front" },
      what: "the chin rest's footprint on the part that carries it, with its screws' holes",
      of: ({ spec, instrument }, store) => {
        const { foot, edge } = instrument.chinRest!;
        if (foot.kind !== "ok") throw new RangeError(`the chin rest has no footprint: ${foot.kind}`);
        const front = instrument.fronts.find(({ part }) => part === chin.on);
        if (front === undefined) throw new RangeError(`nothing is drawn of the front of ${chin.on}`);
        return store.answer(restChinFlat, {
          ...{ hand: spec.hand, on: chin.on, part: front.path, foot: foot.path, edge },
          screws: chin.hold === "clamp" ? [] : foot.screws.map(({ at, size }) => ({ at, size })),
          depth: chin.hold === "clamp" ? null : dimensionOf(spec, "rest.chin.screw.depth"),
        });
      },
    },
  ];
}
