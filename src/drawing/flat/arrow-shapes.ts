import type { Arrow } from "../../workshop/guided/fixture.ts";
import { layers, lineBetween, type Shape } from "./flat.ts";

/** How long an arrow's barbs are at most, and as a share of it, mm. */
const barbs = { most: 4, share: 0.3 } as const;

/** An arrow so long about its place, with two barbs at its tip, on the note layer; mm. */
export function arrowShapes({ at, way }: Arrow, length: number): Shape[] {
  const barb = Math.min(barbs.most, barbs.share * length);
  const tip = { x: at.x + (way.x * length) / 2, y: at.y + (way.y * length) / 2 };
  const tail = { x: at.x - (way.x * length) / 2, y: at.y - (way.y * length) / 2 };
  const side = (s: number) =>
    lineBetween(tip.x, tip.y, tip.x - barb * (way.x - s * way.y), tip.y - barb * (way.y + s * way.x));
  return [lineBetween(tail.x, tail.y, tip.x, tip.y), side(0.5), side(-0.5)].map((path) => ({
    layer: layers.note,
    path,
  }));
}
