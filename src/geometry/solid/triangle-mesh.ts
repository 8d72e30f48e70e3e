/**
 * A surface of triangles: `positions` holds x, y, z (mm) of one vertex after another, `triangles` three vertex indices
 * for each triangle, counter-clockwise seen from outside.
 */
export type TriangleMesh = {
  readonly positions: Float32Array | Float64Array;
  readonly triangles: Uint32Array;
};
