import type Flatbush from "flatbush";
import { tolerance } from "../tolerance.ts";
import type { Edge } from "./edge.ts";

/** Whether a point exactly as high as an end counts as just above it or just below. */
export type Tie = "above" | "below";

/**
 * What an edge adds to the winding round a point, counted along a ray in +x from it; sums over closed loops to the true
 * winding. An arc counts as its chord and, within the cap between the two, once more: so no angle is needed and no arc
 * has to be cut where it turns back.
 */
export function windingOf(edge: Edge, x: number, y: number, tie: Tie = "above"): number {
  const left = isLeftOfChord(edge, x, y, tie);
  const winding = chordWinding(edge, y, left, tie);
  if (edge.turn === 0 || edge.turn > 0 === left) return winding;
  // From the arc's start and not from its centre, which of a nearly straight arc is too far away for its digits.
  const dx = x - edge.ax;
  const dy = y - edge.ay;
  const inside = dx * dx + dy * dy < 2 * (dx * (edge.cx - edge.ax) + dy * (edge.cy - edge.ay));
  return inside ? winding + edge.turn : winding;
}

/**
 * Whether a point is to the left of an edge's chord. Worked out from the same end whichever way the edge runs, and a
 * point on the chord's line is taken a little above or below it, so that the answers for two edges on one chord agree.
 */
function isLeftOfChord({ ax, ay, bx, by }: Edge, x: number, y: number, tie: Tie): boolean {
  const forward = ax < bx || (ax === bx && ay < by);
  const cross = forward
    ? (bx - ax) * (y - ay) - (by - ay) * (x - ax)
    : (bx - ax) * (y - by) - (by - ay) * (x - bx);
  if (cross !== 0) return cross > 0;
  if (ax === bx) return by < ay;
  return (tie === "above") === bx > ax;
}

/** What a chord adds: 1 where it rises past the point's height to the right of it, -1 where it falls. */
function chordWinding({ ay, by }: Edge, y: number, left: boolean, tie: Tie): number {
  const fromUnder = tie === "above" ? ay <= y : ay < y;
  const toUnder = tie === "above" ? by <= y : by < y;
  if (fromUnder === toUnder || fromUnder !== left) return 0;
  return fromUnder ? 1 : -1;
}

/** The winding just left of an edge, and whether another edge came so near that it may be wrong. */
export type Beside = { readonly winding: number; readonly doubtful: boolean };

/**
 * The winding just to the left of edge `own` at a share of the way along it, by what all the edges in the index add,
 * each times its weight.
 */
export function windingBeside(edges: readonly Edge[], index: Flatbush, own: number, share: number): Beside {
  const edge = edges[own]!;
  const [x, y] = pointAlong(edge, share);
  const tie: Tie = edge.bx >= edge.ax ? "above" : "below";
  let winding = 0;
  let doubtful = false;
  index.search(x, y, Number.POSITIVE_INFINITY, y, (i) => {
    if (i === own) return false;
    const other = edges[i]!;
    winding += other.weight * windingOf(other, x, y, tie);
    doubtful ||= passesNear(other, x, y);
    return false;
  });
  return { winding: winding + edge.weight * ownWinding(edge, y, tie), doubtful };
}

/** What an edge adds to the winding of a point just left of itself, at height `y` along it. */
function ownWinding(edge: Edge, y: number, tie: Tie): number {
  return chordWinding(edge, y, edge.turn <= 0, tie) + Math.max(edge.turn, 0);
}

/** Whether a point is so near an edge that its side of it is in doubt. */
function passesNear(edge: Edge, x: number, y: number): boolean {
  const near = 2 * tolerance.snap;
  if (x < edge.minX - near || y < edge.minY - near || y > edge.maxY + near) return false;
  if (edge.turn !== 0) return Math.abs(Math.sqrt((x - edge.cx) ** 2 + (y - edge.cy) ** 2) - edge.r) < near;
  const dx = edge.bx - edge.ax;
  const dy = edge.by - edge.ay;
  const aside = dx * (y - edge.ay) - dy * (x - edge.ax);
  return aside * aside < near * near * (dx * dx + dy * dy);
}

/** A point of an edge; the share is of its chord, square to which the arc is reached. */
function pointAlong(edge: Edge, share: number): readonly [number, number] {
  const dx = edge.bx - edge.ax;
  const dy = edge.by - edge.ay;
  const x = edge.ax + share * dx;
  const y = edge.ay + share * dy;
  if (edge.turn === 0) return [x, y];
  const chord = Math.sqrt(dx * dx + dy * dy);
  const away = (share - 0.5) * chord;
  const apothem = Math.sqrt(Math.max(0, edge.r * edge.r - (chord * chord) / 4));
  const rise = Math.sqrt(Math.max(0, edge.r * edge.r - away * away)) - apothem;
  return [x + (edge.turn * rise * dy) / chord, y - (edge.turn * rise * dx) / chord];
}
