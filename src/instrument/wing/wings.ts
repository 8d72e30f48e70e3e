import { fromFrame } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf, type Spec, type SpecWing } from "../../order/spec.ts";
import { lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreWidthOf } from "../core/width.ts";
import type { FinishedTop } from "../eased-top.ts";
import type { Recesses } from "../recess/recesses.ts";
import { sunkenOf } from "../sunken.ts";
import type { Wall } from "../wall.ts";
import { type WingJoint, wingJoint } from "./joint.ts";
import { type WingOutline, wingOutline } from "./outline.ts";
import { wingPinWalls } from "./pin-walls.ts";
import { type WingPlace, wingPlace } from "./place.ts";
import { type WingSolidInput, wingSolid } from "./solid.ts";
import { wingTop } from "./top.ts";

/** One wing, worked out when asked for. `joint`, `solidInput` and `solid` throw where the outline is none. */
export type Wing = {
  readonly place: WingPlace;
  readonly outline: WingOutline;
  readonly joint: WingJoint;
  readonly pinWalls: readonly Wall[];
  /** Its finished front, for a bow over it, among the instrument's axes. */
  readonly top: FinishedTop;
  readonly solidInput: WingSolidInput;
  readonly solid: Solid;
};

/** A winged instrument's wings; none on a body in one piece. */
export type Wings = { readonly wings: { readonly [side in Side]: Wing } | null };

/** How far before the board's end and behind the bridge a wing's edge is asked for, mm: a skewed bow reaches no further. */
const beside = 15;

/** The getters of the wings: `made` gives the core that they stand on and what is sunk into them. */
export function wingGetters(
  spec: Spec,
  store: Store,
  made: () => { readonly core: CoreFrame } & Pick<Recesses, "sunken">,
): { readonly [key in keyof Wings]: () => Wings[key] } {
  return {
    wings: () => {
      const { wings } = spec;
      if (wings === null) return null;
      const [bass, treble] = sides.map((side) => wingOf(side, wings[side], spec, store, made));
      return { bass: bass!, treble: treble! };
    },
  };
}

function wingOf(
  side: Side,
  wing: SpecWing,
  spec: Spec,
  store: Store,
  rests: () => { readonly core: CoreFrame } & Pick<Recesses, "sunken">,
): Wing {
  const of = (id: string) => dimensionOf(spec, id);
  const own = (name: string) => of(`wing.${side}.${name}`);
  const thickness = own("thickness");
  const pin = { diameter: own("pin"), depth: own("pin.depth") };
  const outlined = () => {
    if (made.outline.kind !== "ok")
      throw new RangeError(`the ${side} wing has no outline: ${made.outline.kind}`);
    return made.outline;
  };
  const place = {
    ...{ side, start: own("start"), drop: own("drop") },
    angles: { splay: own("splay"), cant: own("cant"), rake: own("rake") },
    core: { ...rests().core, ...coreWidthOf(of) },
  };
  const made: Wing = lazy<Wing>({
    place: () => store.answer(wingPlace, place).value,
    outline: () =>
      store.answer(wingOutline, {
        ...{ face: wing.face, mitre: made.place.cut.mitre, past: 2 * (thickness + own("arris")) },
      }).value,
    joint: () =>
      store.answer(wingJoint, {
        ...{ place, thickness, beside: outlined().beside, length: Math.hypot(...outlined().joint) },
        ...{ coreDepth: of("core.depth"), pins: wing.pins, pin },
      }).value,
    pinWalls: () =>
      store.answer(wingPinWalls, {
        ...{ place, path: outlined().over, pins: made.joint.pins, pin, wall: own("pin.wall") },
        // Where the core is narrowest: at the joint's head end, or its tail end if it tapers the other way.
        coreWidth: 2 * Math.min(Math.abs(made.place.frame.origin.y), Math.abs(tailOf(made.joint).y)),
      }).value,
    top: () =>
      store.answer(wingTop, {
        ...{ place, path: outlined().path, profile: wing.profile.front, arris: own("arris") },
        ...{ from: of("fingerboard.length") - beside, to: of("string.length") + beside },
      }).value,
    solidInput: () => ({
      ...{ place, over: outlined().over, thickness, arris: own("arris"), profile: wing.profile },
      ...{ pins: made.joint.pins.map(({ at }) => ({ at })), pin, reach: 2 * (own("length") + own("width")) },
      sunken: sunkenOf(rests().sunken[`wing-${side}`]),
    }),
    solid: () => store.answer(wingSolid, made.solidInput).value,
  });
  return made;
}

/** The tail end of a joint line, in the core frame. */
function tailOf({ face, length }: WingJoint) {
  return fromFrame(face, length, 0, 0);
}
