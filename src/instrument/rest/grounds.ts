import { circle } from "../../geometry/circle.ts";
import { mirrored } from "../../geometry/mirror.ts";
import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import type { RestPart } from "../../order/rest-part.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf, type EdgeProfile, type Spec } from "../../order/spec.ts";
import { type Bodies, madeBody } from "../body/body.ts";
import { coreFullFrom } from "../body/recess.ts";
import type { BridgeOnCore } from "../bridge/bridge.ts";
import { madeSunk } from "../bridge/sunk.ts";
import type { CoreFrame } from "../core/frame.ts";
import { coreHalf, coreWidthOf } from "../core/width.ts";
import type { RodsAndPins } from "../neck/rods-and-pins.ts";
import { placeOfWing } from "../wing/place.ts";
import type { Wing, Wings } from "../wing/wings.ts";
import type { Ground, Taken } from "./ground.ts";

/** What the grounds of rests rest on. */
export type UnderRests = Wings & Bodies & BridgeOnCore & RodsAndPins & { readonly core: CoreFrame };

const sharp = { front: 0, back: 0 };

/** The wood of the part that carries something, without what rests take of it themselves. */
export function groundOf(part: RestPart, spec: Spec, made: UnderRests): Ground {
  if (part === "neck") return neckGround(spec, made);
  return part === "body"
    ? bodyGround(spec, made)
    : wingGround(part === "wing-bass" ? "bass" : "treble", spec, made);
}

function easedBy(profile: { readonly front: EdgeProfile; readonly back: EdgeProfile }, arris: number) {
  const at = (one: EdgeProfile) => (one === "none" ? 0 : arris);
  return { front: at(profile.front), back: at(profile.back) };
}

function wingGround(side: Side, spec: Spec, { wings }: UnderRests): Ground {
  const of = (name: string) => dimensionOf(spec, `wing.${side}.${name}`);
  const { outline, place, joint } = wings![side];
  if (outline.kind !== "ok") throw new RangeError(`the ${side} wing has no outline: ${outline.kind}`);
  const seen = (path: Path) => (side === "bass" ? mirrored(path, "y") : path);
  // What is cut: all of the outline but its first edge, which lies past the joint.
  const [first, ...rest] = outline.over.points;
  const cut: Path = { closed: false, points: [...rest, { ...first!, bulge: 0 }] };
  // The joint face leans; at the back or at the front it lies furthest into the wing.
  const into = Math.max(0, of("thickness") * Math.tan((place.cut.bevel * Math.PI) / 180));
  const [x, y] = outline.joint;
  const long = Math.hypot(x, y);
  const [dx, dy] = [(-y / long) * into, (x / long) * into];
  const line = [
    { x: dx, y: dy, bulge: 0 },
    { x: x + dx, y: y + dy, bulge: 0 },
  ];
  const eased = easedBy(spec.wings![side].profile, of("arris"));
  const within: Path = { closed: true, points: [...line, ...outline.path.points.slice(2)] };
  return {
    ...{ part: `wing-${side}`, thickness: of("thickness"), within: seen(within) },
    borders: [
      { what: "the wing's edge", path: seen(cut), eased },
      { what: "the joint", path: seen({ closed: false, points: line }), eased: sharp },
    ],
    taken: joint.pins.map(({ id, at }) => ownPin(wings![side], side, id, at, of)),
  };
}

/** A joint pin's hole in the wing's own axes. */
function ownPin({ solidInput }: Wing, side: Side, id: string, at: Vec3, of: (name: string) => number): Taken {
  const { frame, joint } = placeOfWing(solidInput.place);
  const own = (place: Vec3): Vec3 => {
    const from = { x: place.x - frame.origin.x, y: place.y - frame.origin.y, z: place.z - frame.origin.z };
    return { x: dot(from, frame.u), y: dot(from, frame.v), z: dot(from, frame.w) };
  };
  const end = along(at, joint.normal, of("pin.depth"));
  return {
    ...{ kind: "bored", what: `pin ${id} of the ${side} wing`, radius: of("pin") / 2 },
    axis: { from: own(at), to: own(end) },
  };
}

function along(at: Vec3, way: Vec3, by: number): Vec3 {
  return { x: at.x + way.x * by, y: at.y + way.y * by, z: at.z + way.z * by };
}

function bodyGround(spec: Spec, { body }: UnderRests): Ground {
  const of = (name: string) => dimensionOf(spec, `body.${name}`);
  const { outline, recess } = madeBody(body!);
  const depth = spec.body!.core === "through" ? of("thickness") : recess.depth;
  return {
    ...{ part: "body", thickness: of("thickness"), within: outline.path },
    borders: [
      { what: "the body's edge", path: outline.path, eased: easedBy(spec.body!.profile, of("arris")) },
    ],
    taken: [{ kind: "sunk", what: "the room for the core", from: "front", path: recess.path, depth }],
  };
}

/** The core, as far as it is full: at its tail less what the leaning end takes, at its sides where they are nearest. */
function neckGround(spec: Spec, made: UnderRests): Ground {
  const of = (id: string) => dimensionOf(spec, id);
  const { core, wings, neckRods, neckPins, bridgeSunk } = made;
  const depth = of("core.depth");
  const slope = (core.slope * Math.PI) / 180;
  const from = coreFullFrom({ ...core, depth }, of("neck.transition.end"), of("neck.heel.end"));
  const end = (of("core.end") - core.start) / Math.cos(slope);
  const width = coreWidthOf(of);
  const half = Math.min(...[from, end].map((x) => coreHalf(width, core.start + x * Math.cos(slope))));
  const within = rectangle(from, -half, end, half);
  const front = (path: Path): Path => ({
    ...path,
    points: path.points.map((at) => ({ ...at, x: (at.x - core.start) / Math.cos(slope) })),
  });
  const sunk = (what: string, path: Path, deep: number): Taken => {
    return { kind: "sunk", what, from: "front", path, depth: deep };
  };
  const pins = neckPins.filter((pin) => pin.depth !== "through");
  return {
    ...{ part: "neck", thickness: depth, within },
    borders: [{ what: "the core's sides or ends", path: within, eased: sharp }],
    taken: [
      ...neckRods.map((rod) => sunk("a rod's channel", front(rod.path), rod.depth)),
      ...pins.map((pin) =>
        sunk(`the ${pin.id} pin`, front(circle(pin, pin.diameter / 2)), pin.depth as number),
      ),
      ...madeSunk(bridgeSunk).map(({ kind, id, path, depth: deep }) =>
        sunk(kind === "cradle" ? "the cradle" : `the screw ${id}`, path, deep),
      ),
      ...(wings === null ? [] : sides.flatMap((side) => pinsInCore(side, spec, wings[side]))),
    ],
  };
}

/** The holes of a wing's pins in the core. */
function pinsInCore(side: Side, spec: Spec, { joint }: Wing): Taken[] {
  const of = (name: string) => dimensionOf(spec, `wing.${side}.${name}`);
  return joint.pins.map(({ id, at }) => ({
    ...{ kind: "bored", what: `pin ${id} of the ${side} wing`, radius: of("pin") / 2 },
    axis: { from: at, to: along(at, joint.face.w, -of("pin.depth")) },
  }));
}
