import type { Path } from "../../geometry/path.ts";
import type { Marks } from "./sheet.ts";

/** A path made larger by `scale` from the origin, then moved by (dx, dy), mm; arcs stay arcs. */
export function placed(path: Path, scale: number, dx = 0, dy = 0): Path {
  return {
    closed: path.closed,
    points: path.points.map(({ x, y, bulge }) => ({ x: x * scale + dx, y: y * scale + dy, bulge })),
  };
}

/** Marks moved on the paper, mm. */
export function moved({ lines, texts }: Marks, dx: number, dy: number): Marks {
  return {
    lines: lines.map(({ weight, path }) => ({ weight, path: placed(path, 1, dx, dy) })),
    texts: texts.map((text) => ({ ...text, x: text.x + dx, y: text.y + dy })),
  };
}
