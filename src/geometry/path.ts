/**
 * A vertex of a path. `bulge` belongs to the segment from this point to the next: tan(sweep / 4) as in the DXF
 * standard, 0 for a line, positive counter-clockwise, at most 1 in size (half a circle).
 */
export type PathPoint = { readonly x: number; readonly y: number; readonly bulge: number };

/**
 * A run of lines and arcs in the plane, in mm. A closed path's last point leads back to its first by its own bulge;
 * an open path's last bulge means nothing and is 0.
 */
export type Path = { readonly closed: boolean; readonly points: readonly PathPoint[] };
