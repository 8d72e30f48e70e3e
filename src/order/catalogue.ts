import { bodySettables } from "./body-settables.ts";
import { neckSettables } from "./neck-settables.ts";
import { recessSettables } from "./recess-settables.ts";
import { restSettables } from "./rest-settables.ts";
import { type Settable, settable } from "./settable.ts";
import { stringSideSettables } from "./string-side-settables.ts";
import { wingSettables } from "./wing-settables.ts";

const stringLength = settable("strings", "length", 100, 1200);
const clearance = settable("strings", "length", 0.05, 20);
const nutLength = settable("nut", "length", 0.1, 100);
const bridgeLength = settable("bridge", "length", 0.1, 200);
const boardLength = settable("fingerboard", "length", 0.1, 1200);
const coreLength = settable("core", "length", 1, 2000);

/** Every dimension that can be set, in the order in which a person would think of them. Lengths in mm, angles in degrees. */
export const catalogue: readonly Settable[] = [
  stringLength(
    "string.length",
    "String length along x, from the nut's fingerboard edge to the bridge contact",
  ),
  settable(
    "strings",
    "frequency",
    300,
    600,
  )("pitch.standard", "Frequency of A4, which all pitches follow from"),
  clearance(
    "string.clearance.nut.high",
    "Highest string's underside over the board, or the frets' tops, at the nut",
  ),
  clearance(
    "string.clearance.nut.low",
    "Lowest string's underside over the board, or the frets' tops, at the nut",
  ),
  clearance(
    "string.clearance.end.high",
    "Highest string's underside over the board's end, or the frets' tops there",
  ),
  clearance(
    "string.clearance.end.low",
    "Lowest string's underside over the board's end, or the frets' tops there",
  ),
  nutLength("nut.gap", "Gap between neighbouring strings at the nut, skin to skin along y"),
  nutLength("nut.gap.playable", "Least gap at the nut that this design calls playable"),
  nutLength("nut.margin", "Outer string's centre to the board's edge at the nut"),
  nutLength("nut.thickness", "Nut's thickness along x"),
  nutLength("nut.allowance", "Wood over the finished crown that a nut blank is left with"),
  nutLength("nut.wall", "Least wood between two slots of the nut"),
  bridgeLength("bridge.spread", "Outer strings' centres apart at the bridge, along y"),
  bridgeLength("bridge.gap.playable", "Least gap at the bridge that this design calls playable"),
  bridgeLength("bridge.margin", "Outer string's centre to the end of the bridge's crown"),
  bridgeLength("bridge.wall", "Least wood between two notches of the bridge"),
  settable(
    "bridge",
    "angle",
    -15,
    15,
  )(
    "bridge.tilt",
    "Lean of the bridge's flat tail-side face from square to the core's front, positive to the tail",
  ),
  bridgeLength("bridge.foot.width", "Width of the bridge's foot along y"),
  bridgeLength("bridge.foot.thickness", "Thickness of the bridge's foot along the core"),
  bridgeLength("bridge.top.thickness", "Thickness of the bridge's crown along the core"),
  bridgeLength("bridge.arch", "Height of the opening between the bridge's feet"),
  boardLength("fingerboard.length", "Fingerboard length from the nut"),
  boardLength(
    "fingerboard.radius",
    "Radius across the fingerboard's playing surface; a cone's at the board's end",
  ),
  boardLength("fingerboard.edge", "Thickness of the fingerboard at its edges, at the nut and at its end"),
  boardLength("fingerboard.margin.end", "Outer string's centre to the board's edge at the board's end"),
  boardLength("fingerboard.corner", "Radius of the two corners at the fingerboard's end"),
  coreLength("core.start", "Where the core's front begins to fall away, from the nut"),
  coreLength("core.end", "Where the core ends, from the nut"),
  settable("core", "length", 0, 100)("core.drop", "Step down of the core's front at its start"),
  settable("core", "angle", -10, 20)("core.slope", "Fall of the core's front, positive toward the tail"),
  settable("core", "length", 10, 400)("core.width", "Width of the core under the bridge"),
  settable("core", "length", 5, 200)("core.depth", "Depth of the core, square from its front"),
  settable(
    "core",
    "angle",
    -5,
    10,
  )("core.taper", "Taper of the core a side, positive widens toward the tail"),
  ...neckSettables,
  ...stringSideSettables,
  settable(
    "tailpiece",
    "length",
    0.1,
    150,
  )("tailpiece.height", "Height of the string exits square from the core's front, on the centreline"),
  settable(
    "tailpiece",
    "length",
    5,
    400,
  )("afterlength", "String from the bridge contact to the tailpiece exit"),
  ...wingSettables,
  ...bodySettables,
  ...recessSettables,
  ...restSettables,
  settable(
    "instrument",
    "length",
    -1000,
    3000,
  )("hold.x", "Where the instrument is held up, from the nut, for the moment of its weight about that place"),
];

/** A dimension that can be set, by its dotted name. */
export const settables: ReadonlyMap<string, Settable> = new Map(catalogue.map((entry) => [entry.id, entry]));
