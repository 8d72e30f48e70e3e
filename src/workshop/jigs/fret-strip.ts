import type { Path, PathPoint } from "../../geometry/path.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { step } from "../../step/step.ts";
import { lettered, pieceLines } from "./lettered.ts";
import { type Key, type Piece, pieceOf } from "./piece.ts";

/**
 * A strip with a notch at each fret, mm: the slots' middles from the nut, their width as they are sawn and what a printed gap is wider to come out so; the
 * strip's length and thickness. `numbers` are lettered at their frets, `lines` on each piece, where one begins.
 */
export type FretStripInput = {
  readonly frets: readonly number[];
  readonly slot: number;
  readonly growth: number;
  readonly length: number;
  readonly thickness: number;
  readonly numbers: readonly number[];
  readonly lines: readonly string[];
  readonly piece: Piece;
};

/** The strip's width, how deep its notches are, where its two rows of letters and its key lie across, and how far from a piece's end a number stands, mm (G). */
export const fretStrip = { wide: 32, deep: 8, numbers: 13.5, text: 30, key: 18.5, aside: 4 } as const;

/** The dovetail between two pieces: past the notches, in the middle of the wood that is left. */
export const fretStripKey: Key = { y: fretStrip.key, root: 7, end: 10, reach: 7, top: null };

/**
 * A strip that is laid along the board from the nut's end, with a notch as wide as the saw's slot at each fret; each is placed from the nut, so that errors
 * don't add. It lies as it is printed: from the nut along x, the notched edge on y = 0, letters on the upper face.
 */
export const fretStripPiece = step("jig.fret-strip", 1, (given: FretStripInput): Solid => {
  const { thickness, frets, numbers, lines, piece } = given;
  const strip: Solid = {
    ...{ kind: "extrude", height: thickness },
    outlines: [{ outer: outlineOf(given), holes: [] }],
  };
  const [from, to] = [piece.from ?? 0, piece.to ?? given.length];
  const named = numbers.filter(
    (n) => frets[n - 1]! > from + fretStrip.aside && frets[n - 1]! < to - fretStrip.aside,
  );
  const marked = named.reduce<Solid>(
    (jig, n) => lettered(jig, { lines: [`${n}`], x: frets[n - 1]!, y: fretStrip.numbers, z: thickness }),
    pieceOf(strip, piece, fretStripKey),
  );
  return lettered(marked, {
    lines: pieceLines(lines, piece),
    x: (from + to) / 2,
    y: fretStrip.text,
    z: thickness,
  });
});

function outlineOf({ frets, slot, growth, length }: FretStripInput): Path {
  const half = (slot + growth) / 2;
  const at = (x: number, y: number): PathPoint => ({ x, y, bulge: 0 });
  const { wide, deep } = fretStrip;
  const edge = frets.flatMap((x) => [
    at(x - half, 0),
    at(x - half, deep),
    at(x + half, deep),
    at(x + half, 0),
  ]);
  return { closed: true, points: [at(0, 0), ...edge, at(length, 0), at(length, wide), at(0, wide)] };
}
