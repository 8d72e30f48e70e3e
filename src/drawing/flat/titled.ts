import { type Flat, flatExtents, layers, letterHeight, lineBetween, type Note, type Shape } from "./flat.ts";

/** What stands on a machine's drawing beside the part: whose it is, how it lies, and what a person took upon themselves. */
export type Title = {
  readonly order: string;
  readonly part: string;
  readonly fingerprint: string;
  readonly hand: "right" | "left";
  readonly seenFrom: string;
  readonly overruled: readonly string[];
};

const bar = 100;
const lineStep = letterHeight * 1.7;

/**
 * A drawing with its title note and a 100 mm scale bar under it, on the note layer.
 *
 * The bar has a tick every 10 mm. Local codes, the machine's manual and a competent person are named on every drawing, since
 * whoever cuts from it may see nothing else.
 */
export function titled(flat: Flat, title: Title): Flat {
  const extents = flatExtents(flat);
  if (extents === undefined) return flat;
  const x = extents.minX;
  const y = extents.minY - 8;
  const lines = [
    `ORDER ${title.order}   PART ${title.part}   FINGERPRINT ${title.fingerprint}`,
    `${title.hand.toUpperCase()} HAND   SEEN FROM THE ${title.seenFrom.toUpperCase()}   UNIT MM   BAR ${bar} MM`,
    "LOCAL CODES, THE MACHINE'S MANUAL AND A COMPETENT PERSON COME FIRST",
    ...title.overruled.map((reason) => `OVERRULED ${reason}`),
  ];
  const notes = lines.map((text, i): Note => {
    return { text, x, y: y - 4 - lineStep * (i + 1), height: letterHeight, turn: 0, align: "left" };
  });
  return { shapes: [...flat.shapes, ...scaleBar(x, y)], notes: [...flat.notes, ...notes] };
}

function scaleBar(x: number, y: number): Shape[] {
  const ticks = Array.from({ length: bar / 10 + 1 }, (_, i) => {
    return lineBetween(x + 10 * i, y, x + 10 * i, y - (i % 5 === 0 ? 4 : 2.5));
  });
  return [lineBetween(x, y, x + bar, y), ...ticks].map((path) => ({ layer: layers.note, path }));
}
