import geom3 from "@jscad/modeling/src/geometries/geom3/index.js";
import poly3 from "@jscad/modeling/src/geometries/poly3/index.js";
import { serializeBinary } from "@jscad/stl-serializer/CSGToStlb.js";
import type { TriangleMesh } from "../geometry/solid/triangle-mesh.ts";

/**
 * The bytes of a binary STL of a mesh, mm, with true normals; the same bytes for the same mesh.
 *
 * The vertices are written as they are. (The package's own entry would first snap them to a hundred-thousandth of the
 * piece's extent: 3 micrometres on a part of 300 mm.) The mesh is not checked here: see `stlRead` and `readBack`.
 */
export function stlWrite({ positions, triangles }: TriangleMesh): Uint8Array {
  const corner = (vertex: number): [number, number, number] => {
    const at = 3 * vertex;
    return [positions[at]!, positions[at + 1]!, positions[at + 2]!];
  };
  const faces = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [corner(triangles[t]!), corner(triangles[t + 1]!), corner(triangles[t + 2]!)];
    faces.push(poly3.create(corners));
  }
  const chunks = serializeBinary([geom3.create(faces)], {});
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.byteLength, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(new Uint8Array(chunk), at);
    at += chunk.byteLength;
  }
  return bytes;
}
