import { typeSize } from "../../drawing/sheet/lettering.ts";
import type { SheetLine, SheetText } from "../../drawing/sheet/sheet.ts";
import type { MarkGroup, Page } from "../../drawing/tiles/tile-page.ts";
import type { Path } from "../../geometry/path.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { pens } from "../pens.ts";
import { arcCubics } from "./arc-cubics.ts";
import { mustLetter } from "./stroke-font.ts";

/** Points of a PDF in a millimetre. */
export const pointsPerMm = 72 / 25.4;

/** The name of the lettering in a page's list of fonts. */
export const fontName = "F1";

/**
 * What draws a page, in the language of a PDF's content: mm, y upward, the printer's own scale taken off. `height` is the page's own, in points: the
 * library that writes the file begins each page turned upside down. Each group stands between marks that bear its name.
 */
export function pageContent({ scale, groups }: Page, height: number): string {
  const [x, y] = scale.map((each) => pointsPerMm / each);
  return [
    `${fine(x!)} 0 0 ${fine(-y!)} 0 ${fine(height)} cm`,
    "0 J 1 j 0 G 0 g",
    ...groups.map(groupContent),
  ].join("\n");
}

function groupContent({ name, marks, shift, clip }: MarkGroup): string {
  if (!/^[A-Za-z][A-Za-z0-9._-]*$/.test(name)) throw new RangeError(`a group named ${name}`);
  const box =
    clip === null
      ? []
      : [`${n(clip.minX)} ${n(clip.minY)} ${n(clip.maxX - clip.minX)} ${n(clip.maxY - clip.minY)} re W n`];
  const moved = shift.x === 0 && shift.y === 0 ? [] : [`1 0 0 1 ${n(shift.x)} ${n(shift.y)} cm`];
  return [
    `/${name} BMC`,
    "q",
    ...box,
    ...moved,
    ...marks.lines.map(lineContent),
    ...marks.texts.map(textContent),
    "Q",
    "EMC",
  ].join("\n");
}

function lineContent({ weight, path }: SheetLine): string {
  const { width, dash } = pens[weight];
  return `${width} w [${dash}] 0 d ${pathContent(path)} ${weight === "arrow" ? "B" : "S"}`;
}

function pathContent(path: Path): string {
  const first = path.points[0];
  if (first === undefined) return "";
  const pieces = segmentsOf(path).flatMap((segment) => {
    if (segment.kind === "line") return [`${n(segment.to.x)} ${n(segment.to.y)} l`];
    return arcCubics(segment).map((cubic) => `${cubic.map(({ x, y }) => `${n(x)} ${n(y)}`).join(" ")} c`);
  });
  return [`${n(first.x)} ${n(first.y)} m`, ...pieces, ...(path.closed ? ["h"] : [])].join(" ");
}

function textContent({ text, x, y, height, turn, align }: SheetText): string {
  mustLetter(text);
  const size = typeSize(height);
  const back = { left: 0, center: 0.5, right: 1 }[align] * text.length * 0.6 * size;
  const at = turn === 0 ? `1 0 0 1 ${n(x - back)} ${n(y)}` : `0 1 -1 0 ${n(x)} ${n(y - back)}`;
  const safe = text
    .replace(/[\\()]/g, "\\$&")
    .replace(/[^ -~]/g, (sign) => `\\${sign.charCodeAt(0).toString(8).padStart(3, "0")}`);
  return `BT /${fontName} ${n(size)} Tf ${at} Tm (${safe}) Tj ET`;
}

/** A length to a ten-thousandth of a mm. */
function n(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a number that is not finite (${value})`);
  return String(Math.round(value * 1e4) / 1e4 + 0);
}

/** A factor, to nine places. */
function fine(value: number): string {
  return value.toFixed(9);
}
