import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { Side } from "../../order/side.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Bodies } from "../body/body.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreFront } from "../core/front.ts";
import type { Strip } from "../eased-top.ts";
import type { Taper } from "../fingerboard/taper.ts";
import type { StringHeights } from "../strings/heights.ts";
import type { StringLayout } from "../strings/layout.ts";
import type { Wings } from "../wing/wings.ts";
import { bowClearance, type Clearance, type ClearanceInput } from "./clearance.ts";
import { type BowTilts, bowTilts } from "./tilts.ts";

/** Finished surfaces that a bow might touch: flat ones by their corners, and strips of facets; mm. */
export type UnderBow = { readonly flats: readonly (readonly Vec3[])[]; readonly strips: readonly Strip[] };

/** What a bow finds: how it reaches every string, and how clear it is of the instrument where it plays the outer ones. */
export type Bow = {
  readonly bow: BowTilts;
  /** The finished surfaces that a bow might touch on either side, right-handed, mm. */
  readonly underBow: { readonly [side in Side]: UnderBow };
  /** Where a bow plays the outer string of a side. */
  readonly bowOuter: { readonly [side in Side]: Omit<ClearanceInput, "surfaces"> };
  readonly bowClearance: { readonly bass: Clearance; readonly treble: Clearance };
};

/** What the bow's getters rest on. */
type Strung = {
  readonly core: CoreFrame;
  readonly layout: StringLayout;
  readonly heights: StringHeights;
  readonly taper: Taper;
} & Bow &
  Wings &
  Bodies;

/** How far past the board's end and before the bridge the hair keeps, mm (G: default, confirm). */
const kept = { board: 2, bridge: 4 } as const;

/** How each answer about the bow is worked out; the strings are asked only then. */
export function bowGetters(spec: Spec, store: Store, made: () => Strung): Getters<Bow> {
  const of = (id: string) => dimensionOf(spec, id);
  const stringLength = of("string.length");
  const place = (where: "nut" | "bridge", i: number) => {
    const { layout, heights } = made();
    return { y: layout[where].at(i)!, z: heights[where].at(i)! };
  };
  const outer = (side: 1 | -1) => {
    const { taper, bow } = made();
    const i = side === 1 ? 0 : -1;
    const string = { length: stringLength, nut: place("nut", i), bridge: place("bridge", i) };
    const tilt = side === 1 ? bow.outermost.treble : bow.outermost.bass;
    return {
      hair: { string, side, tilt },
      ...{ from: taper.length + kept.board, to: stringLength - kept.bridge },
      corner: { x: taper.length, y: (side * taper.end) / 2, z: of("fingerboard.edge") },
    };
  };
  const clearance = (side: Side) => {
    const { bowOuter, underBow } = made();
    return store.answer(bowClearance, { ...bowOuter[side], surfaces: underBow[side] }).value;
  };
  return {
    bow: () => store.answer(bowTilts, { centres: spec.strings.map((_, i) => place("bridge", i)) }).value,
    underBow: () => {
      const { core, wings, body } = made();
      const front = coreFront({
        ...{ core, end: of("core.end"), width: of("core.width") },
        ...{ at: stringLength, taper: of("core.taper") },
      });
      const beside = (side: Side): UnderBow => {
        const top = wings?.[side].top ?? body?.top[side];
        return top === undefined
          ? { flats: [front], strips: [] }
          : { flats: [front, top.flat], strips: top.strips };
      };
      return { bass: beside("bass"), treble: beside("treble") };
    },
    bowOuter: () => ({ bass: outer(-1), treble: outer(1) }),
    bowClearance: () => ({ bass: clearance("bass"), treble: clearance("treble") }),
  };
}
