import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { between, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import type { RecessPart } from "../../order/recess-part.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf, type Spec } from "../../order/spec.ts";
import { type Body, madeBody } from "../body/body.ts";
import { coreFullFrom } from "../body/recess.ts";
import type { BridgeOnCore } from "../bridge/bridge.ts";
import { madeSunk } from "../bridge/sunk.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreHalf, coreWidthOf } from "../core/width.ts";
import type { RodsAndPins } from "../neck/rods-and-pins.ts";
import { madeTailpiece, type Tailpiece } from "../tailpiece/tailpiece.ts";
import type { Wing } from "../wing/wings.ts";
import type { Ground, Rod, Upright } from "./ground.ts";

/** What recesses are sunk among. */
export type Among = {
  readonly core: CoreFrame;
  readonly wings: { readonly [side in Side]: Wing } | null;
  readonly body: Body | null;
} & Pick<BridgeOnCore, "bridgeSunk"> &
  Pick<RodsAndPins, "neckRods"> &
  Pick<Tailpiece, "tailpiece">;

/** The wood of one part of an instrument and what else is sunk into it, in the part's own axes. Throws at a part that the instrument doesn't have or that can't be made. */
export function groundOf(part: RecessPart, spec: Spec, made: Among): Ground {
  if (part === "neck") return neckGround(spec, made);
  return part === "body" ? bodyGround(spec, made.body!) : wingGround(part, spec, made.wings!);
}

const whole = (path: Path): Path => path;

function wingGround(
  part: "wing-bass" | "wing-treble",
  spec: Spec,
  wings: { readonly [side in Side]: Wing },
): Ground {
  const side = part === "wing-bass" ? "bass" : "treble";
  const own = (name: string) => `wing.${side}.${name}`;
  const of = (name: string) => dimensionOf(spec, own(name));
  const { outline, place, joint } = wings[side];
  if (outline.kind !== "ok") throw new RangeError(`the ${side} wing has no outline: ${outline.kind}`);
  const over = side === "bass" ? (path: Path) => mirrored(path, "y") : whole;
  const { points } = outline.path;
  const cut: Path = { closed: false, points: [...points.slice(1), { ...points[0]!, bulge: 0 }] };
  const { frame } = place;
  const turned = (v: Vec3): Vec3 => ({ x: dot(v, frame.u), y: dot(v, frame.v), z: dot(v, frame.w) });
  const { normal } = place.joint;
  const eased = Object.values(spec.wings![side].profile).some((profile) => profile !== "none");
  return {
    ...{ part, thickness: of("thickness"), thick: own("thickness") },
    ...{ outline: over(outline.path), rim: over(cut), eased: eased ? of("arris") : 0 },
    ...{ sides: "the wing's rim", ids: [own("width"), own("length"), own("arris")], joint: turned(normal) },
    uprights: [],
    rods: joint.pins.map(({ id, at }): Rod => {
      const from = turned(between(frame.origin, at));
      const way = turned(normal);
      const depth = of("pin.depth");
      const to = { x: from.x + depth * way.x, y: from.y + depth * way.y, z: from.z + depth * way.z };
      const ids = [own("pin.depth"), own("pin"), own("length")];
      return { what: `pin ${id} of the ${side} wing`, from, to, diameter: of("pin"), ids };
    }),
  };
}

function bodyGround(spec: Spec, body: Body): Ground {
  const of = (id: string) => dimensionOf(spec, id);
  const { outline, recess } = madeBody(body);
  const eased = Object.values(spec.body!.profile).some((profile) => profile !== "none");
  const thickness = of("body.thickness");
  const room: Upright = {
    ...{ what: "the core's room", path: recess.path, high: 0, ids: ["core.width", "body.recess.clearance"] },
    low: spec.body!.core === "through" ? -thickness : -recess.depth,
  };
  return {
    ...{ part: "body", thickness, thick: "body.thickness", outline: outline.path, rim: outline.path },
    ...{ eased: eased ? of("body.arris") : 0, sides: "the body's rim", joint: null },
    ids: ["body.lower.width", "body.length", "body.arris"],
    ...{ uprights: [room], rods: [] },
  };
}

/** The core from where it is full to its tail: its sides lean in its own frame by no more than its taper, and are taken where it is narrower. */
function neckGround(spec: Spec, made: Among): Ground {
  const of = (id: string) => dimensionOf(spec, id);
  const { core } = made;
  const slope = (core.slope * Math.PI) / 180;
  const depth = of("core.depth");
  const along = (x: number) => (x - core.start) / Math.cos(slope);
  const width = coreWidthOf(of);
  const half = (x: number) =>
    Math.min(
      ...[0, -depth].map((z) => coreHalf(width, core.start + x * Math.cos(slope) + z * Math.sin(slope))),
    );
  const [head, tail] = [
    coreFullFrom({ ...core, depth }, of("neck.transition.end"), of("neck.heel.end")),
    along(of("core.end")),
  ];
  // From the straight side through the rounded corner to the tail; a side that tapers turns by a little more or less.
  const lean = Math.atan2(half(tail) - half(head), tail - head);
  const turn = Math.PI / 2 + lean;
  const cut = of("neck.corner") * Math.tan(turn / 2);
  const before = { x: tail - cut * Math.cos(lean), y: half(tail) - cut * Math.sin(lean) };
  const bulge = Math.tan(turn / 4);
  const points = [
    { x: head, y: -half(head), bulge: 0 },
    { x: before.x, y: -before.y, bulge },
    { x: tail, y: -(half(tail) - cut), bulge: 0 },
    { x: tail, y: half(tail) - cut, bulge },
    { x: before.x, y: before.y, bulge: 0 },
    { x: head, y: half(head), bulge: 0 },
  ];
  const outline: Path = { closed: true, points };
  const wings = made.wings === null ? [] : sides.flatMap((side) => pinsInCore(side, spec, made.wings![side]));
  return {
    ...{ part: "neck", thickness: depth, thick: "core.depth", outline, rim: outline, eased: 0 },
    ...{ sides: "the core's sides and ends", ids: ["core.width", "core.end", "core.taper"], joint: null },
    ...{ uprights: [...underBridge(made), ...channels(made), ...posts(spec, made)], rods: wings },
  };
}

function pinsInCore(side: Side, spec: Spec, { joint, place }: Wing): Rod[] {
  const own = (name: string) => `wing.${side}.${name}`;
  const depth = dimensionOf(spec, own("pin.depth"));
  const { normal } = place.joint;
  return joint.pins.map(({ id, at }) => ({
    ...{ what: `pin ${id} of the ${side} wing`, from: at, diameter: dimensionOf(spec, own("pin")) },
    to: { x: at.x - depth * normal.x, y: at.y - depth * normal.y, z: at.z - depth * normal.z },
    ids: [own("pin.depth"), own("start"), own("pin")],
  }));
}

function underBridge({ bridgeSunk }: Among): Upright[] {
  return madeSunk(bridgeSunk).map(({ kind, id, path, depth }) => ({
    what: kind === "cradle" ? "the bridge's cradle" : `the bridge's screw ${id}`,
    ...{ path, low: -depth, high: 0 },
    ids: kind === "cradle" ? ["cradle.length", "cradle.depth"] : ["saddle.screw.depth", "bridge.foot.width"],
  }));
}

/** Rods lie under z = 0, from which the core's front falls away, so they reach no deeper into it than they are. */
function channels({ neckRods, core }: Among): Upright[] {
  const scale = Math.cos((core.slope * Math.PI) / 180);
  return neckRods.map(({ path, depth }) => ({
    what: "a rod's channel",
    path: { ...path, points: path.points.map((at) => ({ ...at, x: (at.x - core.start) / scale })) },
    ...{ low: -depth, high: 0, ids: ["rod.length", "rod.depth"] },
  }));
}

/** The tailpiece's posts, down to the depth that is set of them; right through where none is. */
function posts(spec: Spec, made: Among): Upright[] {
  const depth = spec.values["tailpiece.post.depth"]?.value ?? dimensionOf(spec, "core.depth");
  return madeTailpiece(made).posts.map(({ id, path }) => ({
    ...{ what: `the tailpiece's ${id}`, path, low: -depth, high: 0 },
    ids: ["tailpiece.width", "tailpiece.length"],
  }));
}
