/** A place or a direction in space: mm, right-handed axes. */
export type Vec3 = { readonly x: number; readonly y: number; readonly z: number };

/** The scalar product. */
export function dot(a: Vec3, b: Vec3): number {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

/** The vector product, by the right-hand rule. */
export function cross(a: Vec3, b: Vec3): Vec3 {
  return { x: a.y * b.z - a.z * b.y, y: a.z * b.x - a.x * b.z, z: a.x * b.y - a.y * b.x };
}

/** The way from a to b. */
export function between(a: Vec3, b: Vec3): Vec3 {
  return { x: b.x - a.x, y: b.y - a.y, z: b.z - a.z };
}

/** How long a way in space is, mm. */
export function lengthOf({ x, y, z }: Vec3): number {
  return Math.hypot(x, y, z);
}

/** The direction of a way in space, of length 1; of no way it is no number. */
export function unit(way: Vec3): Vec3 {
  const length = lengthOf(way);
  return { x: way.x / length, y: way.y / length, z: way.z / length };
}
