import dxfParser from "dxf-parser";

/** A path as a DXF file has it: vertices with x, y and bulge, on a layer. */
export type ReadPath = {
  readonly layer: string;
  readonly closed: boolean;
  readonly vertices: readonly { readonly x: number; readonly y: number; readonly bulge: number }[];
};

/** What a reader finds in a DXF file, or why it can't be read. */
export type ReadDxf =
  | {
      readonly ok: true;
      readonly unit: number;
      readonly paths: readonly ReadPath[];
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly why: string };

/** The part of a parsed entity that is read here. */
type Entity = {
  readonly type: string;
  readonly layer: string;
  readonly shape?: boolean;
  readonly vertices?: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[];
  readonly text?: string;
};

type Parsed = { readonly header: { readonly [name: string]: unknown }; readonly entities: readonly Entity[] };

/** The library's default export is its class, though its types say otherwise. */
const Parser = dxfParser as unknown as new () => { parseSync(text: string): Parsed | null };

/**
 * Read a DXF text with a parser that knows nothing of the one that wrote it.
 *
 * `unit` is $INSUNITS (4 is mm, 0 where it is missing). Entities other than light polylines and texts are a reason not to
 * read the file: this program writes none, so something else did.
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
  const strange = entities.find(({ type }) => type !== "LWPOLYLINE" && type !== "TEXT");
  if (strange !== undefined) return { ok: false, why: `an entity ${strange.type} on layer ${strange.layer}` };
  return {
    ok: true,
    unit: Number(parsed.header.$INSUNITS ?? 0),
    paths: entities
      .filter(({ type }) => type === "LWPOLYLINE")
      .map(({ layer, shape, vertices = [] }) => ({
        layer,
        closed: shape === true,
        vertices: vertices.map(({ x, y, bulge = 0 }) => ({ x, y, bulge })),
      })),
    notes: entities.filter(({ type }) => type === "TEXT").map(({ text = "" }) => text),
  };
}
