import { tolerance } from "../../geometry/tolerance.ts";
import type { ProfilePlace } from "./profile.ts";

/** How far straight walls may stray from the neck between two of its places, mm: a fifth of what a hand holds. */
const straying = 2 * tolerance.chord;

/** Two places nearer than this are not told apart, mm. */
const nearest = 0.05;

/**
 * The neck's places from x = `from` to `to`, so near each other that straight walls between their sections stray by no
 * more than `straying`, as far as three places between any two show. The places named in `also` are among them.
 */
export function profilePlaces(
  at: (x: number) => ProfilePlace,
  from: number,
  to: number,
  also: readonly number[],
): readonly ProfilePlace[] {
  const pinned = [from, to, ...also.filter((x) => x > from && x < to)].sort((a, b) => a - b);
  const places = [...new Set(pinned)].map(at);
  return places.flatMap((place, i) => {
    const next = places[i + 1];
    return next === undefined ? [place] : [place, ...between(at, place, next)];
  });
}

/** The places that must stand between two, in order. */
function between(at: (x: number) => ProfilePlace, a: ProfilePlace, b: ProfilePlace): ProfilePlace[] {
  const probes = [0.3, 0.5, 0.7].map((share) => ({
    share,
    place: at(a.x + share * (b.x - a.x)),
  }));
  if (b.x - a.x < 2 * nearest || probes.every(({ share, place }) => strays(a, b, share, place) < straying))
    return [];
  const middle = probes[1]!.place;
  return [...between(at, a, middle), middle, ...between(at, middle, b)];
}

/** How far a place's section strays from the straight wall between two others, mm: at its edges, its back, its shoulders. */
function strays(a: ProfilePlace, b: ProfilePlace, share: number, place: ProfilePlace): number {
  const off = (of: (place: ProfilePlace) => number) => Math.abs(of(place) - of(a) - share * (of(b) - of(a)));
  return Math.max(
    off(({ form }) => form.half),
    off(({ top, form }) => top - form.depth),
    // From a half ellipse's shoulder to its box's corner it is less than a third of the box's half diagonal.
    off(
      ({ form }) =>
        0.3 * Math.hypot(form.half, form.depth) * (form.square + (1 - form.square) * form.fullness),
    ),
  );
}
