import type { RecessPart } from "../../order/recess-part.ts";
import type { Spec } from "../../order/spec.ts";
import { pocketsOf } from "../recess/pockets.ts";
import { madeBores, madeRecesses, type Recesses, recessSizes } from "../recess/recesses.ts";
import type { Taken } from "./ground.ts";

/** What recesses, covers and wires' bores take of a part so thick, mm. */
export function recessesTaken(part: RecessPart, thickness: number, spec: Spec, made: Recesses): Taken[] {
  const recesses = madeRecesses(made).filter((recess) => recess.part === part);
  const sunk = recesses.flatMap((recess) =>
    pocketsOf(recess, recessSizes(spec)).map(({ from, path, depth }): Taken => {
      const deep = depth === "through" ? thickness : depth;
      return { kind: "sunk", what: `recess ${recess.id}`, from, path, depth: deep };
    }),
  );
  const threads = recesses.flatMap(({ id }) => made.threadHoles[id]?.bore ?? []);
  const wires = madeBores(made).flatMap(({ drilled }) =>
    drilled.filter((one) => one.part === part).map(({ bore }) => bore),
  );
  const bored = [...threads, ...wires].map(({ id, from, to, diameter }): Taken => {
    return { kind: "bored", what: `the bore ${id}`, axis: { from, to }, radius: diameter / 2 };
  });
  return [...sunk, ...bored];
}
