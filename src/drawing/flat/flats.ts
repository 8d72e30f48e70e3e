import { madeInlays } from "../../instrument/fingerboard/inlays.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { boardFlats } from "./board-flats.ts";
import { bodyFlats } from "./body-flats.ts";
import { bridgeFlat } from "./bridge.ts";
import { bridgeFlats } from "./bridge-flats.ts";
import { fingerboardFlat } from "./fingerboard.ts";
import { fixtureFlats } from "./fixture-flats.ts";
import type { FlatFile } from "./flat-file.ts";
import { inlayFlats } from "./inlay-flats.ts";
import { insideFlats } from "./inside-flats.ts";
import { neckFlats } from "./neck-flats.ts";
import { nutFlat } from "./nut.ts";
import { partSawFlats } from "./part-saw-flats.ts";
import { coverFlats, recessFlats } from "./recess-flats.ts";
import { restFlats } from "./rest-flats.ts";
import { tailpieceFlats } from "./tailpiece-flats.ts";
import { veneerFlats } from "./veneer-flats.ts";
import { wingFlats } from "./wing-flats.ts";

/** Every flat machine file that any order has but for covers, which are named by their recesses, in the order in which a pack lists them. */
export const flatFiles: readonly FlatFile[] = [
  {
    ...{ name: "fingerboard", folder: "outlines", part: "fingerboard", seenFrom: "front" },
    what: "fingerboard outline with centreline, string lines and stations, and what is let into its face",
    fromNumbers: ({ frets }) =>
      frets === null ? undefined : { layers: /^RECESS-/, what: "FRET SLOTS AND WHAT IS LET IN" },
    of: ({ spec, instrument }, store) => {
      const { board, taper, layout, fretSlots, boardDots } = instrument;
      if (board.kind !== "ok") throw new RangeError(`the fingerboard has no outline: ${board.kind}`);
      return store.answer(fingerboardFlat, {
        ...{ hand: spec.hand, path: board.path, taper, stringLength: dimensionOf(spec, "string.length") },
        strings: spec.strings.map(({ name }, i) => ({
          name,
          nut: layout.nut[i]!,
          bridge: layout.bridge[i]!,
        })),
        stations: spec.stations.fingerboard,
        frets: fretSlots && {
          width: fretSlots.width,
          depth: fretSlots.depth,
          slots: fretSlots.slots.map(({ x, half }) => ({ x, half })),
        },
        inlays: madeInlays(instrument).map(({ id, recess, depth }) => ({ id, recess, depth })),
        dots: boardDots && {
          ...{ size: boardDots.size, depth: boardDots.depth },
          list: boardDots.list.map(({ x, y }) => ({ x, y })),
        },
      });
    },
  },
  {
    ...{ name: "nut", folder: "outlines", part: "nut", seenFrom: "tail" },
    what: "nut blank with the places, widths and depths of its slots",
    of: ({ spec, instrument }, store) =>
      store.answer(nutFlat, {
        hand: spec.hand,
        nut: instrument.nut,
        names: spec.strings.map(({ name }) => name),
      }),
  },
  {
    ...{ name: "bridge", folder: "outlines", part: "bridge", seenFrom: "tail" },
    what: "bridge outline in its flat face, with crown and string notches",
    of: ({ spec, instrument: { bridge, crownFace } }, store) => {
      if (bridge.kind !== "ok") throw new RangeError(`the bridge has no outline: ${bridge.kind}`);
      const holes = bridge.holes.map(({ size, path }) => ({ size, path }));
      const names = spec.strings.map(({ name }) => name);
      const { cut, finished } = bridge;
      return store.answer(bridgeFlat, {
        hand: spec.hand,
        cut,
        finished,
        holes,
        notches: crownFace.notches,
        names,
      });
    },
  },
  ...boardFlats,
  ...bridgeFlats,
  ...inlayFlats,
  ...tailpieceFlats,
  ...neckFlats,
  ...wingFlats,
  ...bodyFlats,
  ...fixtureFlats,
  ...insideFlats,
  ...recessFlats,
  ...partSawFlats,
];

/** The flat machine files of one order. */
export function flatsOf(spec: Spec): readonly FlatFile[] {
  return [
    ...flatFiles.filter(({ applies }) => applies?.(spec) ?? true),
    ...coverFlats(spec),
    ...restFlats(spec),
    ...veneerFlats(spec),
  ];
}
