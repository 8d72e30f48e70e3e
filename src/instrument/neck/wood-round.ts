import { ordinatesAt } from "../../geometry/path-measures/ordinates-at.ts";
import { distanceTo } from "../../geometry/path-measures/segment-places.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import type { ProfilePlace } from "./profile.ts";
import { trebleSide } from "./section.ts";

/**
 * Something sunk from z = 0, mm: a channel with round ends, from `start` on `length` long, its middle at `y`; a round hole is
 * one as long as it is wide.
 */
export type Sunk = {
  readonly y: number;
  readonly width: number;
  readonly depth: number;
  readonly start: number;
  readonly length: number;
};

/** The neck along something sunk: each place, and half the width of what is sunk there, mm. */
export type SunkPlace = { readonly place: ProfilePlace; readonly half: number };

/** How far apart the neck is looked at along something sunk, mm, at least in so many steps, and nearer where it is thinnest. */
const apart = { at: 4, steps: 16, nearer: 0.5 };

function placeAt(at: (x: number) => ProfilePlace, { width, start, length }: Sunk, along: number): SunkPlace {
  const radius = width / 2;
  const off = Math.max(radius - along, radius - (length - along), 0);
  return { place: at(start + along), half: Math.sqrt(Math.max(0, radius * radius - off * off)) };
}

/** The places of the neck along something sunk in it, in order: its two ends, and near each other round the thinnest. */
export function placesAlong(at: (x: number) => ProfilePlace, sunk: Sunk): SunkPlace[] {
  const steps = Math.max(apart.steps, Math.ceil(sunk.length / apart.at));
  const step = sunk.length / steps;
  const wide = Array.from({ length: steps + 1 }, (_, i) => placeAt(at, sunk, i * step));
  const woods = wide.map((place) => woodAt(place, sunk));
  const thinnest = woods.indexOf(Math.min(...woods));
  const nearer = Math.ceil(step / apart.nearer);
  const between = (from: number) =>
    Array.from({ length: nearer - 1 }, (_, i) => placeAt(at, sunk, (from + (i + 1) / nearer) * step));
  return wide.flatMap((place, i) => [
    place,
    ...(i < steps && (i === thinnest || i === thinnest - 1) ? between(i) : []),
  ]);
}

/**
 * The least wood under and beside what is sunk, in the neck's section there, mm: negative where it reaches out of the wood.
 * `depth` may stand in place of its own, `thicker` adds to the neck.
 *
 * A section is convex and as wide as anywhere at its flat top, so the wood is least at the bottom edge that lies outward.
 */
export function woodAt(
  { place, half }: SunkPlace,
  { y, depth }: Pick<Sunk, "y" | "depth">,
  thicker = 0,
): number {
  const { form } = place;
  const side = segmentsOf(trebleSide({ ...form, depth: form.depth + thicker }));
  const corner = { x: Math.abs(y) + half, y: -depth };
  const beside = form.half - corner.x;
  const back = ordinatesAt(side, corner.x)[0];
  const nearest = distanceTo(side, corner);
  return Math.min(beside, back === undefined || back > corner.y ? -nearest : nearest);
}
