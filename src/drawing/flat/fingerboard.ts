import { circle } from "../../geometry/circle.ts";
import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { boardWidth, type Taper } from "../../instrument/fingerboard/taper.ts";
import { stringAcross } from "../../instrument/strings/layout.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, turnedOver } from "./flat.ts";

/** What a fingerboard's drawing shows; mm. */
export type FingerboardInput = {
  readonly hand: "right" | "left";
  readonly path: Path;
  readonly taper: Taper;
  readonly stringLength: number;
  readonly strings: readonly { readonly name: string; readonly nut: number; readonly bridge: number }[];
  readonly stations: readonly number[];
  /** The frets' slots, by their middles from the nut and half their lengths; null on a fretless board. */
  readonly frets: {
    readonly width: number;
    readonly depth: number;
    readonly slots: readonly { readonly x: number; readonly half: number }[];
  } | null;
  /** The inlays' recesses; their depth is under the lowest place of the surface over each. */
  readonly inlays: readonly { readonly id: string; readonly recess: Path; readonly depth: number }[];
  /** The dots of the face; their bores' depth is under the lowest place of the surface over each. Null without. */
  readonly dots: {
    readonly size: number;
    readonly depth: number;
    readonly list: readonly { readonly x: number; readonly y: number }[];
  } | null;
};

/** The fingerboard from the front, head at the left, with its centreline, string lines and stations for reference. */
export const fingerboardFlat = step("outline.fingerboard", 4, (given: FingerboardInput): Flat => {
  const { hand, path, taper, stringLength, strings, stations, frets, inlays, dots } = given;
  const { length } = taper;
  const note = (text: string, x: number, y: number, align: "left" | "center") => {
    return { text, x, y, height: letterHeight, turn: 0, align } as const;
  };
  const across = (x: number) => boardWidth(taper, x) / 2;
  const lines = strings.map(({ nut, bridge }) => {
    return lineBetween(0, nut, length, stringAcross({ nut, bridge }, length, stringLength));
  });
  const marks = stations.map((x) => lineBetween(x, -across(x), x, across(x)));
  const flat: Flat = {
    shapes: [
      { layer: layers.outer, path },
      { layer: layers.part, path },
      { layer: layers.note, path: lineBetween(-4, 0, length, 0), chain: true },
      ...slotsOf(frets),
      ...inlays.map(({ recess, depth }) => ({ layer: layers.recess(depth), path: recess })),
      ...(dots?.list ?? []).map((at) => ({
        layer: layers.bore(dots!.size),
        path: circle(at, dots!.size / 2),
      })),
      ...[...lines, ...marks].map((line) => ({ layer: layers.note, path: line })),
    ],
    notes: [
      ...strings.map(({ name, nut, bridge }) => {
        return note(
          name,
          length + 2,
          stringAcross({ nut, bridge }, length, stringLength) - letterHeight / 2,
          "left",
        );
      }),
      ...stations.map((x) => note(`x ${x}`, x, across(x) + 2, "center")),
      ...depths(given).map((text, i, all) => {
        // Over the board from top to bottom for either hand, though a left-hand drawing is turned over.
        const y = taper.end / 2 + 12 + 1.7 * letterHeight * (all.length - 1 - i);
        return note(text, 0, hand === "left" ? -y - letterHeight : y, "left");
      }),
      // Beyond the bass edge, in two rows by turns: the highest frets stand nearer to each other than a number is wide.
      ...(frets?.slots ?? []).map(({ x }, i) => {
        return note(`${i + 1}`, x, -across(x) - (i % 2 === 0 ? 2 : 6) - letterHeight, "center");
      }),
    ],
  };
  return hand === "left" ? turnedOver(flat, "y") : flat;
});

/** What the depths of slots, dots and inlays are measured from: the surface over them isn't flat. */
function depths({ frets, dots, inlays }: FingerboardInput): string[] {
  const lowest = "UNDER THE LOWEST PLACE OF THE SURFACE OVER IT, ITS FLOOR LEVEL";
  return [
    ...(frets === null
      ? []
      : [`SLOTS ${frets.depth.toFixed(2)} DEEP SQUARE TO THE CURVED SURFACE, WHICH THEIR FLOORS FOLLOW`]),
    ...(dots === null ? [] : [`DOTS: EACH BORE ${dots.depth.toFixed(2)} DEEP ${lowest}`]),
    ...inlays.map(({ id, depth }) => `INLAY ${id.toUpperCase()}: RECESS ${depth.toFixed(2)} DEEP ${lowest}`),
  ];
}

/** Each slot as a closed recess, as deep under the curved surface as its layer says. */
function slotsOf(frets: FingerboardInput["frets"]): Flat["shapes"] {
  if (frets === null) return [];
  const { width, depth, slots } = frets;
  return slots.map(({ x, half }) => {
    return { layer: layers.recess(depth), path: rectangle(x - width / 2, -half, x + width / 2, half) };
  });
}
