import type { Vec3 } from "../../geometry/solid/vec3.ts";
import { gravity, type Piece } from "./piece.ts";

/**
 * How an instrument that leans back on its endpin bears on the player: `away` is how far the middle of its mass lies from over the pin's tip, level and toward the
 * player, mm, and `moment` what the weight turns about the tip, N mm, positive toward the player. `lean` is how far the instrument's axis x lies
 * under level, degrees, with its front away from the player.
 */
export function onEndpin(tip: Vec3, lean: number, { mass, centre }: Pick<Piece, "mass" | "centre">) {
  const angle = (lean * Math.PI) / 180;
  const away = (tip.x - centre.x) * Math.cos(angle) - (centre.z - tip.z) * Math.sin(angle);
  return { away, moment: (mass / 1000) * gravity * away };
}
