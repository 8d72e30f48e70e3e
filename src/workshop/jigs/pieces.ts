import type { Piece } from "./piece.ts";

/** A stretch of a jig where it can't be cut apart, mm. */
export type Stretch = { readonly from: number; readonly to: number };

/**
 * The pieces of a jig between two places along x, each, with the dovetail that reaches `reach` past its end, at most `most` long: as few and as
 * even as that and the stretches where it can't be cut allow; mm. Null where no number of pieces will do.
 */
export function piecesOf(
  { from, to }: Stretch,
  most: number,
  reach: number,
  uncut: readonly Stretch[] = [],
): readonly Piece[] | null {
  const length = to - from;
  if (length <= most) return [{ from: null, to: null, number: 1, of: 1 }];
  if (most <= 2 * reach) return null;
  const least = Math.ceil((length - reach) / (most - reach));
  for (let count = least; count <= 2 * least; count++) {
    const cuts = Array.from({ length: count - 1 }, (_, i) =>
      nearest(from + (length * (i + 1)) / count, uncut),
    );
    const ends = [from, ...cuts, to];
    const fits =
      cuts.every((cut) => cut > from && cut < to) &&
      ends.every((end, i) => fitting(ends, i, most, reach, end));
    if (fits) return cutAt(cuts);
  }
  return null;
}

function fitting(ends: readonly number[], i: number, most: number, reach: number, end: number): boolean {
  const next = ends[i + 1];
  if (next === undefined) return true;
  return next - end > reach && next - end + (i + 2 < ends.length ? reach : 0) <= most;
}

function cutAt(cuts: readonly number[]): Piece[] {
  return [null, ...cuts].map((from, i) => ({
    ...{ from, to: cuts[i] ?? null },
    ...{ number: i + 1, of: cuts.length + 1 },
  }));
}

/** The place nearest to `x` that lies in none of the stretches. */
function nearest(x: number, uncut: readonly Stretch[]): number {
  const within = (place: number) => uncut.some(({ from, to }) => place > from && place < to);
  const places = [x, ...uncut.flatMap(({ from, to }) => [from, to])].filter((place) => !within(place));
  return places.reduce((best, next) => (Math.abs(next - x) < Math.abs(best - x) ? next : best));
}
