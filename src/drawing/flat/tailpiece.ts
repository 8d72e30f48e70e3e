import type { Path } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, type Note, turnedOver } from "./flat.ts";

/** What a tailpiece's drawing shows, mm: along the core's front from its start, and to the treble side. */
export type TailpieceFlatInput = {
  readonly hand: "right" | "left";
  readonly path: Path;
  readonly foremost: number;
  readonly end: number;
  readonly strings: readonly {
    readonly name: string;
    readonly diameter: number;
    readonly exit: Point;
    readonly at: Point;
    readonly size: number;
    readonly path: Path;
  }[];
  readonly posts: readonly {
    readonly id: string;
    readonly at: Point;
    readonly size: number;
    readonly path: Path;
  }[];
};

/**
 * The tailpiece from the front, head at the left: its outline to cut, the strings' and the posts' holes to bore, and of each
 * string's groove its middle scribed from the hole to the front, beside which stand string, width and depth.
 */
export const tailpieceFlat = step("outline.tailpiece", 1, (given: TailpieceFlatInput): Flat => {
  const { hand, path, foremost, end, strings, posts } = given;
  const note = (text: string, x: number, y: number, align: Note["align"]): Note => {
    return { text, x, y: y - letterHeight / 2, height: letterHeight, turn: 0, align };
  };
  const flat: Flat = {
    shapes: [
      { layer: layers.outer, path },
      { layer: layers.part, path },
      { layer: layers.note, path: lineBetween(foremost - 4, 0, end + 4, 0), chain: true },
      ...[...strings, ...posts].map(({ size, path: hole }) => ({ layer: layers.bore(size), path: hole })),
      ...strings.map((string) => ({ layer: layers.scribe, path: grooveLine(string) })),
    ],
    notes: [
      ...strings.map(({ name, diameter, exit }) => {
        const groove = `${name} GROOVE ${diameter.toFixed(2)} WIDE ${(diameter / 2).toFixed(2)} DEEP`;
        return note(groove, foremost - 7, exit.y, "right");
      }),
      ...posts.map(({ id, at, size }) => note(`${id} ${size.toFixed(2)}`, end + 6, at.y, "left")),
    ],
  };
  return hand === "left" ? turnedOver(flat, "y") : flat;
});

/** The middle of a string's groove, from the front to its hole's rim. */
function grooveLine({ exit, at, size }: TailpieceFlatInput["strings"][number]): Path {
  const share = 1 - size / 2 / Math.hypot(at.x - exit.x, at.y - exit.y);
  return lineBetween(exit.x, exit.y, exit.x + (at.x - exit.x) * share, exit.y + (at.y - exit.y) * share);
}
