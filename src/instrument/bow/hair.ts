import { cross, dot, type Vec3 } from "../../geometry/solid/vec3.ts";

/** A line through a string's centre at nut and bridge: its places across and over z = 0 there, mm. */
export type StringLine = {
  readonly length: number;
  readonly nut: { readonly y: number; readonly z: number };
  readonly bridge: { readonly y: number; readonly z: number };
};

/**
 * The plane of a bow's hair: it holds the outer string's line, and leans down by the tilt (degrees) on that string's side of the
 * instrument, `side` 1 treble and -1 bass.
 */
export type Hair = { readonly string: StringLine; readonly side: 1 | -1; readonly tilt: number };

/**
 * A place as the hair sees it, mm: `along` the string, by its x from the nut, and `out` from the string's centre, both of where it
 * meets the hair's plane squarely; `below` that plane, negative where it stands through.
 */
export type UnderHair = { readonly along: number; readonly out: number; readonly below: number };

/** How places lie under a hair's plane; the answer goes straight with the place. */
export function underHair({ string, side, tilt }: Hair): (place: Vec3) => UnderHair {
  const { length, nut, bridge } = string;
  const turn = (tilt * Math.PI) / 180;
  const along: Vec3 = { x: 1, y: (bridge.y - nut.y) / length, z: (bridge.z - nut.z) / length };
  const out: Vec3 = { x: 0, y: side * Math.cos(turn), z: -Math.sin(turn) };
  const square = cross(along, out);
  const size = side * Math.hypot(square.x, square.y, square.z);
  const up: Vec3 = { x: square.x / size, y: square.y / size, z: square.z / size };
  return (place) => {
    const from = { x: place.x, y: place.y - nut.y, z: place.z - nut.z };
    const below = -dot(from, up);
    const x = from.x + below * up.x;
    const beside = {
      x: 0,
      y: from.y + below * up.y - x * along.y,
      z: from.z + below * up.z - x * along.z,
    };
    return { along: x, out: dot(beside, out), below };
  };
}

/**
 * How far along the string a bow that is skewed by so many degrees in plan has moved for each mm out of the string, positive to
 * the tail.
 */
export function skewed({ string, side, tilt }: Hair, skew: number): number {
  const slant = Math.tan((skew * Math.PI) / 180);
  const splay = (side * (string.bridge.y - string.nut.y)) / string.length;
  return (slant * Math.cos((tilt * Math.PI) / 180)) / (1 - slant * splay);
}
