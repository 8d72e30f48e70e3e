import { strToU8, zipSync } from "fflate";
import type { TriangleMesh } from "../geometry/solid/triangle-mesh.ts";

/** A piece of a 3MF: its name and its mesh, mm. */
export type Piece = { readonly name: string; readonly mesh: TriangleMesh };

/** The bytes of a 3MF; or which piece has a name that can't be written, or no triangles. */
export type ThreemfBytes =
  | { readonly kind: "ok"; readonly bytes: Uint8Array }
  | {
      readonly kind: "invalid";
      readonly problem: "name" | "no-triangles" | "nothing-given";
      readonly piece: number;
    };

const TYPES = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>
`;

const RELATIONS = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>
`;

/**
 * A 3MF of one or more pieces, each where its mesh stands, in millimetres (3MF Core Specification 1.2). Coordinates are
 * rounded to 1e-6. The same bytes for the same pieces: no date, fixed order.
 */
export function threemfWrite(pieces: readonly Piece[]): ThreemfBytes {
  if (pieces.length === 0) return { kind: "invalid", problem: "nothing-given", piece: 0 };
  const objects: string[] = [];
  const items: string[] = [];
  for (const [i, { name, mesh }] of pieces.entries()) {
    if (!/^[^\p{Cc}\p{Cs}\uFFFE\uFFFF]+$/u.test(name)) return { kind: "invalid", problem: "name", piece: i };
    if (mesh.triangles.length === 0) return { kind: "invalid", problem: "no-triangles", piece: i };
    objects.push(`<object id="${i + 1}" type="model" name="${escaped(name)}">${meshXml(mesh)}</object>`);
    items.push(`<item objectid="${i + 1}"/>`);
  }
  const model = `<?xml version="1.0" encoding="UTF-8"?>
<model unit="millimeter" xml:lang="en-US" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"><resources>
${objects.join("\n")}
</resources><build>${items.join("")}</build></model>
`;
  const files = {
    "[Content_Types].xml": strToU8(TYPES),
    "_rels/.rels": strToU8(RELATIONS),
    "3D/3dmodel.model": strToU8(model),
  };
  // Stored, not deflated: squeezing the text took longer than making the solid, and a printer's program reads either.
  // The zip's earliest time, by the local clock as the format has it.
  return { kind: "ok", bytes: zipSync(files, { level: 0, mtime: new Date(1980, 0, 1) }) };
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

function meshXml({ positions, triangles }: TriangleMesh): string {
  const vertices: string[] = [];
  for (let at = 0; at < positions.length; at += 3) {
    const [x, y, z] = [written(positions[at]!), written(positions[at + 1]!), written(positions[at + 2]!)];
    vertices.push(`<vertex x="${x}" y="${y}" z="${z}"/>`);
  }
  const faces: string[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    faces.push(`<triangle v1="${triangles[t]}" v2="${triangles[t + 1]}" v3="${triangles[t + 2]}"/>`);
  }
  return `<mesh><vertices>\n${vertices.join("\n")}\n</vertices><triangles>\n${faces.join("\n")}\n</triangles></mesh>`;
}

/** A number with at most six decimals and no exponent; never -0. */
function written(value: number): string {
  const text = value.toFixed(6).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}
