import { type Extents, extentsApart, extentsOf } from "../../geometry/measure.ts";
import type { Store } from "../../step/store.ts";
import type { Drilled } from "../drilled.ts";
import { boxRound, nearBy } from "../near-by.ts";
import { betweenBores, boreWalls, type NamedBore, rodsOf } from "./bore-walls.ts";
import type { Ground, Rod, Upright } from "./ground.ts";
import { type RecessWall, recessWalls, type SunkRecess, toMend } from "./walls.ts";

/** A wire's bore in one part, and the recesses that it joins. */
export type SunkBore = { readonly bore: Drilled; readonly between: readonly string[] };

/** One part with all that is sunk into it for the electronics, and the least wood wanted, mm. */
export type Sunk = {
  readonly ground: Ground;
  readonly recesses: readonly SunkRecess[];
  readonly bores: readonly SunkBore[];
  readonly wall: number;
};

/**
 * The wood left round each recess and each wire's bore of a part. Each is answered by itself and told only of what lies near it, so that what moves far
 * away leaves it alone.
 */
export function partWalls({ ground, recesses, bores, wall }: Sunk, store: Store): RecessWall[] {
  const boxes = new Map(recesses.map((recess) => [recess, boxOf(recess.uprights)]));
  const uprights = ground.uprights.map((upright) => ({ upright, box: extentsOf([upright.path])! }));
  const rods = ground.rods.map((rod) => ({ rod, box: boxOfRods([rod]) }));
  const groundBy = (box: Extents): Ground => ({
    ...ground,
    uprights: nearBy(uprights, wall, (one) => extentsApart(box, one.box)).map(({ upright }) => upright),
    rods: nearBy(rods, wall, (one) => extentsApart(box, one.box)).map(({ rod }) => rod),
  });
  const recessesBy = (box: Extents, all: readonly SunkRecess[]) =>
    nearBy(all, wall, (one) => extentsApart(box, boxes.get(one)!));
  const boredBy = (given: NamedBore): readonly RecessWall[] => {
    const box = boxOfRods(rodsOf(given.bore));
    const apart = recesses.filter(({ id }) => !given.joins.includes(id));
    const near = { ground: groundBy(box), recesses: recessesBy(box, apart) };
    return store.answer(boreWalls, { ...given, ...near, wall }).value;
  };
  return [
    ...recesses.flatMap((recess, i) => {
      const box = boxes.get(recess)!;
      const before = recessesBy(box, recesses.slice(0, i));
      return store.answer(recessWalls, { ground: groundBy(box), recess, before, wall }).value;
    }),
    ...bores.flatMap(({ bore, between }, i) => {
      const named = { named: `bore ${bore.id}`, of: `bore.${bore.id}`, bore, joins: between };
      const others = bores.slice(0, i).filter((other) => !meet(other.between, between));
      const apart = others.map((other) => betweenBores(bore, other.bore, ground, wall));
      return [...boredBy(named), ...toMend(apart, wall)];
    }),
    ...recesses.flatMap(({ id, out }) =>
      out === null
        ? []
        : boredBy({ named: `recess ${id}'s way out`, of: `recess.${id}`, bore: out, joins: [id] }),
    ),
  ];
}

/** Two bores that begin in one recess meet there. */
function meet(one: readonly string[], other: readonly string[]): boolean {
  return one.some((id) => id !== "bridge" && other.includes(id));
}

function boxOf(uprights: readonly Upright[]): Extents {
  return extentsOf(uprights.map(({ path }) => path))!;
}

/** The box round some straight holes in plan. */
function boxOfRods(rods: readonly Rod[]): Extents {
  const boxes = rods.map(({ from, to, diameter }) => boxRound(from, to, diameter / 2));
  return {
    ...{ minX: Math.min(...boxes.map(({ minX }) => minX)), maxX: Math.max(...boxes.map(({ maxX }) => maxX)) },
    ...{ minY: Math.min(...boxes.map(({ minY }) => minY)), maxY: Math.max(...boxes.map(({ maxY }) => maxY)) },
  };
}
