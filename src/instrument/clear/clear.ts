import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { sides } from "../../order/side.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { type Bodies, madeBody } from "../body/body.ts";
import type { OwnPlane } from "../own-plane.ts";
import type { Wings } from "../wing/wings.ts";
import { type StringLine, type Strung, stringLines } from "./string-lines.ts";
import { type StringRoom, stringRoom } from "./string-room.ts";

/** The front of a wing or a body: its plane, its outline there as seen from the front, mm, and which part it is of. */
export type Front = { readonly part: string; readonly plane: OwnPlane; readonly path: Path };

/** The strings' ways, and the fronts beside them with the room that these leave. Fronts can't be asked of parts without an outline. */
export type Clear = {
  readonly stringLines: readonly StringLine[];
  readonly fronts: readonly Front[];
  readonly stringRooms: readonly (StringRoom & { readonly part: string })[];
};

/** How the room round the strings is worked out. */
export function clearGetters(
  spec: Spec,
  store: Store,
  made: () => Strung & Clear & Wings & Bodies,
): Getters<Clear> {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    stringLines: () =>
      stringLines(spec.strings, made(), { length: of("string.length"), exit: of("tailpiece.height") }),
    fronts: () => {
      const { wings, body, core } = made();
      if (body !== null) {
        const plane = { kind: "core", core, drop: of("body.drop") } as const;
        return [{ part: "body", plane, path: madeBody(body).outline.path }];
      }
      if (wings === null) return [];
      return sides.map((side): Front => {
        const { outline, solidInput } = wings[side];
        if (outline.kind !== "ok") throw new RangeError(`the ${side} wing has no outline: ${outline.kind}`);
        return {
          part: `wing-${side}`,
          plane: { kind: "wing", place: solidInput.place },
          // A wing's outline runs out from the core; seen from the front the bass one lies the other way round.
          path: side === "bass" ? mirrored(outline.path, "y") : outline.path,
        };
      });
    },
    stringRooms: () =>
      made().fronts.map(({ part, plane, path }) => ({
        ...{ part },
        ...store.answer(stringRoom, { plane, path, top: 0, strings: made().stringLines }).value,
      })),
  };
}
