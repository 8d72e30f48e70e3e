import { signedArea } from "./measure.ts";
import type { Path } from "./path.ts";
import type { Region } from "./region.ts";
import { reversedPath } from "./reversed-path.ts";

/** The region within one closed path, whatever its winding. The path is not looked at: see `validateOutline`. */
export function regionWithin(path: Path): Region {
  return [{ outer: signedArea(path) < 0 ? reversedPath(path) : path, holes: [] }];
}
