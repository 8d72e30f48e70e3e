import type { Path, PathPoint } from "../../../src/geometry/path.ts";

type Place = readonly [x: number, y: number];

/**
 * A virtual cut by brute force, with nothing but points: the edge as closely set points with their normals, a middle for each that is no
 * nearer to any other than the guide's radius, and the distance from each finished place to the nearest middle. Good to `step` squared over
 * a radius or two.
 */
export function plainCut(edge: Path, guide: number, cutter: number, finished: readonly Path[], step = 0.2) {
  const along = spaced(edge, step);
  const near = (place: Place, all: readonly Place[]) =>
    Math.min(...all.map(([x, y]) => Math.hypot(x - place[0], y - place[1])));
  const at = along.map(({ place }) => place);
  const middles = along
    .map(({ place: [x, y], way: [dx, dy] }): Place => [x + (dy * guide) / 2, y - (dx * guide) / 2])
    .filter((middle) => near(middle, at) > guide / 2 - (step * step) / guide - 1e-6);
  const off = finished
    .flatMap((path) => spaced(path, step))
    .map(({ place }) => near(place, middles) - cutter / 2);
  return { middles, taken: Math.max(0, ...off.map((one) => -one)), left: Math.max(0, ...off) };
}

/** Points along a path, with the direction there; at a corner the directions between are there too. */
function spaced({ points, closed }: Path, step: number): { place: Place; way: Place }[] {
  const found: { place: Place; way: Place }[] = [];
  const count = closed ? points.length : points.length - 1;
  for (let i = 0; i < count; i++) {
    const [from, to] = [points[i]!, points[(i + 1) % points.length]!];
    const piece = pieceOf(from, to, step);
    const last = found.at(-1);
    if (last !== undefined) {
      const [a, b] = [Math.atan2(last.way[1], last.way[0]), Math.atan2(piece[0]!.way[1], piece[0]!.way[0])];
      const turn = Math.atan2(Math.sin(b - a), Math.cos(b - a));
      const turns = Math.ceil(Math.abs(turn) / 0.006);
      for (let k = 1; k < turns; k++) {
        const angle = a + (turn * k) / turns;
        found.push({ place: last.place, way: [Math.cos(angle), Math.sin(angle)] });
      }
    }
    found.push(...piece);
  }
  return found;
}

function pieceOf(from: PathPoint, to: PathPoint, step: number): { place: Place; way: Place }[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const chord = Math.hypot(dx, dy);
  const half = 2 * Math.atan(from.bulge);
  const long = half === 0 ? chord : (chord * half) / Math.sin(half);
  const count = Math.max(1, Math.ceil(long / step), Math.ceil(Math.abs(half) / 0.003));
  return Array.from({ length: count + 1 }, (_, k) => {
    const share = k / count;
    const turned = half * (2 * share - 1);
    const lean = Math.atan2(dy, dx);
    const way: Place = [Math.cos(lean + turned), Math.sin(lean + turned)];
    if (half === 0) return { place: [from.x + dx * share, from.y + dy * share] as Place, way };
    // Half of what is left to turn is how far the chord from the start leans off the start's own direction.
    const reach = (chord * Math.sin(half * share)) / Math.sin(half);
    const toward = lean - half + half * share;
    return { place: [from.x + reach * Math.cos(toward), from.y + reach * Math.sin(toward)] as Place, way };
  });
}
