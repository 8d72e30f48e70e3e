import type { Point } from "../point.ts";
import { facet, facetCounts } from "./facet.ts";
import type { Edge } from "./solid.ts";

/**
 * The profile of an edge from the wall to the face, faceted by chord error (mm): x is how far inward from the wall, y
 * how far down from the face. The first point lies on the wall, the last in the face.
 */
export function edgeProfile(edge: Edge, chord: number): Point[] {
  if (edge.kind === "bevel")
    return [
      { x: 0, y: edge.down },
      { x: edge.inward, y: 0 },
    ];
  const { radius } = edge;
  const quarter = {
    closed: false,
    points: [
      { x: 0, y: radius, bulge: Math.tan(Math.PI / 8) },
      { x: radius, y: 0, bulge: 0 },
    ],
  };
  return facet(quarter, facetCounts(quarter, chord));
}

/** Whether an edge's sizes are finite and positive. */
export function isEdge(edge: Edge): boolean {
  const sizes = edge.kind === "bevel" ? [edge.inward, edge.down] : [edge.radius];
  return sizes.every((size) => Number.isFinite(size) && size > 0);
}
