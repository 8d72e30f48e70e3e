import type { Path, PathPoint } from "../../geometry/path.ts";
import { pointOn } from "../../geometry/path-measures/segment-places.ts";
import { segmentLength, segmentsOf } from "../../geometry/segment.ts";
import type { HardPlace } from "./hard-places.ts";

/** How far past a hard place's ends it is counted to it, mm. */
const past = 0.01;

/** The stretches of an open run outside of its hard places, arcs kept, in order: what the cutter has to bring out. */
export function reachedStretches(run: Path, places: readonly Pick<HardPlace, "from" | "to">[]): Path[] {
  const without = places.map(({ from, to }) => [from - past, to + past] as const);
  const stretches: PathPoint[][] = [];
  let before = 0;
  let running = false;
  for (const segment of segmentsOf(run)) {
    const length = segmentLength(segment);
    if (length === 0) continue;
    const ends = without.flat().map((along) => (along - before) / length);
    const shares = [0, ...ends.filter((share) => share > 0 && share < 1).sort((a, b) => a - b), 1];
    for (const [i, to] of shares.slice(1).entries()) {
      const from = shares[i]!;
      const middle = before + (length * (from + to)) / 2;
      const out = without.every(([low, high]) => middle < low || middle > high);
      if (out) {
        const bulge = segment.kind === "arc" ? Math.tan((segment.sweep * (to - from)) / 4) : 0;
        const [a, b] = [pointOn(segment, from), pointOn(segment, to)];
        if (!running) stretches.push([]);
        else stretches.at(-1)!.pop();
        stretches.at(-1)!.push({ x: a.x, y: a.y, bulge }, { x: b.x, y: b.y, bulge: 0 });
      }
      running = out;
    }
    before += length;
  }
  return stretches.map((points) => ({ closed: false, points }));
}
