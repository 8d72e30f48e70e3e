import { dimensionOf, type Spec } from "../../order/spec.ts";
import type { Getters } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import { leastSunkWall } from "../bridge/bridge.ts";
import { type BridgeSunk, madeSunk } from "../bridge/sunk.ts";
import type { CoreFrame } from "../core/frame.ts";
import { madeTailpiece, type Tailpiece } from "../tailpiece/tailpiece.ts";
import type { Wall } from "../wall.ts";
import type { Wings } from "../wing/wings.ts";
import { type CorePocket, corePockets } from "./core-pockets.ts";
import { joineryWalls } from "./joinery-walls.ts";
import type { RodsAndPins } from "./rods-and-pins.ts";
import { type WingPinHole, wingPinHoles } from "./wing-pin-holes.ts";

/** What other parts are held by in the neck's core; mm. Of a tailpiece or a cradle that can't be made it can't be asked. */
export type Joinery = {
  readonly corePockets: readonly CorePocket[];
  readonly wingPinHoles: readonly WingPinHole[];
  /** The wood under what is sunk into the core, and between that and the wings' pins. */
  readonly joineryWalls: readonly Wall[];
};

/** What joinery rests on. */
type Rests = Joinery & { readonly core: CoreFrame; readonly bridgeSunk: BridgeSunk } & Pick<
    Tailpiece,
    "tailpiece"
  > &
  Pick<RodsAndPins, "neckRods"> &
  Wings;

/** How each answer about the joinery is worked out; `own` is asked only then. */
export function joineryGetters(spec: Spec, store: Store, own: () => Rests): Getters<Joinery> {
  const of = (id: string) => dimensionOf(spec, id);
  return {
    corePockets: () => {
      const posts = madeTailpiece(own()).posts.map(({ id, at, size }) => ({ id, at, size }));
      return corePockets(madeSunk(own().bridgeSunk), posts, of("tailpiece.post.depth"));
    },
    wingPinHoles: () => wingPinHoles(own().wings, own().core, (side, name) => of(`wing.${side}.${name}`)),
    joineryWalls: () => {
      const { core, neckRods, wingPinHoles: pins } = own();
      const pockets = own().corePockets.map(({ what, path, depth, depthId }) => {
        return { what, path, depth, depthId };
      });
      const rods = neckRods.map(({ path, depth }) => ({ path, depth }));
      return store.answer(joineryWalls, {
        ...{ pockets, rods, pins, core, coreDepth: of("core.depth"), wall: leastSunkWall },
      }).value;
    },
  };
}
