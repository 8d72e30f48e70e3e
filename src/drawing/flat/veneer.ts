import { intersection } from "../../geometry/boolean/intersection.ts";
import { extentsOf } from "../../geometry/measure.ts";
import { mirrored } from "../../geometry/mirror.ts";
import { offsetPath } from "../../geometry/offset/offset-path.ts";
import type { Path } from "../../geometry/path.ts";
import { centroid } from "../../geometry/path-measures/centroid.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { step } from "../../step/step.ts";
import { type Flat, layers, letterHeight, lineBetween, type Shape } from "./flat.ts";

/** A part's outline seen from its front, and a veneer for one of its faces; mm and degrees. `under` is what the wood under it is planed to. */
export type VeneerInput = {
  readonly hand: "right" | "left";
  readonly on: string;
  readonly face: "front" | "back";
  readonly path: Path;
  readonly margin: number;
  readonly grain: number;
  readonly pair: "mirrored" | "none";
  readonly thickness: number;
  readonly whole: number;
  readonly under: number;
};

/** How far apart the two leaves of a pair are drawn, mm. */
const apart = 10;

/**
 * A veneer to cut: its part's outline and the margin all round, with the direction of its grain. A mirrored pair is two leaves, each trimmed straight along the
 * middle where they meet, drawn side by side as they open. Throws where the outline has no such margin in one piece.
 */
export const veneerFlat = step("outline.veneer", 1, (given: VeneerInput): Flat => {
  const { hand, face, path, margin, grain, pair } = given;
  const grown = offsetPath(path, margin);
  if (grown.outcome !== "ok") throw new RangeError(`the veneer's outline is ${grown.outcome}`);
  const leaves = pair === "none" ? [shapesOf(grown.path, grain)] : bothLeaves(grown.path, grain);
  const shapes = leaves.flat();
  // From the back the treble side lies the other way, as the part does when it is turned over.
  const turned = (hand === "left") !== (face === "back");
  const flat = turned ? shapes.map((shape) => ({ ...shape, path: mirrored(shape.path, "y") })) : shapes;
  const { maxX, maxY } = extentsOf(flat.map((shape) => shape.path))!;
  return {
    shapes: flat,
    notes: wordsOf(given).map((text, i) => ({
      ...{ text, x: maxX + 8, y: maxY - (i + 1) * 2 * letterHeight },
      ...{ height: letterHeight, turn: 0, align: "left" as const },
    })),
  };
});

function wordsOf({ on, face, margin, pair, grain, thickness, whole, under }: VeneerInput): string[] {
  return [
    `veneer for the ${face} of the ${on}, ${thickness.toFixed(2)} thick, its outer face up`,
    `${margin.toFixed(2)} outside the ${on}'s outline all round${pair === "mirrored" ? ", trimmed on the line where the leaves meet" : ""}`,
    pair === "mirrored"
      ? `a mirrored pair: two leaves cut from one pack and opened like a book, grain ${grain.toFixed(1)} deg either way`
      : `grain along the scribed line, ${grain.toFixed(1)} deg from the ${on}'s axis`,
    `the ${on} is ${whole.toFixed(2)} thick when finished, veneers included: plane its wood to ${under.toFixed(2)}`,
  ];
}

/** An outline to cut, and the way of its grain through its middle. */
function shapesOf(path: Path, grain: number): Shape[] {
  const { minX, maxX, minY, maxY } = extentsOf([path])!;
  const long = Math.min(maxX - minX, maxY - minY) / 4;
  const angle = (grain * Math.PI) / 180;
  const [dx, dy] = [long * Math.cos(angle), long * Math.sin(angle)];
  const middle = centroid(path);
  if (middle.kind !== "ok") throw new RangeError("a veneer without an area");
  const { x, y } = middle.point;
  return [
    { layer: layers.outer, path },
    { layer: layers.scribe, path: lineBetween(x - dx, y - dy, x + dx, y + dy) },
  ];
}

function bothLeaves(path: Path, grain: number): Shape[][] {
  const { minX, maxX, maxY } = extentsOf([path])!;
  const half = rectangle(minX - 1, 0, maxX + 1, maxY + 1);
  const cut = intersection([{ outer: path, holes: [] }], [{ outer: half, holes: [] }]);
  if (cut.outcome !== "ok" || cut.region.length !== 1)
    throw new RangeError(`a leaf of the veneer is not one piece: ${cut.outcome}`);
  const treble = shapesOf(cut.region[0]!.outer, grain).map((shape) => ({
    ...shape,
    path: { ...shape.path, points: shape.path.points.map((at) => ({ ...at, y: at.y + apart / 2 })) },
  }));
  return [treble, treble.map((shape) => ({ ...shape, path: mirrored(shape.path, "y") }))];
}
