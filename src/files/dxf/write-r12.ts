import { type Flat, flatExtents, type Note, type Shape } from "../../drawing/flat/flat.ts";
import { rounded } from "../../step/rounded.ts";
import { mustBePlain, mustBeWritable, roundedBulge } from "./writable.ts";

/** A group of a DXF: its code and its value. */
type Group = readonly [code: number, value: string | number];

/**
 * A flat drawing as DXF R12 (AC1009), for old controllers: polylines of vertices with bulges, texts, layers, no handles. R12 knows no unit: the title
 * says millimetres.
 *
 * Throws for what must never reach a machine, as `dxfText` does. The same drawing gives the same bytes.
 */
export function dxfR12Text(flat: Flat): string {
  const extents = flatExtents(flat);
  if (extents === undefined) throw new RangeError("a drawing without lines can't be written");
  const names = [...new Set([...flat.shapes.map(({ layer }) => layer), ...flat.notes.map(() => "NOTE")])];
  const groups: Group[] = [
    ...section("HEADER", [
      ...([
        [9, "$ACADVER"],
        [1, "AC1009"],
      ] as const),
      ...([
        [9, "$EXTMIN"],
        [10, rounded(extents.minX)],
        [20, rounded(extents.minY)],
        [30, 0],
      ] as const),
      ...([
        [9, "$EXTMAX"],
        [10, rounded(extents.maxX)],
        [20, rounded(extents.maxY)],
        [30, 0],
      ] as const),
    ]),
    ...section("TABLES", [...lineTypes, ...layerTable(names), ...styles]),
    ...section("BLOCKS", []),
    ...section("ENTITIES", [...flat.shapes.flatMap(polyline), ...flat.notes.flatMap(text)]),
    [0, "EOF"],
  ];
  return groups.map(([code, value]) => `${code}\n${value}\n`).join("");
}

function section(name: string, groups: readonly Group[]): Group[] {
  return [[0, "SECTION"], [2, name], ...groups, [0, "ENDSEC"]];
}

function table(name: string, rows: readonly (readonly Group[])[]): Group[] {
  return [[0, "TABLE"], [2, name], [70, rows.length], ...rows.flat(), [0, "ENDTAB"]];
}

const lineTypes = table("LTYPE", [
  [
    [0, "LTYPE"],
    [2, "CONTINUOUS"],
    [70, 0],
    [3, "Solid line"],
    [72, 65],
    [73, 0],
    [40, 0],
  ],
]);

const styles = table("STYLE", [
  [
    [0, "STYLE"],
    [2, "STANDARD"],
    [70, 0],
    [40, 0],
    [41, 1],
    [50, 0],
    [71, 0],
    [42, 2.5],
    [3, "txt"],
    [4, ""],
  ],
]);

/** Layer 0 and the drawing's own, all in one colour: black on white paper, white on a black screen. */
function layerTable(names: readonly string[]): Group[] {
  const row = (name: string): Group[] => [
    [0, "LAYER"],
    [2, name],
    [70, 0],
    [62, 7],
    [6, "CONTINUOUS"],
  ];
  return table("LAYER", ["0", ...names].map(row));
}

function polyline(shape: Shape): Group[] {
  mustBeWritable(shape);
  const { layer, path } = shape;
  const vertices = path.points.flatMap(({ x, y, bulge }): Group[] => {
    const bent = roundedBulge(bulge);
    const place: Group[] = [
      [0, "VERTEX"],
      [8, layer],
      [10, rounded(x)],
      [20, rounded(y)],
      [30, 0],
    ];
    return bent === 0 ? place : [...place, [42, decimals(bent)]];
  });
  const head: Group[] = [
    [0, "POLYLINE"],
    [8, layer],
    [66, 1],
    [10, 0],
    [20, 0],
    [30, 0],
    [70, path.closed ? 1 : 0],
  ];
  return [...head, ...vertices, [0, "SEQEND"], [8, layer]];
}

function text({ text, x, y, height, turn, align }: Note): Group[] {
  mustBePlain(text);
  const place: Group[] = [
    [10, rounded(x)],
    [20, rounded(y)],
    [30, 0],
  ];
  // A text that isn't aligned to the left stands at its second point; some readers go by the first.
  const aligned: Group[] =
    align === "left"
      ? []
      : [
          [72, align === "center" ? 1 : 2],
          [11, rounded(x)],
          [21, rounded(y)],
          [31, 0],
        ];
  return [[0, "TEXT"], [8, "NOTE"], ...place, [40, height], [1, text], [50, turn], ...aligned];
}

/** A small number without an exponent, which some controllers can't read. */
function decimals(value: number): string {
  return value.toFixed(9).replace(/\.?0+$/, "");
}
