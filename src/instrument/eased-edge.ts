import type { Edge } from "../geometry/solid/solid.ts";
import type { EdgeProfile } from "../order/spec.ts";

/** What a profile of some size, mm, takes off an edge; nothing of a sharp one. */
export function easedEdge(profile: EdgeProfile, size: number): Edge | undefined {
  if (profile === "none" || size === 0) return undefined;
  return profile === "round" ? { kind: "round", radius: size } : { kind: "bevel", inward: size, down: size };
}
