import { intoCore } from "../instrument/core/frame.ts";
import type { Instrument } from "../instrument/instrument.ts";
import { dimensionOf, type Spec } from "../order/spec.ts";
import type { Getters } from "../step/lazy.ts";
import type { Store } from "../step/store.ts";
import { bridgeFeet } from "./bridge-feet.ts";
import { type BridgeLoad, bridgeLoad } from "./bridge-load.ts";
import { bridgeResultant, type FootLoads, footLoads, screwShear } from "./bridge-stand.ts";
import type { Tensions } from "./tension.ts";
import { type Balance, tensionBalance } from "./tension-balance.ts";

/** What the strings do to bridge and tailpiece, and how they are balanced across the set. */
export type BridgeForces = {
  readonly bridgeLoad: BridgeLoad;
  /** How far the resultant meets the core ahead of the foot's middle, mm; null for a screwed saddle. */
  readonly resultant: number | null;
  /** What each foot carries, N; null for a screwed saddle. */
  readonly footLoads: FootLoads | null;
  /** Shear stress of a saddle's screws, MPa; null where none holds the bridge. */
  readonly screwShear: number | null;
  readonly balance: Balance;
};

/** How each of the bridge's forces is worked out; the strings' tensions are asked only then. */
export function bridgeForceGetters(
  spec: Spec,
  instrument: Instrument,
  store: Store,
  made: () => { readonly strings: Tensions } & BridgeForces,
): Getters<BridgeForces> {
  const of = (id: string) => dimensionOf(spec, id);
  const { bridgeFoot } = spec;
  const stringLength = of("string.length");
  return {
    bridgeLoad: () => {
      const { layout, runs, exits } = instrument;
      const strings = made().strings.tensions.map((tension, i) => {
        const [rise, fall] = [runs.angles[i]!, exits.angles[i]!];
        const nut = stringLength / Math.cos((rise * Math.PI) / 180);
        return {
          ...{ tension, rise, fall, lengths: { nut, tail: exits.afterlengths[i]! } },
          across: { nut: layout.nut[i]!, bridge: layout.bridge[i]!, exit: exits.across[i]! },
        };
      });
      return store.answer(bridgeLoad, { slope: of("core.slope"), strings }).value;
    },
    resultant: () => {
      if (bridgeFoot.kind === "saddle") return null;
      const { nut, tail } = made().bridgeLoad;
      const [foot, top] = [of("bridge.foot.thickness"), of("bridge.top.thickness")];
      const { height } = instrument.crown;
      return store.answer(bridgeResultant, { height, foot, top, tilt: of("bridge.tilt"), nut, tail }).value;
    },
    footLoads: () => {
      if (bridgeFoot.kind === "saddle") return null;
      const { layout, heights, core } = instrument;
      const strings = made().bridgeLoad.strings.map(({ load, side }, i) => {
        const height = intoCore(core, { x: stringLength, z: heights.bridge[i]! }).z;
        return { y: layout.bridge[i]!, height, load, side };
      });
      return store.answer(footLoads, { feet: bridgeFeet(spec.bridgeFace), strings }).value;
    },
    screwShear: () => {
      if (bridgeFoot.kind !== "saddle" || bridgeFoot.screws.length === 0) return null;
      const { lean, side } = made().bridgeLoad;
      return store.answer(screwShear, { lean, side, sizes: bridgeFoot.screws.map(({ size }) => size) }).value;
    },
    balance: () => {
      const { nut, bridge } = instrument.layout;
      const { tensions } = made().strings;
      const strings = tensions.map((tension, i) => ({ tension, nut: nut[i]!, bridge: bridge[i]! }));
      return store.answer(tensionBalance, { strings }).value;
    },
  };
}
