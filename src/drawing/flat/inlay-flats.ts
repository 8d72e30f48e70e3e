import { madeInlays } from "../../instrument/fingerboard/inlays.ts";
import type { FlatFile } from "./flat-file.ts";
import { inlaysFlat } from "./inlays.ts";

/** The file of the inserts, in orders that have inlays. */
export const inlayFlats: readonly FlatFile[] = [
  {
    ...{ name: "inlays", folder: "outlines", part: "fingerboard", seenFrom: "front" },
    applies: ({ inlays }) => inlays.length > 0,
    what: "inserts of the fingerboard's inlays, in the design's outlines",
    of: ({ spec, instrument }, store) =>
      store.answer(inlaysFlat, {
        hand: spec.hand,
        inlays: madeInlays(instrument).map(({ id, design, insert, thickness, unreached, area }) => {
          return { id, design, insert, thickness, unreached, area };
        }),
      }),
  },
];
