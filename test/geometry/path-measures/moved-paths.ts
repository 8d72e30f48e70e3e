import type { Path } from "../../../src/geometry/path.ts";

export const reversed = ({ closed, points }: Path): Path => ({
  closed,
  points: points.map(({ x, y }, i) => ({ x, y, bulge: -points.at(i - 1)!.bulge })).reverse(),
});
