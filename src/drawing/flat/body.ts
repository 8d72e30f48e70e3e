import { difference } from "../../geometry/boolean/difference.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import type { Pocket } from "../../instrument/pocket.ts";
import type { BodyEdge } from "../../order/body-edge.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, turnedOver } from "./flat.ts";
import { sunkenShapes, sunkenWords } from "./sunken-shapes.ts";

/**
 * A body from the front, mm: its outline and the room for the core, sunk into it or right `through`. Along the core's front from its
 * start, and to the treble side.
 */
export type BodyFlatInput = {
  readonly hand: "right" | "left";
  readonly path: Path;
  readonly recess: { readonly path: Path; readonly depth: number; readonly corner: number };
  readonly through: boolean;
  readonly thickness: number;
  readonly drop: number;
  readonly arris: number;
  readonly profile: { readonly front: string; readonly back: string };
  readonly cut: readonly BodyEdge[];
  /** What is sunk from its front, in its own axes. */
  readonly pockets: readonly Pocket[];
};

/**
 * The body from the front, head at the left: its outline to cut, the recess for the core, which runs out over the head end, and the
 * centreline. Where the core runs right through, its room is part of the outer edge. Throws where that would fall into pieces.
 */
export const bodyFlat = step("outline.body", 2, (given: BodyFlatInput): Flat => {
  const { hand, path, recess, through, pockets, thickness } = given;
  const sunk = sunkenShapes(pockets, [], thickness);
  const { minX, maxX, maxY } = extentsOf([path])!;
  const words = wordsOf(given);
  const drawn: Flat = {
    shapes: [
      { layer: layers.outer, path: through ? lessRoom(path, recess.path) : path },
      ...(through ? [] : [{ layer: layers.recess(recess.depth), path: recess.path }]),
      { layer: layers.note, path: lineBetween(minX - 14, 0, maxX + 4, 0), chain: true },
      ...sunk.shapes,
    ],
    notes: sunk.notes,
  };
  // The words are written afterwards, so that they stand in the same order for either hand.
  const turned = hand === "left" ? turnedOver(drawn, "y") : drawn;
  const beside = words.map((text, i) => ({
    ...{ text, x: maxX + 10, y: maxY - (i + 1) * 2 * letterHeight },
    ...{ height: letterHeight, turn: 0, align: "left" as const },
  }));
  return { ...turned, notes: [...turned.notes, ...beside] };
});

function wordsOf({
  recess,
  through,
  thickness,
  drop,
  arris,
  profile,
  cut,
  pockets,
}: BodyFlatInput): string[] {
  const corners = `inside corners ${recess.corner.toFixed(2)}: cutter ${(2 * recess.corner).toFixed(2)} or less`;
  const left = (["head", "bass", "treble"] as const).filter((edge) => !cut.includes(edge));
  return [
    `body in one piece, ${thickness.toFixed(2)} thick, seen from its front`,
    `front ${drop.toFixed(2)} under the core's front`,
    through
      ? "room for the core right through, open at the head end"
      : `recess for the core ${recess.depth.toFixed(2)} deep, runs out over the head end`,
    corners,
    `arrises ${arris.toFixed(2)}: front ${profile.front}, back ${profile.back}; none in the core's room`,
    left.length === 0
      ? "cut all round"
      : `cut: ${cut.join(", ")}; the blank's own edge stays: ${left.join(", ")}`,
    ...sunkenWords(pockets, [], "front"),
  ];
}

/** The outline with the core's room cut into it from the head end: in one piece behind the core's tail. */
function lessRoom(path: Path, room: Path): Path {
  const left = difference([{ outer: path, holes: [] }], [{ outer: room, holes: [] }]);
  if (left.outcome !== "ok" || left.region.length !== 1)
    throw new RangeError(`the body less the core's room is not one piece: ${left.outcome}`);
  return left.region[0]!.outer;
}
