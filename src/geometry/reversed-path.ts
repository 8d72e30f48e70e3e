import type { Path } from "./path.ts";

/** The same path walked the other way: bulges change sign. A closed one begins at the same point. */
export function reversedPath({ closed, points }: Path): Path {
  const count = points.length;
  const turned = points.map((_, k) => {
    const at = closed ? (count - k) % count : count - 1 - k;
    const { x, y } = points[at]!;
    const before = points[closed ? (at + count - 1) % count : at - 1];
    return { x, y, bulge: before === undefined || before.bulge === 0 ? 0 : -before.bulge };
  });
  return { closed, points: turned };
}
