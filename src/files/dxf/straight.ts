/** A bulge smaller than this is written as 0, a line: on a chord of 400 mm it would stand 0.0002 mm aside. */
export const straight = 1e-6;
