import { type Settable, settable } from "./settable.ts";

const tailpieceLength = settable("tailpiece", "length", 0.1, 400);
const boardAllowance = settable("fingerboard", "length", 0, 50);
const scoop = settable("fingerboard", "length", 0, 3);
const fretLength = settable("fingerboard", "length", 0, 30, "frets");
const dotLength = settable("fingerboard", "length", 0.1, 60, "dots");
const sideDotLength = settable("fingerboard", "length", 0.1, 60, "side-dots");
const inlayLength = settable("fingerboard", "length", 0, 200, "inlays");

/** What can be set of the fingerboard's surface and blank, of bow and tailpiece, and of what a design may have there. */
export const stringSideSettables: readonly Settable[] = [
  scoop(
    "fingerboard.scoop.high",
    "Gap under a straightedge along the highest string, at the board's mid-length",
  ),
  scoop(
    "fingerboard.scoop.low",
    "Gap under a straightedge along the lowest string, at the board's mid-length",
  ),
  boardAllowance("fingerboard.allowance.end", "Wood that a blank has beyond the board at either end"),
  boardAllowance("fingerboard.allowance.side", "Wood that a blank has beyond the board on either side"),
  boardAllowance("fingerboard.allowance.face", "Wood that a blank has beyond the board's greatest thickness"),
  settable(
    "strings",
    "length",
    0.5,
    100,
  )("strings.clear", "Least room between any string and the front of a wing or a body beside it"),
  settable(
    "bow",
    "angle",
    1,
    45,
  )("bow.angle.least", "Least range of bow tilts that touch one inner string alone"),
  tailpieceLength("tailpiece.spread", "Outer strings' exits apart, centre to centre along y"),
  settable(
    "tailpiece",
    "angle",
    -30,
    30,
  )(
    "tailpiece.slant",
    "Turn of the strings' exits about the core's normal, positive lengthens the bass side's afterlengths",
  ),
  tailpieceLength("tailpiece.width", "Width of the tailpiece along y"),
  tailpieceLength(
    "tailpiece.length",
    "Length of the tailpiece from the strings' exits to its end, on the centreline",
  ),
  tailpieceLength("tailpiece.thickness", "Thickness of the tailpiece's plate"),
  tailpieceLength("tailpiece.hole", "Diameter of a string's hole through the tailpiece"),
  tailpieceLength("tailpiece.hole.at", "A string's hole behind its exit, centre to exit"),
  tailpieceLength("tailpiece.wall", "Least wood between two string holes, or between a hole and an edge"),
  tailpieceLength(
    "tailpiece.post.depth",
    "Depth of the holes for the tailpiece's posts, from the core's front",
  ),
  tailpieceLength("tailpiece.clear", "Least gap between the tailpiece and the core's front under it"),
  settable(
    "bridge",
    "length",
    0,
    50,
  )("bridge.allowance", "Wood that a bridge's blank has beyond it at top and sides"),
  fretLength("fret.crown.height", "Height of a fret's crown over the board"),
  fretLength("fret.crown.width", "Width of a fret's crown"),
  fretLength("fret.tang.depth", "Depth of a fret's tang under its crown"),
  fretLength("fret.tang.width", "Thickness of a fret's bare tang"),
  fretLength("fret.slot.fit", "Width of a fret's slot over the bare tang"),
  fretLength("fret.slot.under", "Depth of a fret's slot under the tang"),
  fretLength("fret.slot.wall", "Least wood of the board under a fret's slot"),
  fretLength("fret.slot.edge", "Wood between a blind slot's end and the board's edge"),
  fretLength("fret.inset", "A fret's end set in from the board's edge"),
  settable(
    "fingerboard",
    "angle",
    0,
    60,
    "frets",
  )("fret.bevel", "Bevel of a fret's ends, from square to the board"),
  fretLength("fret.dressing", "How much further in a fret's end is filed down beside a thin string"),
  fretLength(
    "fret.dressing.under",
    "Diameter under which a string counts as thin, for the frets' ends beside it",
  ),
  fretLength("fret.clear", "Least gap of an open string over the first fret"),
  dotLength("dot.size", "Diameter of a dot in the board's face"),
  dotLength("dot.depth", "Depth of a dot's bore in the board's face"),
  dotLength("dot.apart", "Two dots' centres apart, where two stand side by side"),
  sideDotLength("side-dot.size", "Diameter of a dot in the board's bass edge"),
  sideDotLength("side-dot.depth", "Depth of a dot's bore in the board's bass edge"),
  inlayLength("inlay.length", "Length of an inlay along the board"),
  inlayLength("inlay.width", "Width of an inlay across the board"),
  inlayLength("inlay.depth", "Depth of an inlay's recess"),
  inlayLength("inlay.cutter", "Diameter of the cutter that an inlay's recess is cut with"),
  inlayLength("inlay.clearance", "Gap between an inlay and its recess, a side"),
  settable(
    "bridge",
    "length",
    0.1,
    100,
    "cradle",
  )("cradle.length", "Length of the pickup's cradle along the core"),
  settable(
    "bridge",
    "length",
    0.1,
    100,
    "cradle",
  )("cradle.depth", "Depth of the pickup's cradle, from the core's front"),
  settable(
    "bridge",
    "length",
    0.1,
    100,
    "saddle",
  )("saddle.screw.depth", "Depth of the holes for a screwed saddle, from the core's front"),
];
