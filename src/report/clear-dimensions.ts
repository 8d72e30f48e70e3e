import type { Spec } from "../order/spec.ts";
import { type Dimension, length } from "./dimension.ts";

/** What is left between the strings and the fronts beside them: of a body in one piece, or of each wing. */
export function clearDimensions({ wings, body }: Spec): Dimension[] {
  const parts = [...(wings === null ? [] : ["wing-bass", "wing-treble"]), ...(body === null ? [] : ["body"])];
  return parts.map((part) =>
    length(
      part,
      `${part.replace("-", ".")}.strings`,
      `Least room between a string and the front of the ${part}, from nut to tailpiece`,
      ({ instrument }) => instrument.stringRooms.find((room) => room.part === part)!.left,
    ),
  );
}
