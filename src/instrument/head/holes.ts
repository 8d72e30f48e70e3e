import { step } from "../../step/step.ts";
import { lowerTo, raiseTo, type Wall } from "../wall.ts";
import { parting, type Standing } from "./parting.ts";
import type { Tuners } from "./tuners.ts";

/** A peg's taper: its diameter grows by a thirtieth of its length toward the back of the head, where it goes in. */
export const pegTaper = 1 / 30;

/** Diameters of a tuner's hole at the head's face and at its back, mm; but for pegs they are the same. */
export function holeAt(
  kind: Tuners["kind"],
  face: number,
  thickness: number,
): { face: number; back: number } {
  return { face, back: kind === "pegs" ? face + thickness * pegTaper : face };
}

/** The head with its holes, `hole` wide at its face and `widest` where they are widest, and the least wood wanted round them, mm. */
export type HoleWallsInput = {
  readonly tuners: Standing;
  readonly hole: number;
  readonly widest: number;
  readonly margin: number;
  readonly row: number;
  readonly edge: number;
  readonly corner: number;
  readonly wall: number;
};

/**
 * The wood that is left between the tuners' holes, and from them to the head's sides, its end with the rounded corners, and
 * the nut. The sides are taken as straight: where the shoulders narrow them, no hole may stand (headAtOdds).
 */
export const holeWalls = step("head.hole-walls", 1, (given: HoleWallsInput): readonly Wall[] => {
  const { tuners, hole, widest, row, wall } = given;
  const all = tuners.tuners;
  const pairs = all.flatMap((a, i) =>
    all.slice(i + 1).map((b, k): Wall => {
      const [left, apart] = [Math.hypot(a.along - b.along, a.y - b.y) - widest, widest + wall];
      return {
        ...{ left, between: `the holes of strings ${i + 1} and ${i + k + 2}` },
        ...parting({
          kind: tuners.kind,
          a,
          b,
          row,
          apart,
          size: { id: "tuner.hole", value: hole - wall + left },
        }),
      };
    }),
  );
  return [...pairs, ...all.flatMap((tuner, i) => edges(given, tuner, `the hole of string ${i + 1}`))];
});

function edges(
  { tuners: { half, length }, widest, margin, edge, corner, wall }: HoleWallsInput,
  { along, y }: Standing["tuners"][number],
  name: string,
): Wall[] {
  const radius = widest / 2;
  const toEdge = (what: string, id: string, value: number, left: number): Wall => ({
    ...{
      left,
      between: `${name} and ${what}`,
      ids: [id, "tuner.hole"],
      mend: raiseTo(id, value + wall - left),
    },
  });
  const [side, end] = [half - Math.abs(y) - radius, length - along - radius];
  const [inX, inY] = [along - (length - corner), Math.abs(y) - (half - corner)];
  const round = corner - Math.hypot(inX, inY) - radius;
  return [
    toEdge("the head's side", "head.edge", edge, side),
    toEdge("the head's end", "head.margin", margin, end),
    toEdge("the nut", "head.margin", margin, along - radius),
    ...(inX > 0 && inY > 0
      ? [
          {
            ...{
              left: round,
              between: `${name} and a corner of the head`,
              ids: ["head.corner", "tuner.hole"],
            },
            mend: lowerTo("head.corner", roundest(corner, inX, inY, radius + wall)),
          },
        ]
      : []),
  ];
}

/** The largest corner that leaves so much round a hole: the corner's centre moves out with it along the diagonal. */
function roundest(corner: number, inX: number, inY: number, wanted: number): number {
  // With r the corner and (a, b) the hole's distances from end and side, r - hypot(r - a, r - b) = wanted.
  const [a, b] = [corner - inX, corner - inY];
  const sum = a + b - wanted;
  return Math.max(0, sum + Math.sqrt(Math.max(0, sum * sum - (a * a + b * b - wanted * wanted))));
}
