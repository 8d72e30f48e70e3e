import { fairCurve } from "../../../src/geometry/fair/fair-curve.ts";
import { fairPath } from "../../../src/geometry/fair/fair-path.ts";
import type { Path } from "../../../src/geometry/path.ts";
import { bore } from "../../../src/geometry/solid/bore.ts";
import { upright } from "../../../src/geometry/solid/frame.ts";
import { recess } from "../../../src/geometry/solid/recess.ts";
import type { Section, Solid } from "../../../src/geometry/solid/solid.ts";
import { circle, moved, raised, rectangle, rounded } from "./recipes.ts";

/** The outline of a wing: a straight joint, a fair rim, rounded corners between. */
export function wingOutline(): Path {
  const rim: [number, number][] = [
    [15, 9],
    [30, 18],
    [50, 38],
    [80, 58],
    [110, 56],
    [130, 44],
  ];
  const curve = fairCurve(
    [
      { x: 0, y: -5, corner: 0 },
      { x: 140, y: -5, corner: 0 },
      { x: 140, y: 28, corner: 4 },
      ...rim.reverse().map(([x, y]) => ({ x, y })),
      { x: 0, y: 5, corner: 2 },
    ],
    { closed: true },
  );
  if (curve.kind !== "ok") throw new Error(curve.problem);
  const path = fairPath(curve.curve);
  if (path.kind !== "ok") throw new Error(path.kind);
  return path.path;
}

const angle = (12 * Math.PI) / 180;

/** A slant: turned by 12 degrees about x, then moved. */
const slanted = {
  origin: { x: 40, y: 17.5, z: -3 },
  u: { x: 1, y: 0, z: 0 },
  v: { x: 0, y: Math.cos(angle), z: -Math.sin(angle) },
  w: { x: 0, y: Math.sin(angle), z: Math.cos(angle) },
};

const wing: Solid = {
  kind: "place",
  frame: slanted,
  solid: {
    kind: "extrude",
    outlines: [{ outer: wingOutline(), holes: [circle(4, 40, 10), circle(6, 90, 30)] }],
    base: -22,
    height: 22,
    top: { kind: "round", radius: 1.5 },
    bottom: { kind: "bevel", inward: 1, down: 1 },
  },
};

function neckSection(x: number, width: number, depth: number): Section {
  const path = rounded(width, depth, depth / 2.2);
  const frame = { origin: { x, y: 0, z: -depth / 2 }, u: upright.v, v: upright.w, w: upright.u };
  return { kind: "path", path, frame };
}

const neck: Solid = {
  kind: "loft",
  sections: [
    neckSection(-5, 24, 16),
    neckSection(60, 27, 18),
    neckSection(130, 32, 21),
    neckSection(140, 38, 30),
  ],
};

/** Solids of the kind that the program is for: slanting, holed, hollowed, joined. */
export const parts: readonly { readonly name: string; readonly solid: Solid }[] = [
  { name: "wing with treated edges, on a slant", solid: wing },
  { name: "neck of four sections", solid: neck },
  {
    name: "neck and wing joined, with bores and a recess",
    solid: bore(
      recess(
        { kind: "union", solids: [neck, wing] },
        [{ outer: rounded(30, 12, 3), holes: [] }],
        { ...upright, origin: { x: 60, y: 0, z: 0 } },
        8,
      ),
      { origin: { x: 140, y: 0, z: -15 }, u: upright.v, v: upright.w, w: upright.u },
      8,
      60,
    ),
  },
  {
    name: "plate with forty holes",
    solid: {
      kind: "cut",
      from: raised(rounded(200, 120, 12), 6),
      by: Array.from({ length: 40 }, (_, i) =>
        moved(raised(circle(4), 6), -88 + 19 * (i % 10), -42 + 28 * Math.floor(i / 10), 0),
      ),
    },
  },
  {
    name: "blocks that touch along a face, an edge's length apart",
    solid: {
      kind: "union",
      solids: [raised(rectangle(30, 20), 10), moved(raised(rectangle(30, 20), 10), 30, 5, 0)],
    },
  },
  {
    name: "two separate blocks",
    solid: {
      kind: "union",
      solids: [raised(rectangle(30, 20), 10), moved(raised(circle(9), 10), 300, 5, 0)],
    },
  },
];
