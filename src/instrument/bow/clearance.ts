import { cutPolygon } from "../../geometry/cut-polygon.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import type { Strip } from "../eased-top.ts";
import { type Hair, skewed, type UnderHair, underHair } from "./hair.ts";

/**
 * Where a bow plays an outer string, mm: the hair's plane there, the stretch along the string that the hair's band keeps within, by
 * x from the nut, the finished surfaces under it (flat ones by their corners, and strips of facets), and the board's corner on that side.
 */
export type ClearanceInput = {
  readonly hair: Hair;
  readonly from: number;
  readonly to: number;
  readonly surfaces: { readonly flats: readonly (readonly Vec3[])[]; readonly strips: readonly Strip[] };
  readonly corner: Vec3;
};

/**
 * What is left under the hair: `surface` and `board` are the least distances square to its plane to the surfaces and to the board's
 * corner, mm; `room` how much further the bow tilts about the string before it touches a surface, degrees.
 */
export type Clearance = { readonly surface: number; readonly board: number; readonly room: number };

/** How a bow is skewed in plan, degrees. */
const skews = [-8, 0, 8] as const;

/** What is told where no surface lies under the hair at all, mm. */
const nothingUnder = 200;

/** A bow on edge, degrees: further than any bow is tilted, and as far as is looked. */
const onEdge = 90;

/**
 * The clearance of a hair band that lies flat on an outer string, from its centre outward, in any place along it and straight or skewed by
 * 8 degrees either way. Flat surfaces are cut down to what lies under the band, and their corners tell the least distance.
 *
 * The board's corner is told as a sharp place, whether or not the band is over it just then; on a lowest string's side, where there is
 * more room, the arch between comes nearer by up to 0.6. A surface of an outline with hollows may be taken a little too near,
 * never too far.
 */
export const bowClearance = step("bow.clearance", 2, (given: ClearanceInput): Clearance => {
  const { hair, corner } = given;
  const surface = Math.min(leastOf(given, hair.tilt, distance), nothingUnder);
  return { surface, board: underHair(hair)(corner).below, room: roomOf(given) };
});

/**
 * What is asked of a place under the hair, and the least that it can be anywhere in a piece: there nothing is further out than `outmost`, nor nearer to
 * the hair's plane than `nearest`.
 */
type Measure = {
  readonly of: (place: UnderHair) => number;
  readonly atLeast: (nearest: number, outmost: number) => number;
};

const distance: Measure = { of: ({ below }) => below, atLeast: (nearest) => nearest };

/** By how much the hair turns about the string to meet a place, degrees. */
const turn: Measure = {
  of: ({ below, out }) => (Math.atan2(below, out) * 180) / Math.PI,
  atLeast: (nearest, outmost) =>
    nearest < 0 ? Number.NEGATIVE_INFINITY : (Math.atan2(nearest, outmost) * 180) / Math.PI,
};

/** A piece of a surface as the hair sees it, and the least that is asked of it. */
type Piece = { readonly corners: readonly UnderHair[]; readonly atLeast: number };

/**
 * The least of a measure of what lies under the hair at some tilt; infinite where nothing does. Pieces are looked at in the order of the least that they
 * can give, so that most are never cut down.
 */
function leastOf({ hair, from, to, surfaces }: ClearanceInput, tilt: number, measure: Measure): number {
  const plane = { ...hair, tilt };
  const under = underHair(plane);
  const limits = skews.map((skew): Limit[] => {
    const slant = skewed(plane, skew);
    return [
      { along: 1, out: -slant, beyond: -from },
      { along: -1, out: slant, beyond: to },
    ];
  });
  const pieces: Piece[] = [];
  const add = (...corners: UnderHair[]) => {
    let [nearest, outmost] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const { below, out } of corners) {
      if (below < nearest) nearest = below;
      if (out > outmost) outmost = out;
    }
    if (outmost >= 0) pieces.push({ corners, atLeast: measure.atLeast(nearest, outmost) });
  };
  for (const flat of surfaces.flats) add(...flat.map(under));
  for (const strip of surfaces.strips) {
    let before: UnderHair[] | null = null;
    for (const line of strip) {
      const seen = line.map(under);
      if (before !== null)
        for (let i = 1; i < seen.length; i++) add(before[i - 1]!, before[i]!, seen[i]!, seen[i - 1]!);
      before = seen;
    }
  }
  pieces.sort((a, b) => a.atLeast - b.atLeast);
  let found = Number.POSITIVE_INFINITY;
  for (const { corners, atLeast } of pieces) {
    if (atLeast >= found) break;
    const beside = cutDown(corners, outward);
    for (const ends of limits)
      for (const place of ends.reduce(cutDown, beside)) found = Math.min(found, measure.of(place));
  }
  return found;
}

/** A side of the band, mm: what is under it has `along * along + out * out + beyond` of 0 or more. */
type Limit = { readonly along: number; readonly out: number; readonly beyond: number };

/** From the string's centre outward. */
const outward: Limit = { along: 0, out: 1, beyond: 0 };

/** What of a flat surface lies within a limit. */
function cutDown(surface: readonly UnderHair[], { along, out, beyond }: Limit): readonly UnderHair[] {
  return cutPolygon(surface, (place) => along * place.along + out * place.out + beyond, between);
}

function between(a: UnderHair, b: UnderHair, share: number): UnderHair {
  return {
    along: a.along + (b.along - a.along) * share,
    out: a.out + (b.out - a.out) * share,
    below: a.below + (b.below - a.below) * share,
  };
}

/** How closely the touching tilt is looked for, degrees, and in how many turns at most. */
const close = { degrees: 1e-3, turns: 40 } as const;

/**
 * By how many degrees more the bow tilts until it touches; none where it stands through already. At any tilt each place under the hair says by how
 * much the hair would turn about the string to meet it; the band moves a little over the surfaces as it turns, so the least of these is taken again
 * until nothing is left.
 */
function roomOf(given: ClearanceInput): number {
  const { tilt } = given.hair;
  if (leastOf(given, tilt, distance) <= 0) return 0;
  let turned = tilt;
  for (let i = 0; i < close.turns; i++) {
    const more = leastOf(given, turned, turn);
    if (turned + more > onEdge) return onEdge - tilt;
    turned += more;
    if (Math.abs(more) < close.degrees) break;
  }
  return turned - tilt;
}
