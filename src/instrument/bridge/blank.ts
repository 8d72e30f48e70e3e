import { extentsOf } from "../../geometry/measure.ts";
import type { Path } from "../../geometry/path.ts";
import { type Blank, blankHolding } from "../blank.ts";
import type { BridgeStand } from "./stand.ts";

/**
 * A bridge's blank, mm, as the outline lies in its flat face: length across the instrument, width up the face, thickness
 * square to it. The foot of a leaning bridge reaches below the outline on the side toward the nut. There is `allowance` at both ends
 * and at the top, and none at the foot, which is fitted, nor on the flat face.
 */
export function bridgeBlank(outline: Path, stand: BridgeStand, allowance: number): Blank {
  const { minX, maxX, maxY } = extentsOf([outline])!;
  const tilt = (stand.tilt * Math.PI) / 180;
  const [lowest, highest] = [
    Math.min(0, -stand.foot * Math.sin(tilt)),
    Math.max(0, -stand.top * Math.sin(tilt)),
  ];
  return blankHolding({
    length: maxX - minX + 2 * allowance,
    width: maxY + highest - lowest + allowance,
    thickness: stand.foot * Math.cos(tilt),
  });
}
