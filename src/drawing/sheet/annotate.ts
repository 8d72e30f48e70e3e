import { overlap } from "../../geometry/extents/overlap.ts";
import { isOver, type Nearby, nearby, nearbyWith, type Stretch, standing, takenBy } from "./clear.ts";
import { textBox } from "./lettering.ts";
import { type Box, type Marks, together } from "./sheet.ts";

/**
 * A thing to be written beside a view: the ways in which it can be drawn, the best first, and its name for a message. `keep` is where
 * its thin lines run whatever the way: texts of others go elsewhere if they can.
 */
export type Annotation = {
  readonly name: string;
  readonly ways: () => Iterable<Marks>;
  readonly keep?: readonly Box[];
};

/** A view with all its annotations, or the first of them that has no clear place at that scale. */
export type Annotated =
  | { readonly kind: "ok"; readonly marks: Marks }
  | { readonly kind: "no-place"; readonly name: string };

/** How often an annotation that finds no place may go before the others. */
const mostTries = 20;

/**
 * A view with its annotations, each drawn in the first of its ways that is clear of what is drawn before it. One that finds no
 * clear way, since those before it stand in its own thin lines' way, goes first, and all are placed anew. Dimension lines cross
 * only where nothing else is left. The same input gives the same drawing.
 */
export function annotated(view: Marks, annotations: readonly Annotation[]): Annotated {
  const drawn = nearby(takenBy(view));
  let order = [...annotations];
  let last = "";
  for (let tries = 0; tries < mostTries; tries++) {
    const placed = inTurn(drawn, order);
    if (placed.kind === "ok") return { kind: "ok", marks: together([view, ...placed.parts]) };
    last = placed.blocked.name;
    if (order[0] === placed.blocked) break;
    order = [placed.blocked, ...order.filter((other) => other !== placed.blocked)];
  }
  return { kind: "no-place", name: last };
}

type InTurn =
  | { readonly kind: "ok"; readonly parts: readonly Marks[] }
  | { readonly kind: "blocked"; readonly blocked: Annotation };

function inTurn(drawn: Nearby, annotations: readonly Annotation[]): InTurn {
  const [stretches, boxes]: [Stretch[], Box[]] = [[], []];
  const taken = nearbyWith(drawn, { stretches, boxes });
  const parts: Marks[] = [];
  for (const [i, annotation] of annotations.entries()) {
    const kept = annotations.slice(i + 1).flatMap(({ keep = [] }) => keep);
    const way = bestWay(taken, kept, annotation);
    if (way === undefined) return { kind: "blocked", blocked: annotation };
    parts.push(way);
    const own = takenBy(way);
    stretches.push(...own.stretches);
    boxes.push(...own.boxes);
  }
  return { kind: "ok", parts };
}

/** The first way that is clear and out of others' way; else the first that is clear; else the first that only crosses lines. */
function bestWay(taken: Nearby, kept: readonly Box[], { ways }: Annotation): Marks | undefined {
  let [clear, crossing]: (Marks | undefined)[] = [];
  for (const way of ways()) {
    // Most ways fail by their words, and those are asked for less than their lines.
    if (way.texts.some((text) => isOver(taken, textBox(text)))) continue;
    const more = takenBy(way);
    const stands = standing(taken, more);
    if (stands === "blocked") continue;
    if (stands === "crossing") crossing ??= way;
    else if (more.boxes.some((box) => kept.some((other) => overlap(box, other)))) clear ??= way;
    else return way;
  }
  return clear ?? crossing;
}
