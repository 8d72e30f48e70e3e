import type { Path, PathPoint } from "./path.ts";
import { type Arc, segmentsOf } from "./segment.ts";
import { tolerance } from "./tolerance.ts";

/**
 * A path with its arcs replaced by chords that stray from them by at most `chord` (mm; less than `tolerance.exact` is
 * taken as that), as few and as even as that takes. The points of the path are points of the result, exactly; the
 * chords of an arc lie on its inner side. A path of lines comes back as it is.
 */
export function facet(path: Path, chord: number): Path {
  const segments = segmentsOf(path);
  if (segments.every(({ kind }) => kind === "line")) return path;
  const points: PathPoint[] = [];
  for (const segment of segments) {
    points.push({ x: segment.from.x, y: segment.from.y, bulge: 0 });
    if (segment.kind === "arc") points.push(...between(segment, chord));
  }
  const last = path.points.at(-1)!;
  if (!path.closed) points.push({ x: last.x, y: last.y, bulge: 0 });
  return { closed: path.closed, points };
}

/** The points between the ends of an arc: a chord of sweep s strays by r (1 - cos(s / 2)) = 2 r sin²(s / 4). */
function between({ centre, radius, start, sweep }: Arc, chord: number): PathPoint[] {
  const stray = Number.isNaN(chord) ? tolerance.exact : Math.max(chord, tolerance.exact);
  const step = 4 * Math.asin(Math.min(1, Math.sqrt(stray / (2 * radius))));
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / step));
  return Array.from({ length: count - 1 }, (_, k) => {
    const angle = start + (sweep * (k + 1)) / count;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle), bulge: 0 };
  });
}
