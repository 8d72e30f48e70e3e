import { circle } from "../../geometry/circle.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { Blank } from "../blank.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreWidthOf } from "../core/width.ts";
import type { RodsAndPins } from "../neck/rods-and-pins.ts";
import type { Wall } from "../wall.ts";
import { bridgeBlank } from "./blank.ts";
import type { Crown } from "./crown.ts";
import { bridgeFeet, type Foot } from "./feet.ts";
import type { BridgeOutline } from "./outline.ts";
import { type BridgeSolidInput, bridgeSolid } from "./solid.ts";
import { type BridgeStand, bridgeStand } from "./stand.ts";
import { type BridgeSunk, bridgeSunk, madeSunk } from "./sunk.ts";
import { type Beside, bridgeSunkWalls } from "./sunk-walls.ts";

/** What is worked out of the bridge on the core beside its outline; mm and degrees. */
export type BridgeOnCore = {
  readonly bridgeStand: BridgeStand;
  readonly bridgeFeet: readonly Foot[];
  readonly bridgeSunk: BridgeSunk;
  /** The wood round what is sunk under the bridge; none under one that stands by itself. */
  readonly bridgeSunkWalls: readonly Wall[];
  readonly bridgeBlank: Blank;
  readonly bridgeSolidInput: BridgeSolidInput;
  readonly bridgeSolid: Solid;
};

/** What the bridge rests on. */
type Rests = BridgeOnCore & {
  readonly core: CoreFrame;
  readonly crown: Crown;
  readonly bridge: BridgeOutline;
} & Pick<RodsAndPins, "neckRods" | "neckPins">;

/** Wood round what is sunk under the bridge, mm (G: default, confirm). */
export const leastSunkWall = 1.5;

/** How each answer about the bridge on the core is worked out; `own` is asked only then. */
export function bridgeGetters(spec: Spec, store: Store, own: () => Rests): Getters<BridgeOnCore> {
  const of = (id: string) => dimensionOf(spec, id);
  const depthIds = { standing: null, saddle: "saddle.screw.depth", cradle: "cradle.depth" } as const;
  const depthId = depthIds[spec.bridgeFoot.kind];
  return {
    bridgeStand: () =>
      store.answer(bridgeStand, {
        ...{ stringLength: of("string.length"), core: own().core, crownTop: own().crown.top },
        ...{ tilt: of("bridge.tilt"), foot: of("bridge.foot.thickness"), top: of("bridge.top.thickness") },
      }).value,
    bridgeFeet: () => bridgeFeet(own().bridge),
    bridgeSunk: () => {
      const { middle, tail } = own().bridgeStand;
      return store.answer(bridgeSunk, {
        ...{ foot: spec.bridgeFoot, middle, tail, width: of("bridge.foot.width") },
        depth: depthId === null ? 0 : of(depthId),
      }).value;
    },
    bridgeSunkWalls: () => {
      const sunk = madeSunk(own().bridgeSunk);
      if (sunk.length === 0) return [];
      return store.answer(bridgeSunkWalls, {
        ...{ sunk, core: own().core, depth: of("core.depth"), end: of("core.end"), wall: leastSunkWall },
        width: coreWidthOf(of),
        others: othersIn(spec, own()),
        footWidth: of("bridge.foot.width"),
      }).value;
    },
    bridgeBlank: () => bridgeBlank(madeBridge(own()).cut, own().bridgeStand, of("bridge.allowance")),
    bridgeSolidInput: () => {
      const { finished, holes } = madeBridge(own());
      const { bridgeStand: stand, core } = own();
      return { outline: finished, holes: holes.map(({ path }) => path), stand, core };
    },
    bridgeSolid: () => store.answer(bridgeSolid, own().bridgeSolidInput).value,
  };
}

/** The bridge's outlines in a model that contradictions found nothing wrong with; throws at one that can't be made. */
export function madeBridge({ bridge }: { readonly bridge: BridgeOutline }) {
  if (bridge.kind !== "ok") throw new RangeError(`the bridge has no outline: ${bridge.kind}`);
  return bridge;
}

/** The rods' channels, which end where their length says, and the pins' holes. */
function othersIn(spec: Spec, { neckRods, neckPins }: Rests): Beside[] {
  const of = (id: string) => dimensionOf(spec, id);
  const rods = neckRods.map(({ path, depth }): Beside => {
    return {
      what: "a rod's channel",
      path,
      depth,
      move: { id: "rod.length", at: of("rod.length"), share: 1 },
    };
  });
  const pins = neckPins.map((pin): Beside => {
    const waste = { id: "neck.allowance.end", at: of("neck.allowance.end"), share: 0.5 };
    const at = `pin.${pin.id}.at`;
    return {
      ...{ what: `the ${pin.id} pin`, path: circle(pin, pin.diameter / 2), depth: pin.depth },
      move: pin.depth === "through" ? waste : { id: at, at: of(at), share: 1 },
    };
  });
  return [...rods, ...pins];
}
