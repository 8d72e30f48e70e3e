import { arcEdge } from "../arrangement/edge.ts";
import type { Pen } from "../arrangement/pen.ts";
import { tolerance } from "../tolerance.ts";
import type { OffsetOptions } from "./options.ts";
import type { Parallel } from "./parallel.ts";
import { isHollow } from "./trims.ts";

/**
 * Draws what leads from the end of one edge's parallel to the start of the next one's, about the corner between them.
 * On the hollow side it goes by way of the corner, so that with the edges' own sweep every face is counted rightly; on
 * the other it goes round. Two edges that fold back on one another are gone round, which takes in nothing farther than
 * the distance whichever side is hollow.
 */
export function drawCorner(
  pen: Pen,
  before: Parallel,
  after: Parallel,
  distance: number,
  options: Required<OffsetOptions>,
): void {
  const name = before.name + 1;
  const { bx: x, by: y } = before.source;
  const toX = x + after.startX * distance;
  const toY = y + after.startY * distance;
  if (Math.abs(toX - pen.x) < tolerance.snap && Math.abs(toY - pen.y) < tolerance.snap) return;
  const cosine = before.endX * after.startX + before.endY * after.startY;
  const folds = cosine < -1 + foldedBack;
  if (!folds && isHollow(before, after, distance)) {
    pen.line(x, y, 1, name);
    pen.line(toX, toY, 1, name);
    return;
  }
  const side = Math.sign(distance);
  if (options.corners === "mitre" && !folds && 2 <= options.mitreLimit ** 2 * (1 + cosine)) {
    // Named as the line that they lead on, so that they are one with it in the end; an arc is led on by a line.
    const reach = distance / (1 + cosine);
    const leading = before.source.turn === 0 ? before.name : name;
    const trailing = after.source.turn === 0 ? after.name : name;
    pen.line(x + (before.endX + after.startX) * reach, y + (before.endY + after.startY) * reach, 1, leading);
    pen.line(toX, toY, 1, trailing);
    return;
  }
  if (folds) {
    // Ahead of the corner: normals turned a quarter of a circle forward.
    const aheadX = -(before.endY - after.startY);
    const aheadY = before.endX - after.startX;
    const size = Math.abs(distance) / Math.sqrt(aheadX * aheadX + aheadY * aheadY);
    drawRound(pen, x, y, x + aheadX * size, y + aheadY * size, distance, side, name);
  }
  drawRound(pen, x, y, toX, toY, distance, side, name);
}

/** Cosine of a turn above -1 up to which an edge counts as folding back on the one before: within 0.1 degree. */
const foldedBack = 1e-6;

/** An arc about (x, y) from where the pen is, by at most half a circle; sin(sweep / 2) from its chord. */
function drawRound(
  pen: Pen,
  x: number,
  y: number,
  toX: number,
  toY: number,
  distance: number,
  side: number,
  name: number,
): void {
  const radius = Math.abs(distance);
  const dx = toX - pen.x;
  const dy = toY - pen.y;
  const sine = Math.min(1, Math.sqrt(dx * dx + dy * dy) / (2 * radius));
  const cross = (pen.x - x) * (toY - y) - (pen.y - y) * (toX - x);
  const cosine = sine === 0 ? 1 : Math.max(0, (side * cross) / (2 * sine * radius * radius));
  const bulge = (side * sine) / (1 + cosine);
  if (bulge === 0) return;
  pen.draw(arcEdge(pen.x, pen.y, toX, toY, bulge, x, y, radius, 1, name));
}
