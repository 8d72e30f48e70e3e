import { between, cross, dot, type Vec3 } from "../geometry/solid/vec3.ts";

/** A place turned by an angle, degrees, about a line through `from` along a unit vector, by the right-hand rule; mm. */
export function turnedAbout(
  { from, along }: { readonly from: Vec3; readonly along: Vec3 },
  degrees: number,
  place: Vec3,
): Vec3 {
  const angle = (degrees * Math.PI) / 180;
  const arm = between(from, place);
  const [c, s, on] = [Math.cos(angle), Math.sin(angle), dot(along, arm) * (1 - Math.cos(angle))];
  const across = cross(along, arm);
  const at = (axis: "x" | "y" | "z") => from[axis] + arm[axis] * c + across[axis] * s + along[axis] * on;
  return { x: at("x"), y: at("y"), z: at("z") };
}
