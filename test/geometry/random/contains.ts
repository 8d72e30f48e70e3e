import type { Path } from "../../../src/geometry/path.ts";

/** A direction that no random outline has an edge in or two corners along. */
const [cos, sin] = [Math.cos(0.7391), Math.sin(0.7391)];

/** Whether a point is within closed paths, by crossings of a slanting ray with the true lines and arcs. */
export function contains(paths: readonly Path[], x: number, y: number): boolean {
  let crossings = 0;
  for (const { points } of paths) {
    points.forEach((from, i) => {
      const to = points[(i + 1) % points.length]!;
      const [a, b] = [seen(from, x, y), seen(to, x, y)];
      crossings += from.bulge === 0 ? lineCrossings(a, b) : arcCrossings(a, b, from.bulge);
    });
  }
  return crossings % 2 === 1;
}

/** A place as seen from the point, with the ray along +x. */
function seen(place: { x: number; y: number }, x: number, y: number): [number, number] {
  const [dx, dy] = [place.x - x, place.y - y];
  return [cos * dx + sin * dy, cos * dy - sin * dx];
}

function lineCrossings([ax, ay]: [number, number], [bx, by]: [number, number]): number {
  if (ay > 0 === by > 0) return 0;
  return ax + (ay / (ay - by)) * (bx - ax) > 0 ? 1 : 0;
}

function arcCrossings([ax, ay]: [number, number], [bx, by]: [number, number], bulge: number): number {
  const sweep = 4 * Math.atan(bulge);
  const chord = Math.hypot(bx - ax, by - ay);
  const radius = chord / (2 * Math.sin(sweep / 2));
  const rise = radius * Math.cos(sweep / 2);
  const cx = (ax + bx) / 2 - (rise * (by - ay)) / chord;
  const cy = (ay + by) / 2 + (rise * (bx - ax)) / chord;
  if (Math.abs(cy) >= Math.abs(radius)) return 0;
  const half = Math.sqrt(radius ** 2 - cy ** 2);
  const start = Math.atan2(ay - cy, ax - cx);
  const whole = 2 * Math.PI;
  return [cx - half, cx + half].filter((at) => {
    const turned = (Math.atan2(-cy, at - cx) - start) * Math.sign(sweep);
    return at > 0 && ((turned % whole) + whole) % whole < Math.abs(sweep);
  }).length;
}
