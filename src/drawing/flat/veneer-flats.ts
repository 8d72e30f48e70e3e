import { underVeneers } from "../../instrument/under-veneers.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { FlatFile } from "./flat-file.ts";
import { veneerFlat } from "./veneer.ts";

/** The file of each veneer of a design. */
export function veneerFlats({ veneers }: Spec): FlatFile[] {
  return veneers.map(({ id, on, face, grain, pair }) => ({
    ...{ name: `veneer-${id}`, folder: "outlines", part: on, seenFrom: face },
    what: `the veneer for the ${face} of the ${on}, with its margin and the way of its grain`,
    of: ({ spec, instrument }, store) => {
      const of = (name: string) => dimensionOf(spec, name);
      const { path } = instrument.fronts.find(({ part }) => part === on)!;
      const whole = of(`${on.replace("-", ".")}.thickness`);
      return store.answer(veneerFlat, {
        ...{ hand: spec.hand, on, face, path, grain: on === "wing-bass" ? -grain : grain, pair, whole },
        ...{ margin: of("veneer.margin"), thickness: of("veneer.thickness"), under: underVeneers(spec, on) },
      });
    },
  }));
}
