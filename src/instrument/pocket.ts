import type { Path } from "../geometry/path.ts";
import type { Solid } from "../geometry/solid/solid.ts";

/**
 * Something sunk square into a part that has two parallel flat faces: a core, a wing, a body. `path` is its closed outline in the plane of
 * the part's front, seen from the front; `depth` is from the face that it enters, mm; `bore` is the diameter of one that is drilled and not routed.
 */
export type Pocket = {
  readonly id: string;
  readonly from: "front" | "back";
  readonly path: Path;
  readonly depth: number | "through";
  readonly bore: number | null;
};

/** How far a cutter stands out of the face that it enters, mm: cutter and face in one plane may leave a skin between them. */
const clear = 1;

/** What a pocket takes away of a part that lies between z = 0, its front, and `-thickness`, mm; in the part's own axes. */
export function pocketCutter({ from, path, depth }: Pocket, thickness: number): Solid {
  const outlines = [{ outer: path, holes: [] }];
  if (depth === "through")
    return { kind: "extrude", outlines, base: -thickness - clear, height: thickness + 2 * clear };
  const base = from === "front" ? -depth : -thickness - clear;
  return { kind: "extrude", outlines, base, height: depth + clear };
}
