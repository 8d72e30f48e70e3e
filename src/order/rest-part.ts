/** The parts that carry a rest or its mounts. */
export const restParts = ["neck", "body", "wing-bass", "wing-treble"] as const;

/** One of the parts that carry a rest or its mounts. */
export type RestPart = (typeof restParts)[number];
