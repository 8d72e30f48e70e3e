import type { Edged } from "../../../geometry/seen/mesh-edges.ts";
import { type SeenLines, seenLines } from "../../../geometry/seen/seen-lines.ts";
import { type View, viewFrom } from "../../../geometry/seen/view.ts";
import { placed } from "../moved.ts";
import type { Marks } from "../sheet.ts";

/**
 * The views of an assembled instrument, as third-angle projection has them: front with the head at the left, the side under it as seen from below
 * the front view, the tail beside that; and from behind the player's chin along the strings, over the side that the high notes are not on.
 */
export const views = {
  front: viewFrom({ x: 0, y: 0, z: 1 }, { x: 0, y: 1, z: 0 }),
  side: viewFrom({ x: 0, y: -1, z: 0 }, { x: 0, y: 0, z: 1 }),
  tail: viewFrom({ x: 1, y: 0, z: 0 }, { x: 0, y: 0, z: 1 }),
} as const;

/** From the player's side: from behind the tail, over the bass side, and from above. */
export function playersView(hand: "right" | "left"): View {
  return viewFrom({ x: 0.75, y: hand === "right" ? -0.35 : 0.35, z: 0.6 }, { x: 0, y: 0, z: 1 });
}

/** How wide a field of the depths is that tell what is seen: as a share of the instrument's length. */
const share = 1 / 1200;

/** What is seen of some parts; `length` is the instrument's, mm. */
export function seenOf(parts: readonly Edged[], view: View, length: number): SeenLines {
  return seenLines(parts, view, length * share);
}

/** Seen lines as marks on paper at a scale, the view's own origin at the paper's. */
export function drawn({ outline, corners }: SeenLines, scale: number): Marks {
  return {
    lines: [
      ...outline.map((path) => ({ weight: "edge" as const, path: placed(path, scale) })),
      ...corners.map((path) => ({ weight: "extension" as const, path: placed(path, scale) })),
    ],
    texts: [],
  };
}
