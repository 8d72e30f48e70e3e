import { madeSunk } from "../../instrument/bridge/sunk.ts";
import type { CoreFrame } from "../../instrument/core/frame.ts";
import { coreAxes } from "../../instrument/core/from-core.ts";
import { coreHalf } from "../../instrument/core/width.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { bridgePlaceFlat } from "./bridge-place.ts";
import { bridgeSideFlat } from "./bridge-side.ts";
import type { FlatFile } from "./flat-file.ts";

/** The machine files of the bridge's place on the core and of its side. */
export const bridgeFlats: readonly FlatFile[] = [
  {
    ...{ name: "bridge-place", folder: "outlines", part: "bridge", seenFrom: "core's front" },
    what: "the bridge's place on the core's front, with what is sunk under it",
    of: ({ spec, instrument }, store) => {
      const { nut, middle, tail } = instrument.bridgeStand;
      return store.answer(bridgePlaceFlat, {
        ...{ hand: spec.hand, stand: { nut, middle, tail }, feet: instrument.bridgeFeet },
        sunk: madeSunk(instrument.bridgeSunk).map(({ kind, id, path, depth, at, size }) => {
          return { kind, id, path, depth, at, size };
        }),
        ...{ core: straightCore(spec, instrument.core), start: instrument.core.start },
      });
    },
  },
  {
    ...{ name: "bridge-side", folder: "outlines", part: "bridge" },
    seenFrom: { right: "bass side", left: "treble side" },
    what: "the bridge from the side, a template of its taper and its lean",
    of: ({ spec, instrument: { bridgeStand } }, store) => {
      const { tilt, height, foot, top } = bridgeStand;
      return store.answer(bridgeSideFlat, { hand: spec.hand, stand: { tilt, height, foot, top } });
    },
  },
];

/** The core's front from where the neck has run into it to where its corners begin, as it is seen square from it. */
function straightCore(spec: Spec, core: CoreFrame) {
  const of = (id: string) => dimensionOf(spec, id);
  const width = { width: of("core.width"), at: of("string.length"), taper: of("core.taper") };
  const side = (x: number) => ({ x: (x - core.start) / coreAxes(core).u.x, half: coreHalf(width, x) });
  const from = Math.max(of("neck.transition.end"), core.start);
  return { from: side(from), to: side(of("core.end") - of("neck.corner")) };
}
