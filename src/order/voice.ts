/** The three voices. */
export const voices = ["violin", "viola", "cello"] as const;

/** One of the three voices: which strings, which string length. */
export type Voice = (typeof voices)[number];
