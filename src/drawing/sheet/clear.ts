import { boxesNear, boxesTouch } from "../../geometry/boxes-near.ts";
import { grown } from "../../geometry/extents/grown.ts";
import { overlap } from "../../geometry/extents/overlap.ts";
import { facet } from "../../geometry/facet.ts";
import type { Point } from "../../geometry/point.ts";
import { segmentsOf } from "../../geometry/segment.ts";
import { textBox } from "./lettering.ts";
import type { Box, Marks, Weight } from "./sheet.ts";

/** How far a text stays from other texts and from lines, mm on paper. */
const gap = 0.6;

/** How near two lines may run along each other before one hides the other, mm on paper. */
const beside = 1;

/** How near two dimensions' lines may run along each other, mm on paper. */
const apart = 2.5;

/** How far an arc's chords may stray from it where only clearance is asked, mm. */
const chord = 0.02;

/** A straight piece of a line, and the box round it. */
export type Stretch = Box & { readonly weight: Weight; readonly a: Point; readonly b: Point };

/** What is drawn already, as straight stretches and boxes of text. */
export type Taken = { readonly stretches: readonly Stretch[]; readonly boxes: readonly Box[] };

/** Marks as what they take up. */
export function takenBy({ lines, texts }: Marks): Taken {
  const stretches = lines.flatMap(({ weight, path }) =>
    segmentsOf(facet(path, chord)).map(({ from, to }) => stretch(weight, from, to)),
  );
  return { stretches, boxes: texts.map(textBox) };
}

function stretch(weight: Weight, a: Point, b: Point): Stretch {
  return {
    ...{ weight, a, b, minX: Math.min(a.x, b.x), maxX: Math.max(a.x, b.x) },
    ...{ minY: Math.min(a.y, b.y), maxY: Math.max(a.y, b.y) },
  };
}

/** What of something drawn lies in or at a box, in lists of the asker's own. */
export type Nearby = (around: Box) => { readonly stretches: Stretch[]; readonly boxes: Box[] };

/** Makes what is drawn ready to be asked often what of it lies near something. */
export function nearby({ stretches, boxes }: Taken): Nearby {
  const [lines, texts] = [boxesNear(stretches), boxesNear(boxes)];
  return (around) => ({ stretches: lines(around), boxes: texts(around) });
}

/** What lies near of what is ready to be asked, and of a little more beside it. */
export function nearbyWith(drawn: Nearby, more: Taken): Nearby {
  return (around) => {
    const { stretches, boxes } = drawn(around);
    for (const one of more.stretches) if (boxesTouch(one, around)) stretches.push(one);
    for (const one of more.boxes) if (boxesTouch(one, around)) boxes.push(one);
    return { stretches, boxes };
  };
}

/** Whether a text stands over what is there, or nearer to it than a gap. */
export function isOver(taken: Nearby, text: Box): boolean {
  const box = grown(text, gap);
  const { stretches, boxes } = taken(box);
  return boxes.some((other) => overlap(box, other)) || stretches.some((stretch) => crosses(stretch, box));
}

/**
 * How new marks stand beside what is there.
 *
 * - `clear`: no text over or nearer than a gap to another text or any line, its own included; no line through a text; no
 *   dimension's line along any line or through another's, or under a text as if it were its own.
 * - `crossing`: all that, but a dimension's line crosses another's.
 * - `blocked`: neither.
 */
export function standing(taken: Nearby, more: Taken): "clear" | "crossing" | "blocked" {
  const boxes = more.boxes.map((box) => grown(box, gap));
  const own = more.boxes.some((box, i) => more.boxes.some((other, k) => k > i && overlap(box, other)));
  if (own) return "blocked";
  if (boxes.some((box) => more.stretches.some((stretch) => crosses(stretch, box)))) return "blocked";
  const near = taken(grown(extentOf(more), 2 * gap + apart + under));
  if (boxes.some((box) => near.boxes.some((other) => overlap(box, other)))) return "blocked";
  if (boxes.some((box) => near.stretches.some((stretch) => crosses(stretch, box)))) return "blocked";
  if (more.boxes.some((box) => near.stretches.some((other) => misread(box, other)))) return "blocked";
  if (near.boxes.some((box) => more.stretches.some((one) => misread(box, one)))) return "blocked";
  const there = near.boxes.map((box) => grown(box, gap));
  if (there.some((box) => more.stretches.some((stretch) => crosses(stretch, box)))) return "blocked";
  if (more.stretches.some((one) => near.stretches.some((other) => hides(one, other)))) return "blocked";
  return more.stretches.some((one) => near.stretches.some((other) => crossing(one, other)))
    ? "crossing"
    : "clear";
}

function extentOf({ stretches, boxes }: Taken): Box {
  let [minX, minY] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [maxX, maxY] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const box of [...stretches, ...boxes]) {
    minX = Math.min(minX, box.minX);
    minY = Math.min(minY, box.minY);
    maxX = Math.max(maxX, box.maxX);
    maxY = Math.max(maxY, box.maxY);
  }
  return { minX, minY, maxX, maxY };
}

/** Whether two boxes come as near each other as so much. */
function touchesBy(a: Box, b: Box, by: number): boolean {
  return a.minX - by <= b.maxX && b.minX <= a.maxX + by && a.minY - by <= b.maxY && b.minY <= a.maxY + by;
}

/** Whether a stretch passes through a box: clipped by its four sides in turn, something of it is left (Liang and Barsky); touching it is none. */
function crosses(of: Stretch, box: Box): boolean {
  if (!boxesTouch(of, box)) return false;
  const { a, b } = of;
  let [first, last] = [0, 1];
  for (const [from, to, least, most] of [
    [a.x, b.x, box.minX, box.maxX],
    [a.y, b.y, box.minY, box.maxY],
  ] as const) {
    if (from === to) {
      if (from <= least || from >= most) return false;
      continue;
    }
    const [enter, leave] = [(least - from) / (to - from), (most - from) / (to - from)];
    first = Math.max(first, Math.min(enter, leave));
    last = Math.min(last, Math.max(enter, leave));
  }
  return first < last;
}

/** How far under a text a level line is taken for the one that it belongs to, mm on paper. */
const under = 2.6;

/** Whether a text stands on another dimension's level line as if it were its own. */
function misread(box: Box, { weight, a, b, minX, maxX }: Stretch): boolean {
  if (weight !== "dimension" || a.y !== b.y) return false;
  const over = box.minY - a.y;
  return over > 0 && over < under && Math.min(maxX, box.maxX) - Math.max(minX, box.minX) > gap;
}

/** Kinds of line that are read by following them. */
const followed: readonly Weight[] = ["dimension", "station"];

/** Whether a new stretch runs along one that is there, so that one of them can't be followed. */
function hides(one: Stretch, other: Stretch): boolean {
  const both = followed.includes(one.weight) && followed.includes(other.weight);
  const near = both ? apart : beside;
  if (!touchesBy(one, other, near)) return false;
  if (other.weight === "hatch" || other.weight === "arrow" || one.weight === "arrow") return false;
  // A section's thick end may stand on the thin line that leads to its own measure.
  if (one.weight === "station" && other.weight === "extension") return false;
  const fresh = followed.includes(one.weight);
  if (!fresh && !(followed.includes(other.weight) && one.weight === "extension")) return false;
  return along(one, other, near);
}

/** Whether a new dimension's or section's line crosses another's. */
function crossing(one: Stretch, other: Stretch): boolean {
  return followed.includes(one.weight) && followed.includes(other.weight) && cut(one, other);
}

/** Whether two stretches cross inside both. */
function cut({ a, b }: Stretch, { a: c, b: d }: Stretch): boolean {
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Whether two stretches run beside each other, nearly parallel, for more than a millimetre. */
function along({ a, b }: Stretch, { a: c, b: d }: Stretch, near: number): boolean {
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  if (long === 0) return false;
  const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
  const place = ({ x, y }: Point) => ({
    s: (x - a.x) * ux + (y - a.y) * uy,
    t: (y - a.y) * ux - (x - a.x) * uy,
  });
  const [p, q] = [place(c), place(d)];
  if (Math.abs(p.t) > near || Math.abs(q.t) > near) return false;
  return Math.min(long, Math.max(p.s, q.s)) - Math.max(0, Math.min(p.s, q.s)) > 1;
}
