import type { Spec } from "../order/spec.ts";
import { angle, type Dimension, length } from "./dimension.ts";

/** How a bow reaches every string, and what it clears where it plays the outer ones. */
export function bowDimensions({ strings }: Spec): Dimension[] {
  return [
    ...strings.slice(1, -1).flatMap(({ name }, i) => ofInner(name, i)),
    ...ofSide("bass"),
    ...ofSide("treble"),
  ];
}

function ofInner(name: string, i: number): Dimension[] {
  const touches = (side: "bass" | "treble") =>
    angle(
      "bow",
      `bow.${name}.tilt.${side}`,
      `${name}: bow's tilt where it touches the neighbour on the ${side} side too, positive down to the treble`,
      ({ instrument }) => instrument.bow.strings[i]!.tilt[side],
    );
  return [
    angle("bow", `bow.${name}.angle`, `${name}: range of bow tilts that touch it alone`, ({ instrument }) => {
      return instrument.bow.strings[i]!.angle;
    }),
    touches("bass"),
    touches("treble"),
  ];
}

function ofSide(side: "bass" | "treble"): Dimension[] {
  return [
    angle("bow", `bow.tilt.${side}`, `Outermost tilt of the bow down to the ${side}`, ({ instrument }) => {
      return instrument.bow.outermost[side];
    }),
    length(
      "bow",
      `bow.clearance.${side}`,
      `There, from the hair square to the instrument, ${side} side`,
      (model) => {
        return model.instrument.bowClearance[side].surface;
      },
    ),
    length(
      "bow",
      `bow.clearance.board.${side}`,
      `There, from the hair's plane to the board's corner, ${side} side`,
      ({ instrument }) => instrument.bowClearance[side].board,
    ),
    angle(
      "bow",
      `bow.room.${side}`,
      `Degrees more that the bow tilts until it touches, ${side} side`,
      (model) => {
        return model.instrument.bowClearance[side].room;
      },
    ),
  ];
}
