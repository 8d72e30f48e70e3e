import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";

/** A slot as a cutter of its width leaves it, mm: its middle, how far the cutter travels, and which way, degrees from x. */
export type Slot = {
  readonly at: Point;
  readonly width: number;
  readonly travel: number;
  readonly turn: number;
};

/** Where the middle of a slot's cutter begins and ends. */
export function slotEnds({ at, travel, turn }: Slot): readonly [Point, Point] {
  const angle = (turn * Math.PI) / 180;
  const [dx, dy] = [(Math.cos(angle) * travel) / 2, (Math.sin(angle) * travel) / 2];
  return [
    { x: at.x - dx, y: at.y - dy },
    { x: at.x + dx, y: at.y + dy },
  ];
}

/** A slot's outline, counter-clockwise: two straights between round ends; a circle where nothing travels. */
export function slotPath(slot: Slot): Path {
  const { at, width, travel, turn } = slot;
  if (travel === 0) return circle(at, width / 2);
  const [from, to] = slotEnds(slot);
  const angle = (turn * Math.PI) / 180;
  const [ox, oy] = [(Math.sin(angle) * width) / 2, (-Math.cos(angle) * width) / 2];
  return {
    closed: true,
    points: [
      { x: from.x + ox, y: from.y + oy, bulge: 0 },
      { x: to.x + ox, y: to.y + oy, bulge: 1 },
      { x: to.x - ox, y: to.y - oy, bulge: 0 },
      { x: from.x - ox, y: from.y - oy, bulge: 1 },
    ],
  };
}
