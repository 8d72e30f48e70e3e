import type { Point } from "../../geometry/point.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { RestPart } from "../../order/rest-part.ts";
import { dimensionOf, type Spec, type SpecMount } from "../../order/spec.ts";
import { type Getters, lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Clear } from "../clear/clear.ts";
import { stringRoom } from "../clear/string-room.ts";
import { coreWidthOf } from "../core/width.ts";
import type { OwnPlane } from "../own-plane.ts";
import type { Pocket } from "../pocket.ts";
import { madeTailpiece, type Tailpiece } from "../tailpiece/tailpiece.ts";
import type { Wall } from "../wall.ts";
import { type ChinFoot, chinFoot, chinSupport, type Support } from "./chin.ts";
import { type Endpin, endpin } from "./endpin.ts";
import type { Ground, Taken } from "./ground.ts";
import { groundOf, type UnderRests } from "./grounds.ts";
import { type MountWallsInput, mountWalls } from "./mount-walls.ts";
import { plateRoom } from "./plate-room.ts";
import { slotPath } from "./slot.ts";

/** A chin rest: its footprint and what bears it, how thick the part's edge is that a clamp grips, and the room that it leaves to strings and tailpiece; mm. */
export type ChinRest = {
  readonly on: RestPart;
  readonly foot: ChinFoot;
  readonly support: Support;
  readonly edge: number;
  readonly strings: number;
  readonly tailpiece: number;
};

/** The wood left round one mount or screw of a rest: its place in the design, and the dimension that says how much is wanted. */
export type MountWall = Wall & { readonly place: string; readonly least: string; readonly part: RestPart };

/** What holds the instrument up. What is told of a chin rest but its foot can't be asked where that has no outline. */
export type Rests = {
  readonly chinRest: ChinRest | null;
  /** What rests' mounts and screws sink into each part. */
  readonly restPockets: readonly { readonly part: RestPart; readonly pocket: Pocket }[];
  readonly mountWalls: readonly MountWall[];
  /** Where each mount's middle leaves its part, in the part's own plane. */
  readonly mountPlaces: readonly { readonly place: string; readonly plane: OwnPlane; readonly at: Vec3 }[];
  readonly endpin: Endpin | null;
};

type Mount = MountWallsInput & { readonly id: string; readonly place: string; readonly least: string };

/** How rests are worked out. */
export function restGetters(
  spec: Spec,
  store: Store,
  made: () => UnderRests & Clear & Tailpiece & Rests,
): Getters<Rests> {
  const of = (id: string) => dimensionOf(spec, id);
  const { chin, mounts } = spec.rests;
  return {
    chinRest: () => {
      if (chin === null) return null;
      const foot = store.answer(chinFoot, {
        ...{
          face: chin.face,
          at: ownPlace(chin.on, of("rest.chin.along"), of("rest.chin.out"), spec, false),
        },
        ...{ turn: of("rest.chin.turn"), flipped: chin.on === "wing-bass" },
      }).value;
      return chinRestOf(foot, spec, store, made());
    },
    restPockets: () =>
      mountsOf(spec, made()).map(({ ground, id, from, slot, depth }) => ({
        part: ground.part,
        pocket: { id, from, path: slotPath(slot), depth, bore: slot.travel === 0 ? slot.width : null },
      })),
    mountWalls: () =>
      mountsOf(spec, made()).flatMap(({ id: _, place, least, ...given }) =>
        store
          .answer(mountWalls, given)
          .value.map((wall) => ({ ...wall, place, least, part: given.ground.part })),
      ),
    mountPlaces: () =>
      mountsOf(spec, made()).map(({ place, ground, from, slot }) => ({
        ...{ place, plane: planeOf(ground.part, made()) },
        at: { ...slot.at, z: from === "back" ? -ground.thickness : 0 },
      })),
    endpin: () => {
      if (!spec.rests.endpin) return null;
      const { core } = made();
      const own = mounts.filter((mount) => mount.in === "neck").map((mount) => takenBy(mount, spec));
      return store.answer(endpin, {
        core: { ...core, ...coreWidthOf(of), depth: of("core.depth"), end: of("core.end") },
        ...{ bore: of("endpin.bore"), depth: of("endpin.depth"), angle: of("endpin.angle") },
        ...{ down: of("endpin.down"), length: of("endpin.length"), wall: of("endpin.wall") },
        taken: [...groundOf("neck", spec, made()).taken, ...own],
      }).value;
    },
  };
}

/** A place that is told along a part and out from it, in that part's own plane, seen from the front; `flip` where a bass wing's runs the other way. */
function ownPlace(part: RestPart, along: number, out: number, spec: Spec, flip: boolean): Point {
  if (part === "body") return { x: dimensionOf(spec, "body.start") + along, y: out };
  return { x: along, y: flip && part === "wing-bass" ? -out : out };
}

function chinRestOf(
  foot: ChinFoot,
  spec: Spec,
  store: Store,
  made: UnderRests & Clear & Tailpiece,
): ChinRest | null {
  const { chin } = spec.rests;
  if (chin === null) return null;
  const of = (id: string) => dimensionOf(spec, id);
  const path = () => {
    if (foot.kind !== "ok") throw new RangeError(`the chin rest has no footprint: ${foot.kind}`);
    return foot.path;
  };
  const plane = () => planeOf(chin.on, made);
  const top = of("rest.chin.height");
  return lazy<ChinRest>({
    on: () => chin.on,
    foot: () => foot,
    edge: () => of(thicknessOf(chin.on)),
    support: () => store.answer(chinSupport, { path: path(), ground: groundOf(chin.on, spec, made) }).value,
    strings: () => {
      const { stringLines: strings } = made;
      return store.answer(stringRoom, { plane: plane(), path: path(), top, strings }).value.left;
    },
    tailpiece: () => {
      const plate = {
        path: madeTailpiece(made).path,
        ...{ height: of("tailpiece.height"), thickness: of("tailpiece.thickness") },
      };
      return store.answer(plateRoom, { plane: plane(), path: path(), top, core: made.core, plate }).value;
    },
  });
}

/** Every mount and every screw's hole, on the wood that the others leave of its part. */
function mountsOf(spec: Spec, made: UnderRests & Rests): Mount[] {
  const of = (id: string) => dimensionOf(spec, id);
  const { chin, mounts } = spec.rests;
  const slots = mounts.map((mount) => {
    const own = (name: string) => `rest.${mount.kind}.${name}`;
    return {
      ...{
        part: mount.in,
        id: `rest-${mount.kind}-${mount.id}`,
        what: `the ${mount.kind} mount ${mount.id}`,
      },
      ...{ place: own(mount.id), from: "back" as const, slot: slotOf(mount, spec), depth: of(own("depth")) },
      ...{ wall: of(own("wall")), least: own("wall") },
      ids: { size: own("hole"), depth: own("depth"), travel: own("travel") },
    };
  });
  const foot = made.chinRest?.foot;
  const holes = chin === null || foot?.kind !== "ok" || chin.hold === "clamp" ? [] : foot.screws;
  const screws = holes.map(({ id, at, size }) => ({
    ...{ part: chin!.on, id: `rest-chin-${id}`, what: `the chin rest's screw ${id}`, place: "rest.chin" },
    ...{ from: "front" as const, slot: { at, width: size, travel: 0, turn: 0 } },
    ...{
      depth: of("rest.chin.screw.depth"),
      wall: of("rest.chin.screw.wall"),
      least: "rest.chin.screw.wall",
    },
    ids: { size: "rest.chin.length", depth: "rest.chin.screw.depth", travel: null },
  }));
  const all = [...slots, ...screws];
  const parts = new Map(
    [...new Set(all.map(({ part }) => part))].map((part) => [part, groundOf(part, spec, made)]),
  );
  return all.map(({ part, ...mount }, i) => {
    const before = all.slice(0, i).filter((other) => other.part === part);
    const ground = parts.get(part)!;
    const others = before.map((other): Taken => {
      return {
        kind: "sunk",
        what: other.what,
        from: other.from,
        path: slotPath(other.slot),
        depth: other.depth,
      };
    });
    return { ...mount, ground: { ...ground, taken: [...ground.taken, ...others] } satisfies Ground };
  });
}

function slotOf({ kind, in: part, at: [along, out], turn }: SpecMount, spec: Spec) {
  const of = (name: string) => dimensionOf(spec, `rest.${kind}.${name}`);
  const at = ownPlace(part, along, out, spec, true);
  return { at, width: of("hole"), travel: of("travel"), turn: part === "wing-bass" ? -turn : turn };
}

function takenBy(mount: SpecMount, spec: Spec): Taken {
  return {
    ...{ kind: "sunk", what: `the ${mount.kind} mount ${mount.id}`, from: "back" },
    ...{ path: slotPath(slotOf(mount, spec)), depth: dimensionOf(spec, `rest.${mount.kind}.depth`) },
  };
}

function thicknessOf(part: RestPart): string {
  return part === "neck" ? "core.depth" : `${part.replace("-", ".")}.thickness`;
}

function planeOf(on: RestPart, { fronts, core }: Pick<Clear, "fronts"> & Pick<UnderRests, "core">): OwnPlane {
  return fronts.find(({ part }) => part === on)?.plane ?? { kind: "core", core, drop: 0 };
}
