import type { Path } from "../path.ts";
import type { Problem } from "./problem.ts";
import { soundOutline } from "./sound-outline.ts";

/**
 * Everything that is wrong with a path that is to be an outline: closed, finite, with arcs up to half a circle, with
 * an area, and not across itself. None where it is good. `repeated-point` alone is harmless. Never throws. Where the
 * points themselves are bad, crossings are not looked for.
 */
export function validateOutline(path: Path): Problem[] {
  return [...soundOutline(path).problems];
}
