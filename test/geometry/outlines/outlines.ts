import type { Path } from "../../../src/geometry/path.ts";
import { tangentArcs } from "./tangent.ts";

/** The named outlines that offsets are tried and timed on, mm. */
export const outlines = {
  "rounded rectangle": roundedRectangle(300, 120, 15),
  "body of 60 arcs": body(60),
  "body of 180 arcs": body(180),
  wing: wing(),
  "waisted body": waistedBody(),
  "comb of 40 teeth": comb(40),
  spiral: spiral(),
} as const satisfies Record<string, Path>;

/** A rectangle with tangent quarter circles at its corners. */
export function roundedRectangle(long: number, wide: number, radius: number): Path {
  const bulge = Math.SQRT2 - 1;
  const points = [
    [radius, 0, 0],
    [long - radius, 0, bulge],
    [long, radius, 0],
    [long, wide - radius, bulge],
    [long - radius, wide, 0],
    [radius, wide, bulge],
    [0, wide - radius, 0],
    [0, radius, bulge],
  ] as const;
  return { closed: true, points: points.map(([x, y, bulge]) => ({ x, y, bulge })) };
}

/** A softly lobed oval 350 by 190 mm of so many tangent arcs (an even number). */
export function body(arcs: number): Path {
  const places = Array.from({ length: arcs / 2 }, (_, k): [number, number] => {
    const angle = (4 * Math.PI * k) / arcs;
    const swell = 1 + 0.08 * Math.cos(3 * angle) + 0.05 * Math.sin(5 * angle);
    return [175 * swell * Math.cos(angle), 95 * swell * Math.sin(angle)];
  });
  return tangentArcs(places);
}

/** A long side piece: one straight edge, the other swelling, square corners where they meet. */
export function wing(): Path {
  const rim = tangentArcs(
    Array.from({ length: 40 }, (_, k): [number, number] => {
      const angle = (2 * Math.PI * k) / 40;
      return [130 * Math.cos(angle), (60 + 12 * Math.cos(2 * angle)) * Math.sin(angle)];
    }),
  ).points.slice(0, 41);
  return { closed: true, points: rim.map((point, i) => (i === 40 ? { ...point, bulge: 0 } : point)) };
}

/** A body with a waist so narrow that an inset parts it in two. */
export function waistedBody(): Path {
  const places = Array.from({ length: 52 }, (_, k): [number, number] => {
    const angle = (2 * Math.PI * k) / 52;
    const waist = 1 - 0.62 * Math.exp(-(((Math.cos(angle) * 180 + 10) / 45) ** 2));
    return [180 * Math.cos(angle), 95 * waist * Math.sin(angle)];
  });
  return tangentArcs(places);
}

/** A bar with so many teeth 4 mm wide and 30 long on one side, 4 apart; square corners. */
export function comb(teeth: number): Path {
  const points = [{ x: 8 * teeth - 4, y: -20, bulge: 0 }];
  for (let k = teeth - 1; k >= 0; k--) {
    points.push(
      { x: 8 * k + 4, y: k === teeth - 1 ? 30 : 0, bulge: 0 },
      ...(k === teeth - 1 ? [] : [{ x: 8 * k + 4, y: 30, bulge: 0 }]),
      { x: 8 * k, y: 30, bulge: 0 },
      ...(k === 0 ? [] : [{ x: 8 * k, y: 0, bulge: 0 }]),
    );
  }
  points.push({ x: 0, y: -20, bulge: 0 });
  return { closed: true, points };
}

/** A band 6 mm wide wound six times round with 6 mm between, of half circles, with round ends. */
export function spiral(): Path {
  const turns = 12;
  const places = Array.from({ length: turns + 1 }, (_, k) => {
    return { x: k % 2 === 0 ? 10 + 6 * k : -(10 + 6 * k) + 6, bulge: 1 };
  });
  const outside = places.map(({ x }, k) => ({ x: x + 3 * Math.sign(x), y: 0, bulge: k === turns ? 1 : 1 }));
  const inside = places.map(({ x }, k) => ({ x: x - 3 * Math.sign(x), y: 0, bulge: k === 0 ? 1 : -1 }));
  return { closed: true, points: [...outside, ...inside.reverse()] };
}
