import type { Point } from "../../geometry/point.ts";
import type { RecessPart } from "../../order/recess-part.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Pocket } from "../pocket.ts";
import type { ChinFoot } from "./chin.ts";
import type { Taken } from "./ground.ts";
import type { MountWallsInput } from "./mount-walls.ts";
import { slotPath } from "./slot.ts";

/** A hole or slot that a rest wants of a part: its part, its name as a pocket, its place in the design, and the dimension that says how much wood is wanted round it. */
export type Mount = Omit<MountWallsInput, "ground"> & {
  readonly part: RecessPart;
  readonly id: string;
  readonly place: string;
  readonly least: string;
};

/** Every mount and every screw's hole of a spec's rests, in their parts' own planes; the chin rest's screws stand in its footprint. */
export function mountsOf(spec: Spec, foot: ChinFoot | null): Mount[] {
  const of = (id: string) => dimensionOf(spec, id);
  const { chin, mounts } = spec.rests;
  const slots = mounts.map(({ kind, id, in: part, at: [along, out], turn }): Mount => {
    const own = (name: string) => `rest.${kind}.${name}`;
    const at = ownPlace(part, along, part === "wing-bass" ? -out : out, spec);
    return {
      ...{ part, id: `rest-${kind}-${id}`, what: `the ${kind} mount ${id}`, place: own(id), from: "back" },
      slot: {
        at,
        width: of(own("hole")),
        travel: of(own("travel")),
        turn: part === "wing-bass" ? -turn : turn,
      },
      ...{ depth: of(own("depth")), wall: of(own("wall")), least: own("wall") },
      ids: { size: own("hole"), depth: own("depth"), travel: own("travel") },
    };
  });
  const holes = chin === null || foot?.kind !== "ok" || chin.hold === "clamp" ? [] : foot.screws;
  const screws = holes.map(
    ({ id, at, size }): Mount => ({
      ...{ part: chin!.on, id: `rest-chin-${id}`, what: `the chin rest's screw ${id}`, place: "rest.chin" },
      ...{ from: "front", slot: { at, width: size, travel: 0, turn: 0 } },
      ...{ depth: of("rest.chin.screw.depth"), wall: of("rest.chin.screw.wall") },
      ...{ least: "rest.chin.screw.wall" },
      ids: { size: "rest.chin.length", depth: "rest.chin.screw.depth", travel: null },
    }),
  );
  return [...slots, ...screws];
}

/** A place that is told along a part from its head end and out, in that part's own plane, mm. */
export function ownPlace(part: RecessPart, along: number, out: number, spec: Spec): Point {
  return { x: part === "body" ? dimensionOf(spec, "body.start") + along : along, y: out };
}

/** What a mount sinks into its part. */
export function pocketOf({ id, from, slot, depth }: Mount): Pocket {
  return { id, from, path: slotPath(slot), depth, bore: slot.travel === 0 ? slot.width : null };
}

/** A mount as what takes of its part's wood. */
export function takenBy({ what, from, slot, depth }: Mount): Taken {
  return { kind: "sunk", what, from, path: slotPath(slot), depth };
}
