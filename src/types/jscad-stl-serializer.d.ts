declare module "@jscad/stl-serializer/CSGToStlb.js" {
  import type { Geom3 } from "@jscad/modeling/src/geometries/types";

  /** Serializes geometries as they are, without the snapping of the package's own entry: header, count, triangles. */
  export function serializeBinary(
    objects: readonly Geom3[],
    options: { statusCallback?: (status: { progress: number }) => void },
  ): readonly ArrayBuffer[];
}
