import type { Path } from "../../geometry/path.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { rounded } from "../../step/rounded.ts";

/** A path in the path language of SVG, y turned over; arcs are written as arcs. */
export function pathData(path: Path): string {
  const first = path.points[0];
  if (first === undefined) return "";
  const pieces = segmentsOf(path).map((segment) => {
    const end = `${n(segment.to.x)} ${n(-segment.to.y)}`;
    if (segment.kind === "line") return `L${end}`;
    return `A${n(segment.radius)} ${n(segment.radius)} 0 0 ${segment.sweep > 0 ? 0 : 1} ${end}`;
  });
  return [`M${n(first.x)} ${n(-first.y)}`, ...pieces, ...(path.closed ? ["Z"] : [])].join("");
}

/** A number as SVG has it, to a millionth. */
export function n(value: number): string {
  return String(rounded(value));
}

/** A text with what XML takes for its own written out. */
export function escaped(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
