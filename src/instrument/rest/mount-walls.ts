import type { Path } from "../../geometry/path.ts";
import { polygonRound } from "../../geometry/polygon-round.ts";
import { clearOfPost } from "../../geometry/solid/clear-of-post.ts";
import { listsApart, type Straight } from "../../geometry/solid/segments-apart.ts";
import { step } from "../../step/step.ts";
import { lowerTo, type Wall } from "../wall.ts";
import { cornersOf, edgesOf } from "./edges-of.ts";
import type { Ground, Taken } from "./ground.ts";
import { pastBorders } from "./past-borders.ts";
import { type Slot, slotEnds, slotPath } from "./slot.ts";

/** A hole or a slot sunk into a part from a face, mm: what it is called, the dimensions of its size, depth and travel, and the least wood wanted. */
export type MountWallsInput = {
  readonly ground: Ground;
  readonly what: string;
  readonly from: "front" | "back";
  readonly slot: Slot;
  readonly depth: number;
  readonly wall: number;
  readonly ids: { readonly size: string; readonly depth: string; readonly travel: string | null };
};

/** The wood left round a hole or a slot: under it, to the part's borders, and to what else takes of its wood. */
export const mountWalls = step("rest.mount-walls", 1, (given: MountWallsInput): readonly Wall[] => {
  const { ground, what, from, depth, wall, ids, slot } = given;
  const other = from === "back" ? "front" : "back";
  const under = ground.thickness - depth;
  const borders = toBorders(given);
  const sized = [ids.size, ...(ids.travel === null || slot.travel === 0 ? [] : [ids.travel])];
  return [
    {
      ...{ left: under, between: `${what} and the ${ground.part}'s ${other}`, ids: [ids.depth] },
      mend: lowerTo(ids.depth, ground.thickness - wall),
    },
    ...ground.borders.map((border, i) => ({
      ...{ left: borders[i]!, between: `${what} and ${border.what}`, ids: sized },
      mend: `move ${what} away from ${border.what}${shorter(given, wall - borders[i]!)}`,
    })),
    ...ground.taken.map((taken) => {
      const left = toTaken(given, taken);
      return {
        ...{ left, between: `${what} and ${taken.what}`, ids: [...sized, ids.depth] },
        mend: `move ${what} away from ${taken.what}, or lower ${ids.depth}`,
      };
    }),
  ];
});

/** A slot may give up its travel where that is enough. */
function shorter({ ids, slot }: MountWallsInput, short: number): string {
  if (ids.travel === null || slot.travel < 2 * short) return "";
  return `, or ${lowerTo(ids.travel, slot.travel - 2 * short)}`;
}

function spineOf(slot: Slot): Straight {
  const [from, to] = slotEnds(slot);
  return { from: { ...from, z: 0 }, to: { ...to, z: 0 } };
}

/** To where the part's edge begins to be eased; negative where an end of the slot lies past it. */
function toBorders({ ground, slot, from }: MountWallsInput): number[] {
  const past = pastBorders(ground, slotEnds(slot));
  return ground.borders.map(({ path, eased }, i) => {
    const left = past[i]! > 0 ? -past[i]! : listsApart([spineOf(slot)], edgesOf(path));
    return left - slot.width / 2 - eased[from];
  });
}

function toTaken(given: MountWallsInput, taken: Taken): number {
  const { ground, slot, from, depth } = given;
  if (taken.kind === "bored") {
    const top = from === "back" ? depth - ground.thickness : depth;
    const axis = from === "back" ? taken.axis : upsideDown(taken.axis);
    return clearOfPost({ corners: cornersOf(slotPath(slot)), top }, [axis]) - taken.radius;
  }
  const beside = sideways(slot, taken.path);
  if (taken.from === from) return beside;
  const above = ground.thickness - depth - taken.depth;
  if (above >= 0) return beside >= 0 ? Math.hypot(beside, above) : above;
  return beside >= 0 ? beside : Math.max(beside, above);
}

/** In plan: how far a slot is from an outline, negative by half its width and more where its middle lies in it. */
function sideways(slot: Slot, path: Path): number {
  const away = listsApart([spineOf(slot)], edgesOf(path));
  const corners = cornersOf(path);
  const inside = slotEnds(slot).some((end) => polygonRound(corners, end));
  return (inside ? -away : away) - slot.width / 2;
}

function upsideDown({ from, to }: Straight): Straight {
  return { from: { ...from, z: -from.z }, to: { ...to, z: -to.z } };
}
