import type { ReadPath } from "./read-dxf.ts";

/** What a path measures: area mm² (0 for an open one), length mm, extents mm, and its count of arcs that turn either way. */
export type Measured = {
  readonly layer: string;
  readonly closed: boolean;
  readonly area: number;
  readonly length: number;
  readonly extents: readonly [minX: number, minY: number, maxX: number, maxY: number];
  readonly arcs: { readonly left: number; readonly right: number };
};

/**
 * Measure a path that was read from a file.
 *
 * By a way of its own, so that a slip in the model's measures shows: the polygon of the vertices (shoelace) plus a circular
 * segment for each bulge, r² (θ - sin θ) / 2 with θ = 4 atan(bulge); extents by stepping round each arc to the quarters of
 * its circle.
 */
export function measurePath({ layer, closed, vertices }: ReadPath): Measured {
  const count = closed ? vertices.length : vertices.length - 1;
  let [area, length, left, right] = [0, 0, 0, 0];
  const xs = vertices.map(({ x }) => x);
  const ys = vertices.map(({ y }) => y);
  for (let i = 0; i < count; i++) {
    const a = vertices[i]!;
    const b = vertices[(i + 1) % vertices.length]!;
    area += ((b.x - a.x) * (a.y + b.y)) / -2;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    if (a.bulge === 0) {
      length += chord;
      continue;
    }
    const sweep = 4 * Math.atan(a.bulge);
    const radius = chord / (2 * Math.sin(Math.abs(sweep) / 2));
    area += (Math.sign(sweep) * radius ** 2 * (Math.abs(sweep) - Math.sin(Math.abs(sweep)))) / 2;
    length += radius * Math.abs(sweep);
    if (a.bulge > 0) left++;
    else right++;
    for (const { x, y } of bulgingPlaces(a, b, sweep)) {
      xs.push(x);
      ys.push(y);
    }
  }
  return {
    ...{ layer, closed, length, arcs: { left, right } },
    area: closed ? area : 0,
    extents: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)],
  };
}

type Place = { readonly x: number; readonly y: number };

/** The right, top, left and bottom places of an arc's circle that lie on the arc's side of its chord. */
function bulgingPlaces(a: Place, b: Place, sweep: number): Place[] {
  const chord = Math.hypot(b.x - a.x, b.y - a.y);
  const radius = chord / (2 * Math.sin(Math.abs(sweep) / 2));
  const aside = chord / 2 / Math.tan(sweep / 2);
  const nx = -(b.y - a.y) / chord;
  const ny = (b.x - a.x) / chord;
  const cx = (a.x + b.x) / 2 + nx * aside;
  const cy = (a.y + b.y) / 2 + ny * aside;
  const around = [
    { x: cx + radius, y: cy },
    { x: cx, y: cy + radius },
    { x: cx - radius, y: cy },
    { x: cx, y: cy - radius },
  ];
  return around.filter(({ x, y }) => ((x - a.x) * nx + (y - a.y) * ny) * Math.sign(sweep) < 0);
}
