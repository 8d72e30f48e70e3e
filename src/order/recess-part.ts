/** The parts that a recess can be sunk into. */
export const recessParts = ["neck", "body", "wing-bass", "wing-treble"] as const;

/** One of the parts that a recess can be sunk into. */
export type RecessPart = (typeof recessParts)[number];
