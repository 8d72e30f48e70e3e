import type { Path } from "../../../src/geometry/path.ts";
import { upright } from "../../../src/geometry/solid/frame.ts";
import type { Section, Solid } from "../../../src/geometry/solid/solid.ts";

/** A closed path of straight edges. */
export function polygon(...places: [number, number][]): Path {
  return { closed: true, points: places.map(([x, y]) => ({ x, y, bulge: 0 })) };
}

/** A circle round (x, y). */
export function circle(radius: number, x = 0, y = 0): Path {
  return {
    closed: true,
    points: [
      { x: x + radius, y, bulge: 1 },
      { x: x - radius, y, bulge: 1 },
    ],
  };
}

/** A rectangle from the origin. */
export function rectangle(width: number, height: number): Path {
  return polygon([0, 0], [width, 0], [width, height], [0, height]);
}

/** A path raised from z = 0. */
export function raised(outer: Path, height: number, holes: Path[] = []): Solid {
  return { kind: "extrude", outlines: [{ outer, holes }], height };
}

/** A section square to z. */
export function sectionAt(z: number, path: Path): Section {
  return { kind: "path", path, frame: { ...upright, origin: { x: 0, y: 0, z } } };
}

/** A solid moved. */
export function moved(solid: Solid, x: number, y: number, z: number): Solid {
  return { kind: "place", solid, frame: { ...upright, origin: { x, y, z } } };
}

/** A rounded rectangle round the origin. */
export function rounded(width: number, height: number, radius: number): Path {
  const [x, y, q] = [width / 2, height / 2, Math.tan(Math.PI / 8)];
  return {
    closed: true,
    points: [
      { x: x - radius, y: -y, bulge: q },
      { x, y: radius - y, bulge: 0 },
      { x, y: y - radius, bulge: q },
      { x: x - radius, y, bulge: 0 },
      { x: radius - x, y, bulge: q },
      { x: -x, y: y - radius, bulge: 0 },
      { x: -x, y: radius - y, bulge: q },
      { x: radius - x, y: -y, bulge: 0 },
    ],
  };
}

/** Named solids, each with its volume from the books (mm³). */
export const known: readonly { name: string; solid: Solid; volume: number }[] = [
  { name: "box", solid: raised(rectangle(30, 20), 10), volume: 6000 },
  { name: "cylinder", solid: raised(circle(5), 12), volume: Math.PI * 25 * 12 },
  { name: "tube", solid: raised(circle(8), 12, [circle(5)]), volume: Math.PI * 39 * 12 },
  { name: "wedge", solid: raised(polygon([0, 0], [40, 0], [40, 6]), 25), volume: 3000 },
  {
    name: "cone",
    solid: {
      kind: "loft",
      sections: [sectionAt(0, circle(9)), { kind: "point", at: { x: 0, y: 0, z: 20 } }],
    },
    volume: (Math.PI * 81 * 20) / 3,
  },
  {
    name: "cone upside down",
    solid: {
      kind: "loft",
      sections: [{ kind: "point", at: { x: 1, y: 2, z: -20 } }, sectionAt(0, circle(9))],
    },
    volume: (Math.PI * 81 * 20) / 3,
  },
  {
    name: "loft from a circle to a smaller one",
    solid: { kind: "loft", sections: [sectionAt(0, circle(12)), sectionAt(30, circle(6, 3, 0))] },
    volume: (Math.PI * 30 * (144 + 72 + 36)) / 3,
  },
  {
    name: "loft from a rectangle to another, twice",
    solid: {
      kind: "loft",
      sections: [
        sectionAt(0, rectangle(20, 10)),
        sectionAt(-15, rectangle(40, 12)),
        sectionAt(-25, rectangle(10, 5)),
      ],
    },
    volume: (15 / 6) * (200 + 480 + 4 * 30 * 11) + (10 / 6) * (480 + 50 + 4 * 25 * 8.5),
  },
  {
    name: "loft twisted by a right angle",
    solid: {
      kind: "loft",
      sections: [
        sectionAt(0, polygon([10, 0], [0, 10], [-10, 0], [0, -10])),
        sectionAt(30, polygon([0, 10], [-10, 0], [0, -10], [10, 0])),
      ],
    },
    // The section at a share t is the square of (1 - t) p + t p turned: its area is ((1 - t)² + t²) 200.
    volume: 30 * 200 * (2 / 3),
  },
  {
    name: "bevelled block",
    solid: {
      ...(raised(rectangle(30, 20), 10) as Extract<Solid, { kind: "extrude" }>),
      top: { kind: "bevel", inward: 2, down: 3 },
    },
    volume: 600 * 7 + (3 / 6) * (600 + 26 * 16 + 4 * 28 * 18),
  },
  {
    name: "block rounded above and bevelled below",
    solid: {
      ...(raised(rectangle(30, 20), 10) as Extract<Solid, { kind: "extrude" }>),
      top: { kind: "round", radius: 4 },
      bottom: { kind: "bevel", inward: 1, down: 1 },
    },
    // Area inset by d: 600 - 100 d + 4 d². Rounded: r A - L r² (1 - pi/4) + 4 r³ (5/3 - pi/2).
    volume:
      600 * 5 +
      (4 * 600 - 100 * 16 * (1 - Math.PI / 4) + 4 * 64 * (5 / 3 - Math.PI / 2)) +
      (1 / 6) * (600 + 28 * 18 + 4 * 29 * 19),
  },
  {
    name: "disc rounded above",
    solid: {
      ...(raised(circle(20), 9) as Extract<Solid, { kind: "extrude" }>),
      top: { kind: "round", radius: 5 },
    },
    // Pappus: a cylinder less the ring between a square and a quarter circle.
    volume:
      Math.PI * 400 * 9 -
      2 * Math.PI * ((1 - Math.PI / 4) * 25) * (20 - 5 + (5 * (1 / 2 - 1 / 3)) / (1 - Math.PI / 4)),
  },
  {
    name: "plate with a recess and a bore",
    solid: {
      kind: "cut",
      from: raised(rounded(60, 40, 8), 12),
      by: [moved(raised(rectangle(20, 10), 4), -10, -5, 8), moved(raised(circle(3), 12), 20, 10, 0)],
    },
    volume: (2400 - 64 * (4 - Math.PI)) * 12 - 800 - Math.PI * 9 * 12,
  },
];
