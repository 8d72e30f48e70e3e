import dxfParser from "dxf-parser";

/** A path as a DXF file has it: vertices with x, y and bulge, on a layer. */
export type ReadPath = {
  readonly layer: string;
  readonly closed: boolean;
  readonly vertices: readonly { readonly x: number; readonly y: number; readonly bulge: number }[];
};

/** A text as a DXF file has it, by the corner that it is aligned on; `turn` in degrees. */
export type ReadNote = {
  readonly layer: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly turn: number;
};

/** What a reader finds in a DXF file, or why it can't be read. */
export type ReadDxf =
  | {
      readonly ok: true;
      readonly version: "r12" | "later";
      readonly unit: number;
      readonly measurement: number;
      readonly extents: readonly [minX: number, minY: number, maxX: number, maxY: number];
      readonly paths: readonly ReadPath[];
      readonly notes: readonly ReadNote[];
    }
  | { readonly ok: false; readonly why: string };

/** The part of a parsed entity that is read here. */
type Entity = {
  readonly type: string;
  readonly layer: string;
  readonly shape?: boolean;
  readonly vertices?: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[];
  readonly text?: string;
  readonly startPoint?: { readonly x: number; readonly y: number };
  readonly endPoint?: { readonly x: number; readonly y: number };
  readonly textHeight?: number;
  readonly rotation?: number;
  readonly halign?: number;
  readonly colorIndex?: number;
  readonly elevation?: number;
  readonly extrusionDirectionZ?: number;
};

type Parsed = { readonly header: { readonly [name: string]: unknown }; readonly entities: readonly Entity[] };

/** The library's default export is its class, though its types say otherwise. */
const Parser = dxfParser as unknown as new () => { parseSync(text: string): Parsed | null };

/**
 * Read a DXF text with a parser that knows nothing of the one that wrote it.
 *
 * `unit` is $INSUNITS (4 is mm, 0 where it is missing), `measurement` $MEASUREMENT; R12 has neither. Entities other than light polylines (polylines in R12) and
 * texts, and any with a colour, a height or a plane of its own, are a reason not to read the file: this program writes none.
 */
export function readDxf(text: string): ReadDxf {
  let parsed: Parsed | null;
  try {
    parsed = new Parser().parseSync(text);
  } catch (error) {
    return { ok: false, why: `no DXF: ${error instanceof Error ? error.message : String(error)}` };
  }
  if (parsed === null) return { ok: false, why: "no DXF" };
  const { entities } = parsed;
  const version = parsed.header.$ACADVER === "AC1009" ? "r12" : "later";
  const line = version === "r12" ? "POLYLINE" : "LWPOLYLINE";
  const strange = entities.find((entity) => isStrange(entity, line));
  if (strange !== undefined) return { ok: false, why: `a strange ${strange.type} on layer ${strange.layer}` };
  const corner = (name: string) => (parsed.header[name] ?? {}) as { x?: number; y?: number };
  const [low, high] = [corner("$EXTMIN"), corner("$EXTMAX")];
  return {
    ok: true,
    version,
    unit: Number(parsed.header.$INSUNITS ?? 0),
    measurement: Number(parsed.header.$MEASUREMENT ?? 0),
    extents: [low.x ?? 0, low.y ?? 0, high.x ?? 0, high.y ?? 0],
    paths: entities
      .filter(({ type }) => type === line)
      .map(({ layer, shape, vertices = [] }) => ({
        layer,
        closed: shape === true,
        vertices: vertices.map(({ x, y, bulge = 0 }) => ({ x, y, bulge })),
      })),
    notes: entities.filter(({ type }) => type === "TEXT").map(noteOf),
  };
}

/** Something that this program never writes: another entity, a colour of its own, a height, a plane turned over. */
function isStrange(entity: Entity, line: "POLYLINE" | "LWPOLYLINE"): boolean {
  const { type, colorIndex = 256, elevation = 0, extrusionDirectionZ = 1 } = entity;
  const known = type === line || type === "TEXT";
  return !known || colorIndex !== 256 || elevation !== 0 || extrusionDirectionZ !== 1;
}

function noteOf({
  layer,
  text = "",
  startPoint,
  endPoint,
  textHeight = 0,
  rotation = 0,
  halign = 0,
}: Entity): ReadNote {
  // An aligned text stands at its second point; the first must say the same, since some readers go by that.
  const [at, other] = halign === 0 ? [startPoint, startPoint] : [endPoint, startPoint];
  const agree = at !== undefined && at.x === other?.x && at.y === other?.y;
  const { x, y } = agree ? at : { x: Number.NaN, y: Number.NaN };
  return { layer, text, x, y, height: textHeight, turn: rotation };
}
