/** How many random cases a property is tried on: 20,000 by night. */
export const runs = process.env.NIGHTLY ? 20_000 : 2_000;
