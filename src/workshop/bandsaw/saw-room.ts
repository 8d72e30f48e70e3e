/**
 * What a blank has beyond the wood that the saw leaves, for the kerf, the saw's wander and a strip of waste, mm; what its faces are planed by;
 * and how long it is at least, so that it is held far from the blade (S for loose work at a shaper; G here: default, confirm).
 */
export const sawRoom = { beside: 4, planed: 1, least: 305 } as const;
