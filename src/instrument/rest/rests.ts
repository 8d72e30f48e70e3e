import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { RecessPart } from "../../order/recess-part.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { type Getters, lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Clear } from "../clear/clear.ts";
import { stringRoom } from "../clear/string-room.ts";
import { coreWidthOf } from "../core/width.ts";
import type { OwnPlane } from "../own-plane.ts";
import type { Recesses } from "../recess/recesses.ts";
import type { Sunken } from "../sunken.ts";
import { madeTailpiece, type Tailpiece } from "../tailpiece/tailpiece.ts";
import type { Wall } from "../wall.ts";
import { type ChinFoot, chinFoot, chinSupport, type Support } from "./chin.ts";
import { type Endpin, endpin, endpinDrilled } from "./endpin.ts";
import type { Ground } from "./ground.ts";
import { groundOf, type UnderRests } from "./grounds.ts";
import { mountWalls } from "./mount-walls.ts";
import { type Mount, mountsOf, ownPlace, pocketOf, takenBy } from "./mounts.ts";
import { nearSlot } from "./near-slot.ts";
import { plateRoom } from "./plate-room.ts";
import { recessesTaken } from "./recesses-taken.ts";

/** A chin rest: its footprint and what bears it, how thick the part's edge is that a clamp grips, and the room that it leaves to strings and tailpiece; mm. */
export type ChinRest = {
  readonly on: RecessPart;
  readonly foot: ChinFoot;
  readonly support: Support;
  readonly edge: number;
  readonly strings: number;
  readonly tailpiece: number;
};

/** The wood left round one mount or screw of a rest: its place in the design, and the dimension that says how much is wanted. */
export type MountWall = Wall & Pick<Mount, "place" | "least" | "part">;

/** What holds the instrument up. What is told of a chin rest but its foot can't be asked where that has no outline. */
export type Rests = {
  readonly chinRest: ChinRest | null;
  readonly restMounts: readonly Mount[];
  /** What rests' mounts, screws and the endpin take out of each part that has any. */
  readonly restSunken: { readonly [part in RecessPart]?: Sunken };
  readonly mountWalls: readonly MountWall[];
  /** Where each mount's middle leaves its part, in the part's own plane. */
  readonly mountPlaces: readonly { readonly place: string; readonly plane: OwnPlane; readonly at: Vec3 }[];
  readonly endpin: Endpin | null;
};

type Under = UnderRests & Clear & Tailpiece & Recesses & Rests;

/** How rests are worked out. */
export function restGetters(spec: Spec, store: Store, made: () => Under): Getters<Rests> {
  const of = (id: string) => dimensionOf(spec, id);
  const { chin } = spec.rests;
  const grounds = new Map<RecessPart, Ground>();
  const ground = (part: RecessPart): Ground => {
    const known = grounds.get(part);
    if (known !== undefined) return known;
    const bare = groundOf(part, spec, made());
    const taken = [...bare.taken, ...recessesTaken(part, bare.thickness, spec, made())];
    grounds.set(part, { ...bare, taken });
    return grounds.get(part)!;
  };
  return {
    chinRest: () => {
      if (chin === null) return null;
      const foot = store.answer(chinFoot, {
        ...{ face: chin.face, at: ownPlace(chin.on, of("rest.chin.along"), of("rest.chin.out"), spec) },
        ...{ turn: of("rest.chin.turn"), flipped: chin.on === "wing-bass" },
      }).value;
      return chinRestOf(foot, chin.on, ground, spec, store, made());
    },
    restMounts: () => mountsOf(spec, made().chinRest?.foot ?? null),
    restSunken: () => {
      const { restMounts } = made();
      const parts = [...new Set(restMounts.map(({ part }) => part))];
      const all = parts.map((part): [RecessPart, Sunken] => {
        return [part, { pockets: restMounts.filter((one) => one.part === part).map(pocketOf), drilled: [] }];
      });
      if (!spec.rests.endpin) return Object.fromEntries(all);
      const sunken: Rests["restSunken"] = Object.fromEntries(all);
      const drilled = [endpinDrilled(endpinBore(spec, made()))];
      return { ...sunken, neck: { pockets: sunken.neck?.pockets ?? [], drilled } };
    },
    mountWalls: () => {
      const { restMounts } = made();
      return restMounts.flatMap(({ part, id: _, place, least, ...given }, i) => {
        const others = restMounts.slice(0, i).filter((other) => other.part === part);
        const own = ground(part);
        const near = nearSlot(given.slot, given.wall, [...own.taken, ...others.map(takenBy)]);
        const whole = { ...own, taken: near };
        const walls = store.answer(mountWalls, { ...given, ground: whole }).value;
        return walls.map((wall) => ({ ...wall, place, least, part }));
      });
    },
    mountPlaces: () =>
      made().restMounts.map(({ place, part, from, slot }) => ({
        ...{ place, plane: planeOf(part, made()) },
        at: { ...slot.at, z: from === "back" ? -ground(part).thickness : 0 },
      })),
    endpin: () => {
      if (!spec.rests.endpin) return null;
      const own = made().restMounts.filter(({ part }) => part === "neck");
      return store.answer(endpin, {
        ...{ ...endpinBore(spec, made()), length: of("endpin.length"), wall: of("endpin.wall") },
        taken: [...ground("neck").taken, ...own.map(takenBy)],
      }).value;
    },
  };
}

function endpinBore(spec: Spec, { core }: Pick<Under, "core">) {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    core: { ...core, ...coreWidthOf(of), depth: of("core.depth"), end: of("core.end") },
    ...{ bore: of("endpin.bore"), depth: of("endpin.depth"), angle: of("endpin.angle") },
    down: of("endpin.down"),
  };
}

function chinRestOf(
  foot: ChinFoot,
  on: RecessPart,
  ground: (part: RecessPart) => Ground,
  spec: Spec,
  store: Store,
  made: Under,
): ChinRest {
  const of = (id: string) => dimensionOf(spec, id);
  const path = () => {
    if (foot.kind !== "ok") throw new RangeError(`the chin rest has no footprint: ${foot.kind}`);
    return foot.path;
  };
  const standing = () => ({ plane: planeOf(on, made), path: path(), top: of("rest.chin.height") });
  return lazy<ChinRest>({
    on: () => on,
    foot: () => foot,
    edge: () => ground(on).thickness,
    support: () => store.answer(chinSupport, { path: path(), ground: ground(on) }).value,
    strings: () => store.answer(stringRoom, { ...standing(), strings: made.stringLines }).value.left,
    tailpiece: () => {
      const plate = {
        path: madeTailpiece(made).path,
        ...{ height: of("tailpiece.height"), thickness: of("tailpiece.thickness") },
      };
      return store.answer(plateRoom, { ...standing(), core: made.core, plate }).value;
    },
  });
}

function planeOf(on: RecessPart, { fronts, core }: Pick<Under, "fronts" | "core">): OwnPlane {
  return fronts.find(({ part }) => part === on)?.plane ?? { kind: "core", core, drop: 0 };
}
