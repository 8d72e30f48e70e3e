import type { MadeRecess } from "./recess.ts";

/** A recess's floor over the front of its part, mm: negative. */
export function floorOf({ from, depth }: Pick<MadeRecess, "from" | "depth">, thickness: number): number {
  return from === "back" ? depth - thickness : -depth;
}

/** How high a recess stands open under its cover's ledge, from its floor, mm. */
export function openOf({ depth, cover }: Pick<MadeRecess, "depth" | "cover">): number {
  return depth - (cover?.thickness ?? 0);
}

/** Which way a recess opens: 1 to the front, -1 to the back. */
export function opens({ from }: Pick<MadeRecess, "from">): 1 | -1 {
  return from === "front" ? 1 : -1;
}
