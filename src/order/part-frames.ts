import type { RecessPart } from "./recess-part.ts";

/** What a plain number in the place of a recess or a mount is a fraction of, along and across, by the part that it is in. */
export const partFrames: { readonly [part in RecessPart]: readonly [along: string, across: string] } = {
  neck: ["core.end", "core.width"],
  body: ["body.length", "body.lower.width"],
  "wing-bass": ["wing.bass.length", "wing.bass.width"],
  "wing-treble": ["wing.treble.length", "wing.treble.width"],
};
