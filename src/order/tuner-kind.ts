/** How a design tunes its strings: machine heads or pegs in the head, or tuners at the tail and a bare head. */
export const tunerKinds = ["machine-heads", "pegs", "tail"] as const;

/** One of the ways in which strings are tuned. */
export type TunerKind = (typeof tunerKinds)[number];
