import { circle } from "../../geometry/circle.ts";
import type { Pocket } from "../pocket.ts";
import type { MadeRecess, RecessSizes } from "./recess.ts";

/** What a recess takes out of its part: its cover's ledge, itself, the pilots of the cover's screws, and the hole for what goes through the face opposite. */
export function pocketsOf(recess: MadeRecess, { cover: sizes }: RecessSizes): Pocket[] {
  const { id, from, path, depth, cover, shaft } = recess;
  const pilots = (cover?.screws ?? []).map(
    (at, i): Pocket => ({
      ...{ id: `${id}-screw-${i + 1}`, from, path: circle(at, sizes.pilot / 2) },
      ...{ depth: sizes.thickness + sizes.pilotDepth, bore: sizes.pilot },
    }),
  );
  return [
    ...(cover === null
      ? []
      : [{ id: `${id}-ledge`, from, path: cover.ledge, depth: cover.thickness, bore: null }]),
    { id, from, path, depth, bore: null },
    ...pilots,
    ...(shaft === null
      ? []
      : [{ id: `${id}-shaft`, from, path: shaft.path, depth: "through" as const, bore: shaft.hole }]),
  ];
}
