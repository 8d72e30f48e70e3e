import type { Solid } from "../../geometry/solid/solid.ts";
import type { Side } from "../../order/side.ts";
import { dimensionOf, type Spec, type SpecBody } from "../../order/spec.ts";
import { lazy } from "../../step/lazy.ts";
import type { Store } from "../../step/store.ts";
import type { CoreFrame } from "../core/frame.ts";
import type { FinishedTop } from "../eased-top.ts";
import type { Recesses } from "../recess/recesses.ts";
import { sunkenOf } from "../sunken.ts";
import { type BodyOutline, type BodyOutlineInput, bodyOutline } from "./outline.ts";
import { type BodyRecess, bodyRecess, coreFullFrom } from "./recess.ts";
import { type BodySolidInput, bodySolid } from "./solid.ts";
import { bodyTop } from "./top.ts";
import { type BodyWall, bodyWall } from "./wall.ts";

/** A body in one piece, worked out when asked for. `wall`, `solidInput` and `solid` throw where there is no outline or no room for the core. */
export type Body = {
  readonly outline: BodyOutline;
  readonly recess: BodyRecess;
  /** Where the core is full along its front, so that the body may begin; mm. */
  readonly full: number;
  readonly wall: BodyWall;
  /** The wood left under the core, mm; none where the core runs right through. */
  readonly floor: number | null;
  /** Its finished front, for a bow over it, among the instrument's axes. */
  readonly top: { readonly [side in Side]: FinishedTop };
  readonly profile: BodySolidInput["profile"];
  readonly solidInput: BodySolidInput;
  readonly solid: Solid;
};

/** An instrument's body in one piece; none on a winged one. */
export type Bodies = { readonly body: Body | null };

/** How far the core's room is led on before the body's head end, mm: so much a cutter runs out there. */
const past = 10;

/** How far before the board's end and behind the bridge the body's edge is asked for, mm: a skewed bow reaches no further. */
const beside = 15;

/** The getter of the body: `made` gives the core that it takes in and what is sunk into it. */
export function bodyGetters(
  spec: Spec,
  store: Store,
  made: () => { readonly core: CoreFrame } & Pick<Recesses, "sunken">,
): { readonly [key in keyof Bodies]: () => Bodies[key] } {
  return { body: () => (spec.body === null ? null : bodyOf(spec, spec.body, store, made)) };
}

function bodyOf(
  spec: Spec,
  { core: lies, profile }: SpecBody,
  store: Store,
  rests: () => { readonly core: CoreFrame } & Pick<Recesses, "sunken">,
): Body {
  const of = (id: string) => dimensionOf(spec, id);
  const front = rests().core;
  const core = { ...front, depth: of("core.depth") };
  const made: Body = lazy<Body>({
    outline: () => store.answer(bodyOutline, outlineInput(spec)).value,
    recess: () =>
      store.answer(bodyRecess, {
        core: {
          ...{ ...core, width: of("core.width"), at: of("string.length") },
          ...{ taper: of("core.taper"), end: of("core.end") },
        },
        ...{ corner: of("neck.corner"), drop: of("body.drop"), clearance: of("body.recess.clearance") },
        ...{ start: of("body.start"), past },
      }).value,
    full: () => coreFullFrom(core, of("neck.transition.end"), of("neck.heel.end")),
    wall: () => {
      const { outline, recess } = madeBody(made);
      return store.answer(bodyWall, { rim: outline.rim, side: recess.side }).value;
    },
    floor: () => (lies === "through" ? null : of("body.thickness") - (of("core.depth") - of("body.drop"))),
    top: () =>
      store.answer(bodyTop, {
        ...{ core: front, path: madeBody(made).outline.path, drop: of("body.drop") },
        ...{ arris: of("body.arris"), profile: profile.front },
        ...{ from: of("fingerboard.length") - beside, to: of("string.length") + beside },
      }).value,
    profile: () => profile,
    solidInput: () => {
      const { outline, recess } = madeBody(made);
      return {
        ...{ core: front, path: outline.path, thickness: of("body.thickness"), drop: of("body.drop") },
        ...{ arris: of("body.arris"), profile },
        recess: { path: recess.path, depth: lies === "through" ? null : recess.depth },
        sunken: sunkenOf(rests().sunken.body),
      };
    },
    solid: () => store.answer(bodySolid, made.solidInput).value,
  });
  return made;
}

function outlineInput(spec: Spec): BodyOutlineInput {
  const of = (id: string) => dimensionOf(spec, `body.${id}`);
  const breadth = (name: string) => ({ at: of(`${name}.at`), width: of(`${name}.width`) });
  return {
    ...{ start: of("start"), length: of("length") },
    head: { width: of("head.width"), corner: of("head.corner") },
    ...{ upper: breadth("upper"), waist: breadth("waist"), lower: breadth("lower") },
    corners:
      spec.body?.corners === "four"
        ? { upper: breadth("corner.upper"), lower: breadth("corner.lower"), radius: of("corner") }
        : null,
  };
}

/** Outline and room for the core of a body that contradictions found nothing wrong with; throws at one that can't be made. */
export function madeBody({ outline, recess }: Pick<Body, "outline" | "recess">) {
  if (outline.kind !== "ok") throw new RangeError(`the body has no outline: ${outline.kind}`);
  if (recess.kind !== "ok") throw new RangeError(`the body has no room for the core: ${recess.kind}`);
  return { outline, recess };
}
