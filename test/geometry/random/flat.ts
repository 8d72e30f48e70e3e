import type { Path } from "../../../src/geometry/path.ts";

type Place = readonly [number, number];

/**
 * Points along a path with chords no farther than `chord` (mm) from its arcs; worked out from angles alone, apart from
 * what it helps to check. `open` ends included; a closed path's first point is not repeated.
 */
export function flat(path: Path, chord: number): Place[] {
  const found: Place[] = [];
  const count = path.points.length;
  for (let i = 0; i < (path.closed ? count : count - 1); i++) {
    const from = path.points[i]!;
    const to = path.points[(i + 1) % count]!;
    found.push(...along(from, to, from.bulge, chord).slice(0, -1));
  }
  if (!path.closed) found.push([path.points.at(-1)!.x, path.points.at(-1)!.y]);
  return found;
}

/** Points along one segment, both ends included. */
export function along(
  from: { x: number; y: number },
  to: { x: number; y: number },
  bulge: number,
  chord: number,
): Place[] {
  if (bulge === 0)
    return [
      [from.x, from.y],
      [to.x, to.y],
    ];
  const sweep = 4 * Math.atan(bulge);
  const radius = Math.hypot(to.x - from.x, to.y - from.y) / (2 * Math.abs(Math.sin(sweep / 2)));
  const step = 4 * Math.asin(Math.min(1, Math.sqrt(chord / (2 * radius))));
  return spaced(from, to, bulge, Math.max(1, Math.ceil(Math.abs(sweep) / step)));
}

/** `parts` + 1 points evenly along one segment. */
export function spaced(
  from: { x: number; y: number },
  to: { x: number; y: number },
  bulge: number,
  parts: number,
): Place[] {
  const sweep = 4 * Math.atan(bulge);
  const found: Place[] = [];
  for (let k = 0; k <= parts; k++) {
    const share = k / parts;
    if (k === 0) found.push([from.x, from.y]);
    else if (k === parts) found.push([to.x, to.y]);
    else if (bulge === 0) found.push([from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)]);
    else {
      // The chord from the start to the point: turned from the tangent by half of the sweep so far.
      const turned = (share * sweep) / 2;
      const reach = Math.sin(turned) / Math.sin(sweep / 2);
      const swing = turned - sweep / 2;
      const [cos, sin] = [Math.cos(swing) * reach, Math.sin(swing) * reach];
      const [dx, dy] = [to.x - from.x, to.y - from.y];
      found.push([from.x + cos * dx - sin * dy, from.y + sin * dx + cos * dy]);
    }
  }
  return found;
}
