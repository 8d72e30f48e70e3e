import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { type BaseFrame, inBase, onBase } from "./base-frame.ts";
import { holdingSizes } from "./holding-sizes.ts";

/** Where a hand holds a fixture: its middle, and the circle round it that the cutter keeps away from; mm. */
export type Handhold = { readonly at: Point; readonly path: Path };

/** Two handholds side by side `h` away from the frame's line, or one in the middle of a narrow base; `led` is the edge that ends the base, led on. */
export function handholds(frame: BaseFrame, led: Path, h: number): readonly Handhold[] {
  const [low, high] = widthOf(frame, led);
  const { hand, rim } = holdingSizes;
  const apart = (high - low) / 2;
  const places = apart >= 2 * hand + rim ? [low + apart / 2, high - apart / 2] : [(low + high) / 2];
  return places.map((s) => {
    const at = onBase(frame, s, h);
    return { at, path: circle(at, hand) };
  });
}

/** Where the hole is that a fixture hangs by: in the middle of its far end. */
export function hangAt(frame: BaseFrame, led: Path, reach: number): Point {
  const [low, high] = widthOf(frame, led);
  return onBase(frame, (low + high) / 2, reach - holdingSizes.rim);
}

/** How wide the base is where the run-in and the run-out end, as places along the frame. */
function widthOf(frame: BaseFrame, { points }: Path): readonly [low: number, high: number] {
  const ends = [points[0]!, points.at(-1)!].map((end) => inBase(frame, end).s);
  return [Math.min(...ends), Math.max(...ends)];
}
