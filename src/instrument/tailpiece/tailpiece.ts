import type { Solid } from "../../geometry/solid/solid.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Crown } from "../bridge/crown.ts";
import { type CoreFrame, intoCore } from "../core/frame.ts";
import type { StringHeights } from "../strings/heights.ts";
import type { StringLayout } from "../strings/layout.ts";
import type { TailpieceExits } from "./exits.ts";
import { type TailpieceOutline, tailpieceOutline } from "./outline.ts";
import { type TailpieceSolidInput, tailpieceSolid } from "./solid.ts";

/** What is made of a tailpiece. Of one without an outline there is nothing to ask but that. */
export type Tailpiece = {
  readonly tailpiece: TailpieceOutline;
  readonly tailpieceSolidInput: TailpieceSolidInput;
  readonly tailpieceSolid: Solid;
};

/** What a tailpiece rests on. */
export type UnderTailpiece = {
  readonly core: CoreFrame;
  readonly crown: Crown;
  readonly layout: StringLayout;
  readonly heights: StringHeights;
  readonly exits: TailpieceExits;
};

/** How the tailpiece is worked out. */
export function tailpieceGetters(
  spec: Spec,
  store: Store,
  made: () => UnderTailpiece & Tailpiece,
): Getters<Tailpiece> {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    tailpiece: () => {
      const { core, layout, heights, exits } = made();
      return store.answer(tailpieceOutline, {
        face: spec.tailpieceFace,
        strings: spec.strings.map((_, i) => ({
          contact: {
            x: intoCore(core, { x: of("string.length"), z: heights.bridge[i]! }).x,
            y: layout.bridge[i]!,
          },
          exit: { x: exits.along[i]!, y: exits.across[i]! },
        })),
        hole: { diameter: of("tailpiece.hole"), at: of("tailpiece.hole.at") },
      }).value;
    },
    tailpieceSolidInput: () => {
      const { path, strings, posts } = madeTailpiece(made());
      return {
        ...{ core: made().core, path, holes: [...strings, ...posts].map((hole) => hole.path) },
        ...{ height: of("tailpiece.height"), thickness: of("tailpiece.thickness") },
      };
    },
    tailpieceSolid: () => store.answer(tailpieceSolid, made().tailpieceSolidInput).value,
  };
}

/** The outline of a tailpiece that contradictions found nothing wrong with; throws at one that can't be made. */
export function madeTailpiece({ tailpiece }: Pick<Tailpiece, "tailpiece">) {
  if (tailpiece.kind !== "ok") throw new RangeError(`the tailpiece has no outline: ${tailpiece.kind}`);
  return tailpiece;
}
