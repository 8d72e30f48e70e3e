import type { Flat, Note, Shape } from "../../drawing/flat/flat.ts";
import { type Extents, extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { escaped, n, pathData } from "./svg-data.ts";

/** How a layer is drawn: width in mm, and dashes; colour carries no meaning, so that black and white tells the same. */
type Pen = { readonly width: number; readonly dash: string };

const pens: readonly (readonly [RegExp, Pen])[] = [
  [/^(OUTER|INNER)-EDGE$/, { width: 0.5, dash: "" }],
  [/^PART$/, { width: 0.25, dash: "" }],
  [/^GUIDED-EDGE$/, { width: 0.9, dash: "" }],
  [/^SAW-LINE$/, { width: 0.35, dash: "4 1" }],
  [/^SCRIBE$/, { width: 0.25, dash: "2 0.8" }],
  [/^NOTE$/, { width: 0.13, dash: "" }],
  [/^(RECESS|BORE)-/, { width: 0.35, dash: "" }],
];

/** Centre lines: long, short, long. */
const chainDash = "6 1.2 1.2 1.2";

const margin = 8;
const letterWidth = 0.62;

/**
 * A flat drawing as an SVG picture at full size, y upward, on white; arcs are written as arcs.
 *
 * For looking at, not for cutting from: a screen or a printer may scale it.
 */
export function svgText(flat: Flat, title: string): string {
  const { minX, minY, maxX, maxY } = surroundings(flat);
  const [width, height] = [maxX - minX + 2 * margin, maxY - minY + 2 * margin];
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height)}mm" viewBox="${n(minX - margin)} ${n(-maxY - margin)} ${n(width)} ${n(height)}">`,
    `<title>${escaped(title)}</title>`,
    `<rect x="${n(minX - margin)}" y="${n(-maxY - margin)}" width="${n(width)}" height="${n(height)}" fill="white"/>`,
    '<g fill="none" stroke="black" stroke-linecap="round" stroke-linejoin="round">',
    ...flat.shapes.map(shapeText),
    "</g>",
    '<g fill="black" font-family="monospace">',
    ...flat.notes.map(noteText),
    "</g>",
    "</svg>",
  ];
  return `${lines.join("\n")}\n`;
}

function shapeText({ layer, path, chain }: Shape): string {
  const pen = pens.find(([form]) => form.test(layer))?.[1] ?? { width: 0.25, dash: "" };
  const { width, dash } = chain ? { ...pen, dash: chainDash } : pen;
  const dashes = dash === "" ? "" : ` stroke-dasharray="${dash}"`;
  return `<path data-layer="${escaped(layer)}" stroke-width="${width}"${dashes} d="${pathData(path)}"/>`;
}

function noteText({ text, x, y, height, turn, align }: Note): string {
  const anchor = { left: "start", center: "middle", right: "end" }[align];
  const turned = turn === 0 ? "" : ` transform="rotate(${-turn} ${n(x)} ${n(-y)})"`;
  const place = `x="${n(x)}" y="${n(-y)}" font-size="${n(height / 0.7)}" text-anchor="${anchor}"`;
  return `<text ${place}${turned} xml:space="preserve">${escaped(text)}</text>`;
}

/** Extents of lines and words; a letter counts as wide as a monospaced one is. */
function surroundings({ shapes, notes }: Flat): Extents {
  const boxes = notes.map(({ text, x, y, height, turn, align }): Path => {
    const long = (text.length * letterWidth * height) / 0.7;
    const start = align === "left" ? 0 : align === "right" ? -long : -long / 2;
    const [right, up] =
      turn === 90
        ? [
            [-height, 0],
            [start, start + long],
          ]
        : [
            [start, start + long],
            [0, height],
          ];
    const corners = right!.flatMap((dx) => up!.map((dy) => ({ x: x + dx, y: y + dy, bulge: 0 })));
    return { closed: true, points: corners };
  });
  return extentsOf([...shapes.map(({ path }) => path), ...boxes]) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
}
