import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";

/** How many arcs stand for an ellipse: it strays from them by less than a thousandth of its size while it is nearly round. */
const arcs = 24;

/** A circle of a radius seen aslant: an ellipse by arcs, `narrow` (0 to 1) of its width along x; mm. */
export function seenAslant(centre: Point, radius: number, narrow: number): Path {
  const at = (k: number) => {
    const angle = (2 * Math.PI * k) / arcs;
    return { x: centre.x + narrow * radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  };
  const points = Array.from({ length: arcs }, (_, k) => {
    const [a, m, b] = [at(k), at(k + 0.5), at(k + 1)];
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const rise = ((m.y - a.y) * (b.x - a.x) - (m.x - a.x) * (b.y - a.y)) / chord;
    return { ...a, bulge: (-2 * rise) / chord };
  });
  return { closed: true, points };
}
