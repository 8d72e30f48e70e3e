import type { PathPoint } from "../../geometry/path.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import { lettered, letteringSize } from "./lettered.ts";
import type { Piece } from "./piece.ts";

/**
 * A plate with a notch at each string in its lower edge, mm. The edge is straight where `crown` is null, or a hollow of that radius whose top lies on
 * `middle`; `ends` are where the nut or the crown ends across, on the treble side and on the bass side, and the plate ends `beyond` outside of them: with legs
 * down beside the wood where `legs` is more than 0. `strings` run from the treble side. `mirrored` is of a left-hand order.
 */
export type NotchGaugeInput = {
  readonly strings: readonly number[];
  readonly crown: { readonly radius: number; readonly middle: number } | null;
  readonly ends: { readonly treble: number; readonly bass: number };
  readonly legs: number;
  readonly beyond: number;
  readonly thickness: number;
  readonly mirrored: boolean;
  readonly lines: readonly string[];
  readonly piece: Piece;
};

/** A notch's depth and how wide it is at the edge: 60 degrees, so that a pencil's point finds the middle; mm (G). */
const notch = { deep: 2, wide: 2.4 };

/** What lies over the notches before the lettering, and round it, mm (G). */
const [above, over] = [3, 2];

/** How far the plate reaches across, how low and how high, mm, from the hollow's top. */
export function notchGaugeBox(given: Omit<NotchGaugeInput, "piece">): {
  treble: number;
  bass: number;
  low: number;
  top: number;
} {
  const { ends, beyond, legs, lines } = given;
  const size = letteringSize(lines);
  const middle = (ends.treble + ends.bass) / 2;
  const wide = Math.max((ends.treble - ends.bass) / 2 + beyond, size.width / 2 + over);
  const low = Math.min(edgeAt(given, ends.treble), edgeAt(given, ends.bass)) - legs;
  const top = notch.deep + above + size.height + over;
  return { treble: middle + wide, bass: middle - wide, low, top };
}

/** How high the edge lies at a place across, mm: on the hollow's circle, or on y = 0. */
function edgeAt({ crown }: Pick<NotchGaugeInput, "crown">, y: number): number {
  if (crown === null) return 0;
  return Math.sqrt(crown.radius ** 2 - (y - crown.middle) ** 2) - crown.radius;
}

/**
 * A gauge for where the strings lie on a nut or a bridge, looked at from the tail: across along x, the treble side right; the letters look to the tail.
 * Of a left-hand order the edge is the other way round and the letters aren't.
 */
export const notchGauge = step("jig.notches", 1, (given: NotchGaugeInput): Solid => {
  const { thickness, mirrored, lines, ends } = given;
  const { treble, bass, low, top } = notchGaugeBox(given);
  const edge = edgeOf(given);
  const sides = [...sideOf(given, bass, ends.bass, low), ...edge];
  const other = sideOf(given, treble, ends.treble, low).reverse();
  const points = [...sides, ...other, at(treble, top), at(bass, top)];
  const turned = mirrored ? points.map((point, i) => mirror(point, points.at(i - 1)!)).reverse() : points;
  const plate: Solid = {
    ...{ kind: "extrude", height: thickness },
    outlines: [{ outer: { closed: true, points: turned }, holes: [] }],
  };
  const middle = ((ends.treble + ends.bass) / 2) * (mirrored ? -1 : 1);
  return lettered(plate, { lines, x: middle, y: top - over, z: thickness });
});

/** From the plate's side to its notched edge: round a leg, or in to where the crown ends and its shoulder is over that; nothing where the two are one. */
function sideOf({ legs }: NotchGaugeInput, side: number, end: number, low: number): PathPoint[] {
  if (legs > 0) return [at(side, low), at(end, low)];
  const shoulder = notch.deep + above;
  return side === end ? [] : [at(side, shoulder), at(end, shoulder)];
}

function at(x: number, y: number): PathPoint {
  return { x, y, bulge: 0 };
}

/** A point on the other side: read backwards, its segment is the one that led to it. */
function mirror({ x, y }: PathPoint, { bulge }: PathPoint): PathPoint {
  return { x: -x, y, bulge };
}

/** The notched edge from the bass end to the treble end: arcs between the notches where there is a hollow. */
function edgeOf(given: NotchGaugeInput): PathPoint[] {
  const { ends, crown, strings } = given;
  const half = notch.wide / 2;
  const places = strings.toReversed().map((y) => ({ from: y - half, y, to: y + half }));
  const edge: PathPoint[] = [];
  let from = ends.bass;
  for (const { from: begin, y, to } of places) {
    edge.push(alongEdge(given, from, begin), at(begin, edgeAt(given, begin)));
    edge.push(at(y, edgeAt(given, y) + notch.deep));
    from = to;
  }
  return crown === null
    ? [...edge, at(from, 0), at(ends.treble, 0)]
    : [...edge, alongEdge(given, from, ends.treble), at(ends.treble, edgeAt(given, ends.treble))];
}

function alongEdge(given: NotchGaugeInput, from: number, to: number): PathPoint {
  const point = at(from, edgeAt(given, from));
  if (given.crown === null) return point;
  const { radius, middle } = given.crown;
  const sweep = Math.asin((from - middle) / radius) - Math.asin((to - middle) / radius);
  return { ...point, bulge: Math.tan(sweep / 4) };
}
