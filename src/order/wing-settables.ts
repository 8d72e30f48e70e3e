import { type Settable, settable } from "./settable.ts";
import { type Side, sides } from "./side.ts";

/** What can be set of a winged instrument's two wings, which a design has both or neither of. */
export const wingSettables: readonly Settable[] = sides.flatMap(ofSide);

function ofSide(side: Side): Settable[] {
  const length = (least: number, most: number) => settable(`wing-${side}`, "length", least, most, "wings");
  const angle = settable(`wing-${side}`, "angle", -60, 60, "wings");
  const id = (name: string) => `wing.${side}.${name}`;
  return [
    length(0, 2000)(
      id("start"),
      `Head end of the ${side} wing's joint line, along the core's front from its start`,
    ),
    length(0, 200)(
      id("drop"),
      `The ${side} wing's front under the core's front, at the head end of its joint line`,
    ),
    angle(id("splay"), `The ${side} wing's turn about the core's normal, positive opens toward the tail`),
    angle(id("cant"), `The ${side} wing's turn about its joint line, positive drops its outer edge`),
    angle(id("rake"), `The ${side} wing's turn about the way across, positive lifts its tail end`),
    length(10, 2000)(
      id("length"),
      `Length of the ${side} wing from the head end of its joint line, along its own axis`,
    ),
    length(5, 800)(id("width"), `Width of the frame that the ${side} wing's outline stands in`),
    length(3, 150)(id("thickness"), `Thickness of the ${side} wing`),
    length(0, 60)(id("arris"), `Size of the ${side} wing's edge profile, at front and back`),
    length(1, 30)(id("pin"), `Diameter of the pins in the ${side} wing's joint`),
    length(0, 1)(id("pin.fit"), `Room a side round a pin in its hole in the ${side} wing's joint`),
    length(2, 100)(id("pin.depth"), `Depth of a pin's hole, in the ${side} wing as in the core`),
    length(0.1, 30)(
      id("pin.wall"),
      `Least wood between a pin's hole in the ${side} wing's joint and any face, edge or hole`,
    ),
  ];
}
