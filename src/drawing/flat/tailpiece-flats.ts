import { madeTailpiece } from "../../instrument/tailpiece/tailpiece.ts";
import type { FlatFile } from "./flat-file.ts";
import { tailpieceFlat } from "./tailpiece.ts";

/** The tailpiece's file. */
export const tailpieceFlats: readonly FlatFile[] = [
  {
    ...{ name: "tailpiece", folder: "outlines", part: "tailpiece", seenFrom: "front" },
    what: "tailpiece outline with the strings' and the posts' holes, and the grooves to be filed",
    of: ({ spec, instrument }, store) => {
      const { path, foremost, end, strings, posts } = madeTailpiece(instrument);
      return store.answer(tailpieceFlat, {
        ...{ hand: spec.hand, path, foremost, end },
        strings: strings.map((hole, i) => {
          const { name, diameter } = spec.strings[i]!;
          return { name, diameter, ...hole };
        }),
        posts,
      });
    },
  },
];
