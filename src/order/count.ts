/** The string counts that an instrument can have. */
export const counts = [4, 5, 6, 7] as const;

/** One of the string counts. */
export type Count = (typeof counts)[number];
