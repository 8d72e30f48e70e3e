import { facet } from "../../geometry/facet.ts";
import { offsetPath } from "../../geometry/offset/offset-path.ts";
import type { Path } from "../../geometry/path.ts";
import { rectangle } from "../../geometry/rectangle.ts";
import { type Frame, fromFrame, upright } from "../../geometry/solid/frame.ts";
import type { Solid } from "../../geometry/solid/solid.ts";
import { cross, dot, type Vec3 } from "../../geometry/solid/vec3.ts";
import { step } from "../../step/step.ts";
import { type CaulPlace, type CaulPlaceInput, caul, caulPlace, rimOf } from "./caul-place.ts";
import { letteredOn, letteringSize, pieceLines } from "./lettered.ts";
import { type Key, type Piece, pieceOf } from "./piece.ts";
import type { Stretch } from "./pieces.ts";
import { printed } from "./print-rules.ts";

/** A caul: what its place follows from; where along the glued joint clamps have something to press against on the other side, mm; whether it is turned over, and its letters. */
export type CaulInput = CaulPlaceInput & {
  readonly clamps: Stretch;
  readonly mirrored: boolean;
  readonly lines: readonly string[];
  readonly piece: Piece;
};

/** More than any wing is long or wide, mm. */
const beyond = 2000;

/** How fine the rim in a caul is faceted, mm. */
const fine = 0.02;

/** The line that clamps are set on: its groove's width and depth, mm. */
const line = { wide: 1.2, deep: 0.6 };

/** The dovetail between two pieces of a caul: in its floor, in the middle of it. */
export function caulKey({ across }: Pick<CaulPlace, "across">): Key {
  return { y: (across.from + across.to) / 2, root: 10, end: 15, reach: 9, top: caul.floor - 2 };
}

/**
 * A caul that a wing is pressed to the core by, and held at its angles: a block with a channel for the wing's rim, the loose clearance round it, and lips over front and back. It slides on
 * in the wing's own plane; its lips end short of the joint, so that squeezed-out glue stays free of it. Its clamp face is parallel to the joint face that is glued, and a groove in
 * that marks the middle of that joint's depth, so that clamps neither slide the wing along nor tip it.
 *
 * The second wing is glued against the first one in place: where both lie along the core, a caul sits on the first wing's rim whose clamp face is parallel to the *second* joint face, its
 * groove in the middle of that joint's depth. Clamps then reach from one caul to the other, square to both faces, though the core may taper and the first wing stands at other angles.
 *
 * It lies on its clamp face as it is printed, and both lips lean by the joint's bevel. Of the other hand, y is turned round.
 */
export const caulPiece = step("jig.caul", 1, (given: CaulInput): Solid => {
  const place = caulPlace(given);
  if (place === null) throw new RangeError("a caul for a rim that stands out nowhere beside the joint");
  const middle = -given.joint.deep / 2;
  const half = line.wide / 2;
  const groove = rectangle(given.clamps.from - past, middle - half, given.clamps.to + past, middle + half);
  const hollowed: Solid = {
    ...{ kind: "cut", from: blockOf(given, place) },
    by: [channel(given, place), raised(groove, -past, past + line.deep)],
  };
  const cut = pieceOf(hollowed, given.piece, caulKey(place));
  const handed: Solid = given.mirrored ? { kind: "place", solid: cut, frame: turned } : cut;
  const lines = pieceLines(given.lines, given.piece);
  const text = { lines, x: 0, y: letteringSize(lines).height / 2, z: 0 };
  return letteredOn(handed, letterFrame(given, place), text);
});

const turned: Frame = { ...upright, v: { x: 0, y: -1, z: 0 } };

function raised(outer: Path, base: number, height: number): Solid {
  return { kind: "extrude", outlines: [{ outer, holes: [] }], base, height };
}

/** How far what is joined or cut reaches past a face, mm: two faces in one plane leave slivers. */
const past = 1;

/** Both lips with what is between them, a slab parallel to the wing's front, and the floor that it stands on; cut off where the caul ends and the relief begins. */
function blockOf({ thickness }: CaulInput, { frame, along, across, high }: CaulPlace): Solid {
  const outside = printed.clearance.loose + caul.lip;
  const slab = raised(
    rectangle(-beyond, -beyond, beyond, beyond),
    -thickness - outside,
    thickness + 2 * outside,
  );
  const floor = raised(rectangle(-beyond, across.from, beyond, across.to), -past, past + caul.floor);
  const stretch = raised(rectangle(along.from, -beyond, along.to, beyond), 0, high);
  const whole: Solid = { kind: "union", solids: [{ kind: "place", solid: slab, frame }, floor] };
  return { kind: "intersect", solids: [whole, stretch] };
}

/** The room for the wing: its outline and the clearance, and all that lies between that and the joint. */
function channel({ over, thickness }: CaulInput, { frame, slide }: CaulPlace): Solid {
  const { loose } = printed.clearance;
  const grown = offsetPath(over, loose);
  // A narrow place that closes leaves a hole, which nothing slides into from outside.
  const outer =
    grown.outcome === "split" ? grown.region[0]?.outer : grown.outcome === "ok" ? grown.path : undefined;
  if (outer === undefined) throw new RangeError(`a wing's outline can't be grown: ${grown.outcome}`);
  const rim = rimOf(facet(outer, fine).points, slide);
  const back = (from: { x: number; y: number }) => ({
    x: from.x - slide.x * beyond,
    y: from.y - slide.y * beyond,
  });
  const points = [...rim, back(rim.at(-1)!), back(rim[0]!)].map((point) => ({ ...point, bulge: 0 }));
  const room = raised({ closed: true, points }, -thickness - loose, thickness + 2 * loose);
  return { kind: "place", solid: room, frame };
}

/** On the outer face of the front lip: between the relief and the floor, in the middle of the piece. */
function letterFrame({ piece, mirrored }: CaulInput, { frame, along, high }: CaulPlace): Frame {
  const x = ((piece.from ?? along.from) + (piece.to ?? along.to)) / 2;
  const z = (caul.floor + high) / 2;
  const w = frame.w;
  // Where the lip's face has this x and this height over the bed.
  const face = printed.clearance.loose + caul.lip;
  const on = fromFrame(frame, 0, 0, face);
  const y = (dot(on, w) - x * w.x - z * w.z) / w.y;
  const flip = mirrored ? -1 : 1;
  const outward: Vec3 = { x: w.x, y: flip * w.y, z: w.z };
  const length = Math.hypot(outward.y, outward.z);
  const up = { x: 0, y: outward.z / length, z: -outward.y / length };
  const right = cross(up, outward);
  return { origin: { x, y: flip * y, z }, u: right, v: up, w: outward };
}
