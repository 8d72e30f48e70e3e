import { type Extents, extentsApart, extentsOf } from "../../geometry/measure.ts";
import { boxRound, nearBy } from "../near-by.ts";
import type { Taken } from "./ground.ts";
import { type Slot, slotPath } from "./slot.ts";

/** Of what takes of a part's wood, that which lies near a slot in plan, for walls of so much: what moves far away leaves the slot's walls alone. */
export function nearSlot(slot: Slot, wall: number, taken: readonly Taken[]): Taken[] {
  const box = extentsOf([slotPath(slot)])!;
  return nearBy(taken, wall, (one) => extentsApart(box, boxOf(one)));
}

function boxOf(taken: Taken): Extents {
  if (taken.kind === "sunk") return extentsOf([taken.path])!;
  return boxRound(taken.axis.from, taken.axis.to, taken.radius);
}
