import { type Feature, type Settable, settable } from "./settable.ts";

const length = (least: number, most: number, feature: Feature = "body") =>
  settable("body", "length", least, most, feature);
const corner = length(0, 2000, "body-corners");

/** What can be set of a body in one piece. Places along it are told from its head end, widths whole. */
export const bodySettables: readonly Settable[] = [
  length(0, 2000)("body.start", "Head end of the body, along the core's front from its start"),
  length(20, 2000)("body.length", "Length of the body from its head end, along the core's front"),
  length(5, 1000)("body.head.width", "Width of the body's square head end, its rounded corners included"),
  length(0, 200)("body.head.corner", "Radius of the two corners at the body's head end"),
  ...["upper", "waist", "lower"].flatMap((bout) => {
    const name = bout === "waist" ? "waist" : `${bout} bout`;
    return [
      length(5, 1000)(`body.${bout}.width`, `Width of the body's ${name}`),
      length(1, 2000)(`body.${bout}.at`, `Where the width of the body's ${name} is, from its head end`),
    ];
  }),
  length(3, 200)("body.thickness", "Thickness of the body"),
  length(0, 200)("body.drop", "The body's front under the core's front"),
  length(0, 60)("body.arris", "Size of the body's edge profile, at front and back"),
  length(0, 5)(
    "body.recess.clearance",
    "Room round the core where the body takes it in, a side, with finish",
  ),
  length(0.1, 100)("body.wall.least", "Least wood of the body beside the core and behind its tail"),
  length(0.1, 100, "body-recess")("body.floor.least", "Least wood of the body under the core"),
  length(0, 200, "body-corners")("body.corner", "Radius of the body's four corners between bouts and waist"),
  ...["upper", "lower"].flatMap((bout) => [
    corner(
      `body.corner.${bout}.width`,
      `Width of the body over its two ${bout} corners before they are rounded`,
    ),
    corner(`body.corner.${bout}.at`, `Where the body's two ${bout} corners are, from its head end`),
  ]),
];
