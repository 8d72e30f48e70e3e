import { type Settable, settable } from "./settable.ts";

const allowance = settable("fits", "length", 0, 2, "fits");

/** The fits that a design's own clearances follow, mm a side with finish: a design declares those that something of it follows. */
export const fitSettables: readonly Settable[] = [
  allowance(
    "fit.recess",
    "Room a side, finish included, round what lies in a recess: a core in a body, an item, a cover",
  ),
  allowance("fit.pin", "Room a side, finish included, round a joint's pin in its hole"),
  allowance("fit.inlay", "Room a side, finish included, round an inlay in its recess"),
];
