import type { Solid } from "../../geometry/solid/solid.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Crown } from "../bridge/crown.ts";
import { type CoreFrame, intoCore } from "../core/frame.ts";
import { coreHalf, coreWidthOf } from "../core/width.ts";
import type { StringHeights } from "../strings/heights.ts";
import type { StringLayout } from "../strings/layout.ts";
import type { TailpieceExits } from "./exits.ts";
import { type TailpieceOutline, tailpieceOutline } from "./outline.ts";
import { type TailpieceRoom, tailpieceRoom } from "./room.ts";
import { type TailpieceSolidInput, tailpieceSolid } from "./solid.ts";
import { type TailpieceWall, tailpieceWalls } from "./walls.ts";

/** What is made of a tailpiece. Of one without an outline walls and solid can't be asked. */
export type Tailpiece = {
  readonly tailpiece: TailpieceOutline;
  /** The wood between its holes and from them to its edges. */
  readonly tailpieceWalls: readonly TailpieceWall[];
  /** What is free round it; of one without an outline, round the strings' exits. */
  readonly tailpieceRoom: TailpieceRoom;
  /** Under these no order may go, mm: what falls short of them can't be made, what falls short of what is set is a fault. */
  readonly tailpieceLeast: { readonly wall: number; readonly clear: number };
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
  const stringLength = of("string.length");
  return {
    tailpiece: () => {
      const { core, layout, heights, exits } = made();
      return store.answer(tailpieceOutline, {
        face: spec.tailpieceFace,
        strings: spec.strings.map((_, i) => ({
          contact: { x: intoCore(core, { x: stringLength, z: heights.bridge[i]! }).x, y: layout.bridge[i]! },
          exit: { x: exits.along[i]!, y: exits.across[i]! },
        })),
        hole: { diameter: of("tailpiece.hole"), at: of("tailpiece.hole.at") },
      }).value;
    },
    tailpieceWalls: () => {
      const { path, end, strings, posts } = madeTailpiece(made());
      const { start, slope } = made().core;
      const scale = Math.cos((slope * Math.PI) / 180);
      /** Half the core's width where something stands on its front. */
      const half = (along: number) => coreHalf(coreWidthOf(of), start + along * scale);
      return store.answer(tailpieceWalls, {
        ...{ path, end, thickest: Math.max(...spec.strings.map(({ diameter }) => diameter)) },
        strings: strings.map(({ at }, i) => ({ name: spec.strings[i]!.name, at })),
        posts: posts.map(({ id, at, size }) => ({ id, at, size, core: half(at.x) })),
        ...{ spread: of("tailpiece.spread"), width: of("tailpiece.width"), length: of("tailpiece.length") },
        ...{ hole: of("tailpiece.hole"), holeAt: of("tailpiece.hole.at"), wall: of("tailpiece.wall") },
      }).value;
    },
    tailpieceRoom: () => {
      const { tailpiece, exits, core, crown } = made();
      const first = Math.min(...exits.along);
      const { foremost, end } = tailpiece.kind === "ok" ? tailpiece : { foremost: first, end: first };
      return tailpieceRoom({
        ...{ core, coreEnd: of("core.end") },
        plate: { foremost, end, height: of("tailpiece.height"), thickness: of("tailpiece.thickness") },
        bridge: {
          ...{ stringLength, top: crown.top },
          ...{ tilt: of("bridge.tilt"), thickness: of("bridge.top.thickness") },
        },
      });
    },
    tailpieceLeast: () => {
      const { "tailpiece.wall": wall, "tailpiece.clear": clear } = spec.values;
      return { wall: wall!.least, clear: clear!.least };
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
