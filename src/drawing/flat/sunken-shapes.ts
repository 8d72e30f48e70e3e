import { circle } from "../../geometry/circle.ts";
import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { alongBore, type Drilled } from "../../instrument/drilled.ts";
import type { Pocket } from "../../instrument/pocket.ts";
import { layers, letterHeight, lineBetween, type Note, type Shape } from "./flat.ts";

/** What a drawing shows of all that is sunk into a part from one of its faces, seen from the front: its shapes to cut, and what is written beside them. */
export type SunkenShapes = { readonly shapes: readonly Shape[]; readonly notes: readonly Note[] };

/**
 * Pockets from one face as recesses of their depth and bores of their diameter, each with its name; wires' bores as the centre lines of their stretches in the
 * wood, for whoever drills from one recess to another.
 */
export function sunkenShapes(
  pockets: readonly Pocket[],
  drilled: readonly Drilled[],
  thickness: number,
): SunkenShapes {
  const depthOf = ({ depth }: Pocket) => (depth === "through" ? thickness : depth);
  const cut = pockets.map((pocket): Shape => {
    const { bore, path } = pocket;
    return { layer: bore === null ? layers.recess(depthOf(pocket)) : layers.bore(bore), path };
  });
  const axes = drilled.flatMap((bore) =>
    bore.wood
      .map(([from, to]) => [alongBore(bore, from), alongBore(bore, to)] as const)
      .filter(([a, b]) => Math.hypot(b.x - a.x, b.y - a.y) > 1e-6)
      .map(([a, b]): Shape => {
        return { layer: layers.note, path: lineBetween(a.x, a.y, b.x, b.y), chain: true };
      }),
  );
  const named = pockets.filter(({ bore, id }) => bore === null && !id.endsWith("-ledge"));
  return {
    shapes: [...cut, ...axes, ...drilled.filter(isSquare).map(squareBore)],
    notes: named.map((pocket) => {
      const shaft = pockets.some(({ id }) => id === `${pocket.id}-shaft`);
      return noteIn(pocket.path, pocket.id.toUpperCase(), shaft);
    }),
  };
}

function isSquare({ from, to }: Drilled): boolean {
  return Math.hypot(to.x - from.x, to.y - from.y) < 1e-6;
}

function squareBore({ from, diameter }: Drilled): Shape {
  return { layer: layers.bore(diameter), path: circle({ x: from.x, y: from.y }, diameter / 2) };
}

/** In the middle of what it names, or, where a shaft's hole is there, beside that. */
function noteIn(path: Path, text: string, beside: boolean): Note {
  const { minX, maxX, minY, maxY } = extentsOf([path])!;
  const y = beside ? maxY - 1 - letterHeight : (minY + maxY - letterHeight) / 2;
  return { text, x: (minX + maxX) / 2, y, height: letterHeight, turn: 0, align: "center" };
}

/** What is to be said beside a drawing of pockets from one face: how deep each goes, how its screws are bored, and the bores. */
export function sunkenWords(
  pockets: readonly Pocket[],
  drilled: readonly Drilled[],
  face: "front" | "back",
): string[] {
  const deep = ({ depth }: Pocket) => (depth === "through" ? "right through" : `${depth.toFixed(2)} deep`);
  return [
    ...pockets
      .filter(({ id }) => !/-screw-[2-9]$/.test(id))
      .map((pocket) => {
        const { id, bore } = pocket;
        const size = bore === null ? "" : `bore ${bore.toFixed(2)}, `;
        return `${id.replace(/-screw-1$/, ", its cover's screws")}: ${size}${deep(pocket)} from the ${face}`;
      }),
    ...drilled.map(({ id, diameter, from, to, wood }) => {
      const [a, b] = [wood[0]![0], wood.at(-1)![1]].map((way) => alongBore({ from, to }, way).z);
      return `${id}: bore ${diameter.toFixed(2)}, its middle ${(-a!).toFixed(2)} to ${(-b!).toFixed(2)} under the front`;
    }),
  ];
}
