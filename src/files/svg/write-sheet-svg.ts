import { textLength, typeSize } from "../../drawing/sheet/lettering.ts";
import type { Sheet, SheetLine, SheetText } from "../../drawing/sheet/sheet.ts";
import { rounded } from "../../step/rounded.ts";
import { pens } from "../pens.ts";
import { escaped, n, pathData } from "./svg-data.ts";

/** Monospaced types whose capitals are at least as high as the sheet's measures say. */
const family = "DejaVu Sans Mono, Menlo, Consolas, Liberation Mono, monospace";

/**
 * A sheet as an SVG of its own size in mm, y upward, on white; arcs are written as arcs, and every text is held to the length that
 * the drawing was laid out with, whatever type the reader has.
 */
export function sheetSvgText(sheet: Sheet, title: string): string {
  const { width, height } = sheet.paper;
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 ${n(-height)} ${n(width)} ${n(height)}">`,
    `<title>${escaped(title)}</title>`,
    `<rect x="0" y="${n(-height)}" width="${n(width)}" height="${n(height)}" fill="white"/>`,
    '<g fill="none" stroke="black" stroke-linecap="butt" stroke-linejoin="round">',
    ...sheet.lines.map(lineText),
    "</g>",
    `<g fill="black" font-family="${family}">`,
    ...sheet.texts.map(wordsText),
    "</g>",
    "</svg>",
  ];
  return `${lines.join("\n")}\n`;
}

function lineText({ weight, path }: SheetLine): string {
  const { width, dash } = pens[weight];
  const dashes = dash === "" ? "" : ` stroke-dasharray="${dash}"`;
  const fill = weight === "arrow" ? ' fill="black"' : "";
  return `<path data-weight="${weight}" stroke-width="${width}"${dashes}${fill} d="${pathData(path)}"/>`;
}

function wordsText(of: SheetText): string {
  const { text, x, y, height, turn, align } = of;
  const anchor = { left: "start", center: "middle", right: "end" }[align];
  const turned = turn === 0 ? "" : ` transform="rotate(${-turn} ${n(x)} ${n(-y)})"`;
  const size = `font-size="${rounded(typeSize(height))}" textLength="${n(textLength(of))}" lengthAdjust="spacingAndGlyphs"`;
  return `<text x="${n(x)}" y="${n(-y)}" ${size} text-anchor="${anchor}"${turned} xml:space="preserve">${escaped(text)}</text>`;
}
