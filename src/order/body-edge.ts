/** The edges of a body's outline: its square head end, and the rim of each side to the tail's middle. */
export const bodyEdges = ["head", "bass", "treble"] as const;

/** An edge of a body's outline. */
export type BodyEdge = (typeof bodyEdges)[number];
