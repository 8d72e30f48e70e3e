import type { Point } from "../../geometry/point.ts";

/** The share of a disc that lies on something, looked at in so many rings of equal area and so many rays. */
export function shareOn(
  { x, y }: Point,
  radius: number,
  isOn: (at: Point) => boolean,
  { rings, rays }: { readonly rings: number; readonly rays: number },
): number {
  let on = 0;
  for (let ring = 0; ring < rings; ring++)
    for (let ray = 0; ray < rays; ray++) {
      const far = radius * Math.sqrt((ring + 0.5) / rings);
      const turn = (2 * Math.PI * (ray + (ring % 2) / 2)) / rays;
      if (isOn({ x: x + far * Math.cos(turn), y: y + far * Math.sin(turn) })) on++;
    }
  return on / (rings * rays);
}
