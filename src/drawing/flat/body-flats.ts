import { madeBody } from "../../instrument/body/body.ts";
import { dimensionOf } from "../../order/spec.ts";
import { bodyFlat } from "./body.ts";
import type { FlatFile } from "./flat-file.ts";

/** The file of a body in one piece. */
export const bodyFlats: readonly FlatFile[] = [
  {
    ...{ name: "body", folder: "outlines", part: "body", seenFrom: "core's front" },
    applies: ({ body }) => body !== null,
    what: "outline of the body in one piece, with the room for the core",
    of: ({ spec, instrument }, store) => {
      const { outline, recess } = madeBody(instrument.body!);
      const { core, profile, cut } = spec.body!;
      return store.answer(bodyFlat, {
        ...{ hand: spec.hand, path: outline.path, profile, cut },
        recess: { path: recess.path, depth: recess.depth, corner: recess.corner },
        through: core === "through",
        thickness: dimensionOf(spec, "body.thickness"),
        drop: dimensionOf(spec, "body.drop"),
        arris: dimensionOf(spec, "body.arris"),
        pockets: (instrument.sunken.body?.pockets ?? []).filter(({ from }) => from === "front"),
      });
    },
  },
];
