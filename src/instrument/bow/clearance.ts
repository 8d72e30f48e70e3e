import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import { type Hair, skewed, type UnderHair, underHair } from "./hair.ts";

/** A flat piece of a finished surface: its corners in order, mm. A curved outline is given by its facets' corners. */
export type Surface = readonly Vec3[];

/**
 * Where a bow plays an outer string, mm: the hair's plane there, the stretch along the string that the hair's band keeps within, by
 * x from the nut, the surfaces under it, and the board's corner on that side.
 */
export type ClearanceInput = {
  readonly hair: Hair;
  readonly from: number;
  readonly to: number;
  readonly surfaces: readonly Surface[];
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
export const bowClearance = step("bow.clearance", 1, (given: ClearanceInput): Clearance => {
  const { hair, corner } = given;
  const surface = Math.min(least(given, hair.tilt), nothingUnder);
  return { surface, board: underHair(hair)(corner).below, room: roomOf(given) };
});

/** The least distance from the hair at some tilt to what is under it, mm; infinite where nothing is. */
function least(given: ClearanceInput, tilt: number): number {
  return leastOf(given, tilt, ({ below }) => below);
}

/** The least of a measure of places at the corners of what lies under the hair at some tilt; infinite where nothing does. */
function leastOf(
  { hair, from, to, surfaces }: ClearanceInput,
  tilt: number,
  measure: (place: UnderHair) => number,
): number {
  const plane = { ...hair, tilt };
  const under = underHair(plane);
  const limits = skews.map((skew) => {
    const slant = skewed(plane, skew);
    return [
      ({ along, out }: UnderHair) => along - slant * out - from,
      ({ along, out }: UnderHair) => to - along + slant * out,
    ];
  });
  let found = Number.POSITIVE_INFINITY;
  for (const surface of surfaces) {
    const beside = cutDown(surface.map(under), ({ out }) => out);
    for (const ends of limits) {
      for (const place of ends.reduce(cutDown, beside)) found = Math.min(found, measure(place));
    }
  }
  return found;
}

/** What of a flat surface lies where `within` is not negative: its corners there, and where its edges leave. */
function cutDown(surface: readonly UnderHair[], within: (place: UnderHair) => number): UnderHair[] {
  const kept: UnderHair[] = [];
  let before = surface.at(-1);
  if (before === undefined) return kept;
  let a = within(before);
  for (const place of surface) {
    const b = within(place);
    if (a < 0 !== b < 0) kept.push(between(before, place, a / (a - b)));
    if (b >= 0) kept.push(place);
    [before, a] = [place, b];
  }
  return kept;
}

function between(a: UnderHair, b: UnderHair, share: number): UnderHair {
  const at = (of: keyof UnderHair) => a[of] + (b[of] - a[of]) * share;
  return { along: at("along"), out: at("out"), below: at("below") };
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
  if (least(given, tilt) <= 0) return 0;
  let turned = tilt;
  for (let i = 0; i < close.turns; i++) {
    const more = leastOf(given, turned, ({ below, out }) => (Math.atan2(below, out) * 180) / Math.PI);
    if (turned + more > onEdge) return onEdge - tilt;
    turned += more;
    if (Math.abs(more) < close.degrees) break;
  }
  return turned - tilt;
}
