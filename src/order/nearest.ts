import { distance } from "fastest-levenshtein";

/**
 * The known name nearest to a mistyped one, or nothing when none is near: at most a third of its letters, and two at
 * least, may differ. The first of equals wins.
 */
export function nearest(name: string, known: readonly string[]): string | undefined {
  const limit = Math.max(2, Math.floor(name.length / 3));
  let best: string | undefined;
  let least = limit + 1;
  for (const candidate of known) {
    const apart = distance(name.toLowerCase(), candidate.toLowerCase());
    if (apart < least) [best, least] = [candidate, apart];
  }
  return best;
}

/** The hint for a mistyped name: the nearest known one, or else where the names are listed. */
export function didYouMean(name: string, known: readonly string[], otherwise = ""): string {
  const near = nearest(name, known);
  return near === undefined ? otherwise : `did you mean ${near}?`;
}
