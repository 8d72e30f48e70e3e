import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { WingOutline } from "../../instrument/wing/outline.ts";
import type { Side } from "../../order/side.ts";
import type { SpecFace } from "../../order/spec.ts";
import type { EdgeUse } from "./cut-runs.ts";

/**
 * A wing as it lies before whoever cuts it, front up, head at the left: its closed outline, counter-clockwise, what is done with each of
 * its segments, and the two ends of its joint line; mm. A machine isn't mirrored for a left hand, so all that follows from
 * how it turns is worked out from here.
 */
export type SeenOutline = {
  readonly path: Path;
  readonly uses: readonly EdgeUse[];
  readonly joint: { readonly head: Point; readonly tail: Point };
};

/** A wing's outline as it is seen from its front. The treble wing lies upward for a right hand, the bass wing for a left one. */
export function seenWing(
  side: Side,
  hand: "right" | "left",
  outline: Extract<WingOutline, { kind: "ok" }>,
  face: SpecFace,
): SeenOutline {
  const uses = outline.edges.map((id): EdgeUse => {
    const edge = face.edges.find((one) => one.id === id)!;
    return edge.joined === null ? (edge.finish ?? "cut") : "joined";
  });
  const [x, y] = outline.joint;
  const downward = (side === "bass") !== (hand === "left");
  if (!downward) return { path: outline.path, uses, joint: { head: { x: 0, y: 0 }, tail: { x, y } } };
  return {
    path: mirrored(outline.path, "y"),
    uses: uses.toReversed(),
    joint: { head: { x: 0, y: 0 }, tail: { x, y: 0 - y } },
  };
}
