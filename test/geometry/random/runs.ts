/** How many random cases a property is tried on: all of one number, so that a night can try ten times as many. */
export const runs = process.env.NIGHTLY === undefined ? 2_000 : 20_000;

/** The seed of every property: the same cases each time. */
export const seed = 20_260_417;
