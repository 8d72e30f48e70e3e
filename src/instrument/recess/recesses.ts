import type { Path } from "../../geometry/path.ts";
import type { Vec3 } from "../../geometry/solid/vec3.ts";
import type { RecessPart } from "../../order/recess-part.ts";
import { dimensionOf, type Spec, type SpecBore, type SpecRecess } from "../../order/spec.ts";
import { type Getters, lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { BridgeOnCore } from "../bridge/bridge.ts";
import { coreAxes } from "../core/from-core.ts";
import type { Rests as Held } from "../rest/rests.ts";
import { type Sunken, sunkenOf } from "../sunken.ts";
import { axesOf, outOf } from "./axes.ts";
import { type Bored, type WireBore, wireBore } from "./bores.ts";
import { type CoverMade, coversOf } from "./covers.ts";
import type { Ground, Upright } from "./ground.ts";
import { type Among, groundOf } from "./grounds.ts";
import { heldAt } from "./held.ts";
import { partWalls } from "./part-walls.ts";
import { pocketsOf } from "./pockets.ts";
import { type MadeRecess, type Recess, type RecessSizes, recessMade } from "./recess.ts";
import { type ThreadHole, threadHole } from "./threads.ts";
import type { RecessWall, SunkRecess } from "./walls.ts";

/** The recesses of an instrument, their covers and their wires' bores, worked out when asked for; mm. All but these throw where a recess can't be made, and what a part takes where a bore misses its recess. */
export type Recesses = {
  readonly recesses: readonly Recess[];
  readonly wireBores: readonly WireBore[];
  readonly threadHoles: { readonly [recess: string]: ThreadHole };
  readonly recessWalls: readonly RecessWall[];
  /** Under so much no order may go, mm: what falls short of it can't be made, what falls short of what is set is a fault. */
  readonly recessWallLeast: number;
  /** What the places and walls of recesses follow from. */
  readonly recessIds: readonly string[];
  readonly covers: readonly CoverMade[];
  /** What is bought and lies in a recess: its name, its mass in g, and where its middle is among the instrument's axes, mm. */
  readonly held: readonly { readonly id: string; readonly mass: number; readonly at: Vec3 }[];
  /** What is sunk into each part that has any, and the part's own outline and thickness. */
  readonly sunken: {
    readonly [part in RecessPart]?: Sunken & { readonly path: Path; readonly thickness: number };
  };
};

/** What recesses rest on. */
type Rests = Recesses & Among & Pick<BridgeOnCore, "bridgeStand"> & Pick<Held, "restSunken">;

/** How each answer about recesses is worked out; `own` is asked only then. */
export function recessGetters(spec: Spec, store: Store, own: () => Rests): Getters<Recesses> {
  const parts = lazy<Required<{ readonly [part in RecessPart]: Bored }>>({
    neck: () => boredOf("neck"),
    body: () => boredOf("body"),
    "wing-bass": () => boredOf("wing-bass"),
    "wing-treble": () => boredOf("wing-treble"),
  });
  function boredOf(part: RecessPart): Bored {
    return { axes: axesOf(part, spec, own()), ground: groundOf(part, spec, own()) };
  }
  const there = () => partsOf(spec);
  const thick = (part: RecessPart) => thicknessOf(part, spec);
  return {
    recesses: () =>
      spec.recesses.map((recess) => {
        const thickness = thick(recess.in);
        const turnedOver = recess.in === "wing-bass";
        const given = { recess: placedAlong(recess, spec), thickness, turnedOver, sizes: recessSizes(spec) };
        return store.answer(recessMade, given).value;
      }),
    wireBores: () => {
      const recesses = madeRecesses(own());
      const { middle } = own().bridgeStand;
      const cradle = spec.bridgeFoot.kind === "cradle" ? dimensionOf(spec, "cradle.depth") : 0;
      return spec.bores.map((bore) => {
        const through = Object.fromEntries(
          boredParts(bore, there(), recesses).map((part) => [part, parts[part]]),
        );
        return wireBore(bore, recesses, through, { x: middle, depth: cradle });
      });
    },
    recessIds: () => Object.keys(spec.values).filter((id) => moving.test(id)),
    recessWallLeast: () => spec.values["recess.wall"]?.least ?? 0,
    covers: () => coversOf(madeRecesses(own()), thick, own().core, spec, store),
    held: () =>
      madeRecesses(own()).flatMap((recess) => {
        const { item, id, part } = recess;
        if (item === null) return [];
        const at = heldAt(recess, item.depth, thick(part));
        return [{ id, mass: item.mass, at: outOf(coreAxes(own().core), outOf(parts[part].axes, at)) }];
      }),
    threadHoles: () =>
      Object.fromEntries(
        madeRecesses(own()).flatMap((recess) => {
          const hole = threadHole(recess, parts[recess.part].ground);
          return hole === null ? [] : [[recess.id, hole]];
        }),
      ),
    recessWalls: () => there().flatMap((part) => wallsIn(part, () => parts[part].ground, spec, store, own())),
    sunken: () =>
      Object.fromEntries(
        there().flatMap((part) => {
          const { pockets, drilled } = sunkIn(part, spec, own());
          if (pockets.length + drilled.length === 0) return [];
          const { outline: path } = parts[part].ground;
          return [[part, { pockets, drilled, path, thickness: thick(part) }]];
        }),
      ),
  };
}

/** The parts that a wire's bore may run through: neck and body, and the wings that it begins or ends in. */
function boredParts(
  { from, to }: SpecBore,
  there: readonly RecessPart[],
  recesses: readonly MadeRecess[],
): RecessPart[] {
  const ends = recesses.filter(({ id }) => id === from || id === to);
  return there.filter((part) => part === "neck" || part === "body" || ends.some((end) => end.part === part));
}

/** The walls of what is sunk into and bored through one part; none where nothing is. */
function wallsIn(
  part: RecessPart,
  ground: () => Ground,
  spec: Spec,
  store: Store,
  made: Recesses,
): RecessWall[] {
  const recesses = madeRecesses(made).filter((recess) => recess.part === part);
  const bores = made.wireBores.flatMap((one) => {
    // One that misses its recess is told by itself.
    if (one.kind !== "ok") return [];
    const { drilled, between } = one;
    return drilled.filter((one) => one.part === part).map(({ bore }) => ({ bore, between }));
  });
  if (recesses.length === 0 && bores.length === 0) return [];
  const sunk = recesses.map((recess) => sunkOf(recess, ground(), spec, made.threadHoles[recess.id]));
  return partWalls(
    { ground: ground(), recesses: sunk, bores, wall: dimensionOf(spec, "recess.wall") },
    store,
  );
}

/** What recesses, their threads, wires and rests take of one part. */
function sunkIn(part: RecessPart, spec: Spec, made: Rests): Sunken {
  const recesses = madeRecesses(made).filter((recess) => recess.part === part);
  const held = sunkenOf(made.restSunken[part]);
  const pockets = recesses.flatMap((recess) => pocketsOf(recess, recessSizes(spec)));
  const holes = recesses.flatMap(({ id }) => made.threadHoles[id]?.bore ?? []);
  const wires = madeBores(made).flatMap(({ drilled }) =>
    drilled.filter((one) => one.part === part).map(({ bore }) => bore),
  );
  return { pockets: [...pockets, ...held.pockets], drilled: [...holes, ...wires, ...held.drilled] };
}

const moving =
  /^(recess|cover|core|wing|body|bridge|cradle|saddle|tailpiece|afterlength|string\.(length|clearance)|neck\.(heel|transition|corner)|rod)\b/;

/** A body's places are told from its head end, and its own axis begins where the core's front does. */
function placedAlong(recess: SpecRecess, spec: Spec): SpecRecess {
  const [along, across] = recess.at;
  return recess.in === "body" ? { ...recess, at: [along + dimensionOf(spec, "body.start"), across] } : recess;
}

/** The parts of an instrument that recesses can be sunk into. */
function partsOf({ wings, body }: Spec): RecessPart[] {
  return [
    "neck",
    ...(wings === null ? [] : (["wing-bass", "wing-treble"] as const)),
    ...(body === null ? [] : (["body"] as const)),
  ];
}

function thicknessOf(part: RecessPart, spec: Spec): number {
  const ids = {
    neck: "core.depth",
    body: "body.thickness",
    "wing-bass": "wing.bass.thickness",
    "wing-treble": "wing.treble.thickness",
  } as const;
  return dimensionOf(spec, ids[part]);
}

/** What the recesses and covers of a spec are made by; throws at one without any. */
export function recessSizes(spec: Spec): RecessSizes {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    ...{ clearance: of("recess.clearance"), corner: of("recess.corner") },
    cover: {
      ...{ thickness: of("cover.thickness"), ledge: of("cover.ledge"), lip: of("cover.lip") },
      ...{ clearance: of("cover.clearance"), screw: of("cover.screw") },
      ...{ pilot: of("cover.pilot"), pilotDepth: of("cover.pilot.depth") },
    },
  };
}

/** The recesses of a model that contradictions found nothing wrong with; throws at one that can't be made. */
export function madeRecesses({ recesses }: Pick<Recesses, "recesses">): readonly MadeRecess[] {
  return recesses.map((recess) => {
    if (recess.kind !== "ok") throw new RangeError(`recess ${recess.id} can't be made: ${recess.kind}`);
    return recess;
  });
}

/** The wires' bores of such a model; throws at one that misses its recess. */
export function madeBores({ wireBores }: Pick<Recesses, "wireBores">) {
  return wireBores.map((bore) => {
    if (bore.kind !== "ok") throw new RangeError(`bore ${bore.id} misses recess ${bore.recess}`);
    return bore;
  });
}

/** What stands upright of a recess: itself first, its cover's ledge, the pilots of its screws, and the hole through the face opposite. */
function sunkOf(recess: MadeRecess, { thickness }: Ground, spec: Spec, thread?: ThreadHole): SunkRecess {
  const pockets = pocketsOf(recess, recessSizes(spec));
  const itself = pockets.find(({ id }) => id === recess.id)!;
  const uprights = [itself, ...pockets.filter((pocket) => pocket !== itself)].map(
    ({ path, depth, from, id }): Upright => {
      const reach = depth === "through" ? thickness : depth;
      const [low, high] = from === "front" ? [-reach, 0] : [-thickness, reach - thickness];
      return { what: id, path, low, high, ids: [] };
    },
  );
  return {
    id: recess.id,
    depth: recess.depth,
    uprights,
    outermost: recess.cover?.ledge ?? recess.path,
    out: thread?.bore ?? null,
  };
}
