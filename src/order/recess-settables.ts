import { settable } from "./settable.ts";

const length = (least: number, most: number) => settable("recesses", "length", least, most, "recesses");

/** What can be set of a design's recesses and their covers. */
export const recessSettables = [
  length(0.2, 30)(
    "recess.wall",
    "Least wood between a recess or a wire's bore and any surface, joint, hole or other recess",
  ),
  length(0, 3)("recess.clearance", "Room round what lies in a recess, a side, with finish, and over it"),
  length(0.5, 20)("recess.corner", "Radius of a recess's inside corners, no less than its cutter's"),
  length(0.5, 15)("cover.thickness", "Thickness of the covers, which lie flush in their ledges"),
  length(0.5, 40)("cover.ledge", "Ledge under a cover at its two ends, or round a round one, for its screws"),
  length(0.5, 40)("cover.lip", "Ledge under a cover along its two sides"),
  length(0, 3)("cover.clearance", "Room round a cover in its ledge, a side, with finish"),
  length(0.5, 10)("cover.screw", "Diameter of a screw's hole in a cover"),
  length(0.3, 10)("cover.pilot", "Diameter of a screw's pilot hole in a ledge"),
  length(1, 60)("cover.pilot.depth", "Depth of a screw's pilot hole in a ledge"),
];
