import type { Edge } from "../arrangement/edge.ts";
import { tolerance } from "../tolerance.ts";

/**
 * Where the full line or circle of one edge meets that of another: x, y, x, y … (at most two points, mm). Where the two
 * run past each other within `tolerance.snap` (a lens thinner than that) they touch in the one point between. Parallel
 * lines, and circles that are the same within the tolerance, give nothing: their edges meet at ends or not at all.
 */
export function meetCarriers(a: Edge, b: Edge): number[] {
  if (a.turn === 0) return b.turn === 0 ? lineWithLine(a, b) : lineWithCircle(a, b);
  return b.turn === 0 ? lineWithCircle(b, a) : circleWithCircle(a, b);
}

function lineWithLine(a: Edge, b: Edge): number[] {
  const ux = a.bx - a.ax;
  const uy = a.by - a.ay;
  const vx = b.bx - b.ax;
  const vy = b.by - b.ay;
  const cross = ux * vy - uy * vx;
  if (cross === 0) return [];
  const t = ((b.ax - a.ax) * vy - (b.ay - a.ay) * vx) / cross;
  return [a.ax + t * ux, a.ay + t * uy];
}

function lineWithCircle(line: Edge, arc: Edge): number[] {
  const ux = line.bx - line.ax;
  const uy = line.by - line.ay;
  const length = Math.sqrt(ux * ux + uy * uy);
  const ex = ux / length;
  const ey = uy / length;
  const along = (arc.cx - line.ax) * ex + (arc.cy - line.ay) * ey;
  const away = Math.abs(ex * (arc.cy - line.ay) - ey * (arc.cx - line.ax));
  if (away > arc.r + tolerance.snap) return [];
  const footX = line.ax + along * ex;
  const footY = line.ay + along * ey;
  if (away > arc.r - tolerance.snap) return [footX, footY];
  const half = Math.sqrt((arc.r - away) * (arc.r + away));
  return [footX - half * ex, footY - half * ey, footX + half * ex, footY + half * ey];
}

function circleWithCircle(a: Edge, b: Edge): number[] {
  const dx = b.cx - a.cx;
  const dy = b.cy - a.cy;
  const apart = Math.sqrt(dx * dx + dy * dy);
  const { snap } = tolerance;
  const less = Math.abs(a.r - b.r);
  if (apart > a.r + b.r + snap || apart < less - snap) return [];
  if (apart < snap) return [];
  const ex = dx / apart;
  const ey = dy / apart;
  const along = (apart + ((a.r - b.r) * (a.r + b.r)) / apart) / 2;
  if (apart > a.r + b.r - snap) {
    const middle = (apart + a.r - b.r) / 2;
    return [a.cx + middle * ex, a.cy + middle * ey];
  }
  if (apart < less + snap) {
    const middle = (a.r > b.r ? a.r + b.r + apart : apart - a.r - b.r) / 2;
    return [a.cx + middle * ex, a.cy + middle * ey];
  }
  const half = Math.sqrt(Math.max(0, (a.r - along) * (a.r + along)));
  const x = a.cx + along * ex;
  const y = a.cy + along * ey;
  return [x + half * ey, y - half * ex, x - half * ey, y + half * ex];
}
