import { type Feature, type Settable, settable } from "./settable.ts";

const length = (feature: Feature, least: number, most: number) =>
  settable("rests", "length", least, most, feature);
const chin = (least: number, most: number) => length("chin-rest", least, most);

const pin = (least: number, most: number) => settable("endpin", "length", least, most, "endpin");
const lean = settable("endpin", "angle", -60, 90, "endpin");

const endpin: readonly Settable[] = [
  pin(2, 60)("endpin.bore", "Diameter of the endpin's bore in the core's tail"),
  pin(5, 300)("endpin.depth", "Depth of the endpin's bore, along it"),
  lean("endpin.angle", "Angle of the endpin to the core's front, positive where its tip points to the back"),
  pin(1, 200)("endpin.down", "Middle of the endpin's bore under the core's front, where it leaves the tail"),
  pin(0, 1000)("endpin.length", "Tip of the endpin from the core's tail, along the pin"),
  pin(0.5, 60)("endpin.wall", "Least wood round the endpin's bore"),
  lean("endpin.lean", "How far the instrument leans back on its endpin: its axis x under level, when played"),
];

/** What can be set of rests and their mounts, and of the endpin. */
export const restSettables: readonly Settable[] = [
  chin(0, 2000)("rest.chin.along", "Middle of the chin rest's footprint, along its part from its head end"),
  chin(-500, 500)(
    "rest.chin.out",
    "Middle of the chin rest's footprint, out from a wing's joint or to a body's treble side",
  ),
  settable(
    "rests",
    "angle",
    -180,
    180,
    "chin-rest",
  )(
    "rest.chin.turn",
    "Turn of the chin rest's footprint from its part's axis, outward or to the treble side",
  ),
  chin(5, 300)("rest.chin.length", "Length of the frame that the chin rest's footprint stands in"),
  chin(5, 300)("rest.chin.width", "Width of the frame that the chin rest's footprint stands in"),
  chin(1, 120)("rest.chin.height", "How high the chin rest stands over its part's front"),
  chin(0.5, 60)("rest.chin.clear", "Least room between the chin rest and tailpiece or strings"),
  ...[
    length("chin-clamp", 1, 150)("rest.chin.grip.least", "Thinnest edge that the chin rest's clamp takes"),
    length("chin-clamp", 1, 150)("rest.chin.grip.most", "Thickest edge that the chin rest's clamp takes"),
    length("chin-screws", 1, 100)("rest.chin.screw.depth", "Depth of the holes for the chin rest's screws"),
    length(
      "chin-screws",
      0.5,
      30,
    )("rest.chin.screw.wall", "Least wood round a hole for the chin rest's screws"),
  ],
  ...mounts("shoulder"),
  ...mounts("knee"),
  ...endpin,
];

function mounts(kind: "shoulder" | "knee"): Settable[] {
  const own = (least: number, most: number) => length(`${kind}-mounts`, least, most);
  const id = (name: string) => `rest.${kind}.${name}`;
  const rest = kind === "shoulder" ? "the shoulder or chest rest" : "the knee rests";
  return [
    own(1, 30)(id("hole"), `Diameter of a hole, or width of a slot, that mounts ${rest}`),
    own(0, 200)(id("travel"), `How far ${rest} can be moved in a slot; 0 for a hole`),
    own(1, 100)(id("depth"), `Depth of what mounts ${rest}, from the back`),
    own(0.5, 50)(
      id("wall"),
      `Least wood between what mounts ${rest} and any surface, joint, pin, rod or hole`,
    ),
  ];
}
