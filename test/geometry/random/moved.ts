import type { Path } from "../../../src/geometry/path.ts";

/** A path walked the other way, from its second point. */
export function turnedRound({ closed, points }: Path): Path {
  const back = points.toReversed();
  return {
    closed,
    points: back.map(({ x, y }, i) => ({ x, y, bulge: -back[(i + 1) % back.length]!.bulge })),
  };
}

/** A closed path that begins at another of its points. */
export function startedAt({ closed, points }: Path, first: number): Path {
  const at = first % points.length;
  return { closed, points: [...points.slice(at), ...points.slice(0, at)] };
}

/** A path mirrored in the y axis. */
export function mirrored({ closed, points }: Path): Path {
  return { closed, points: points.map(({ x, y, bulge }) => ({ x: -x, y, bulge: -bulge })) };
}

/** A path turned a quarter of a circle counter-clockwise about the origin. */
export function quarterTurned({ closed, points }: Path): Path {
  return { closed, points: points.map(({ x, y, bulge }) => ({ x: -y, y: x, bulge })) };
}

/** A path moved. */
export function moved({ closed, points }: Path, dx: number, dy: number): Path {
  return { closed, points: points.map(({ x, y, bulge }) => ({ x: x + dx, y: y + dy, bulge })) };
}
