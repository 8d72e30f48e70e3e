import { arcEdge } from "../arrangement/edge.ts";
import { drawEdge, drawLine, type Pen } from "../arrangement/pen.ts";
import { tolerance } from "../tolerance.ts";
import type { OffsetOptions } from "./options.ts";
import { type Parallel, startOf } from "./parallel.ts";
import { isHollow } from "./trims.ts";

/**
 * Draws what leads from one edge's parallel to the next one's, about the corner between them. On the hollow side it
 * goes by way of the corner, so that with the edges' own sweep every face is counted rightly; on the other it goes
 * round. Two edges that fold back on one another are gone round, which takes in nothing farther than the distance
 * whichever side is hollow. An arc without a parallel has its centre in its place.
 */
export function drawCorner(
  pen: Pen,
  before: Parallel,
  after: Parallel,
  distance: number,
  options: Required<OffsetOptions>,
): void {
  const { bx: x, by: y } = before.source;
  const tangent =
    Math.abs((after.startX - before.endX) * distance) < tolerance.snap &&
    Math.abs((after.startY - before.endY) * distance) < tolerance.snap;
  const cosine = before.endX * after.startX + before.endY * after.startY;
  const folds = cosine < -1 + foldedBack;
  if (!tangent && !folds && isHollow(before, after, distance)) drawLine(pen, x, y, 1, before.name + 1);
  else if (!tangent) {
    drawLine(pen, x + before.endX * distance, y + before.endY * distance, 1, before.name + 1);
    if (options.corners === "mitre" && !folds && 2 <= options.mitreLimit ** 2 * (1 + cosine))
      drawMitre(pen, before, after, distance, cosine);
    else {
      if (folds) drawHalfRound(pen, before, after, distance);
      drawRound(
        pen,
        x,
        y,
        x + after.startX * distance,
        y + after.startY * distance,
        distance,
        before.name + 2,
      );
    }
  }
  const to = startOf(after, distance);
  drawLine(pen, to.x, to.y, 1, before.name + 4);
}

/**
 * Leads on to where the two parallels meet, and back. Each line is named as the line that it leads on, to be one with
 * it in the end; an arc is led on by a line of another name.
 */
function drawMitre(pen: Pen, before: Parallel, after: Parallel, distance: number, cosine: number): void {
  const { bx, by } = before.source;
  const reach = distance / (1 + cosine);
  const leading = before.source.turn === 0 ? before.name : before.name + 2;
  const trailing = after.source.turn === 0 ? after.name : before.name + 3;
  drawLine(
    pen,
    bx + (before.endX + after.startX) * reach,
    by + (before.endY + after.startY) * reach,
    1,
    leading,
  );
  drawLine(pen, bx + after.startX * distance, by + after.startY * distance, 1, trailing);
}

/** Goes round as far as straight ahead of the corner: the normals turned a quarter of a circle forward. */
function drawHalfRound(pen: Pen, before: Parallel, after: Parallel, distance: number): void {
  const { bx: x, by: y } = before.source;
  const aheadX = -(before.endY - after.startY);
  const aheadY = before.endX - after.startX;
  const size = Math.abs(distance) / Math.sqrt(aheadX * aheadX + aheadY * aheadY);
  drawRound(pen, x, y, x + aheadX * size, y + aheadY * size, distance, before.name + 2);
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
  name: number,
): void {
  const side = Math.sign(distance);
  const radius = Math.abs(distance);
  const dx = toX - pen.x;
  const dy = toY - pen.y;
  const sine = Math.min(1, Math.sqrt(dx * dx + dy * dy) / (2 * radius));
  const cross = (pen.x - x) * (toY - y) - (pen.y - y) * (toX - x);
  const cosine = sine === 0 ? 1 : Math.max(0, (side * cross) / (2 * sine * radius * radius));
  const bulge = (side * sine) / (1 + cosine);
  if (bulge === 0) return;
  drawEdge(pen, arcEdge(pen.x, pen.y, toX, toY, bulge, x, y, radius, 1, name));
}
