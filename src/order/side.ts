/** The sides of an instrument, as its strings name them. */
export const sides = ["bass", "treble"] as const;

/** Which side of the core something stands on: `treble` where y is positive. */
export type Side = (typeof sides)[number];
