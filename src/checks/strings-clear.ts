import { roomMend } from "../instrument/clear/room-mend.ts";
import { dimensionOf } from "../order/spec.ts";
import type { Check } from "./check.ts";

/** Whether every string stays as far from the fronts of wings and body as the design wants. */
export const stringsClear: Check = {
  id: "strings.clear",
  applies: ({ wings, body }) => wings !== null || body !== null,
  of: ({ spec, instrument }) => {
    const wanted = dimensionOf(spec, "strings.clear");
    const { stringRooms, fronts, stringLines } = instrument;
    const nearest = stringRooms.reduce((least, room) => (room.left < least.left ? room : least));
    const refused = nearest.left < wanted - 1e-6;
    const front = fronts.find(({ part }) => part === nearest.part)!;
    return {
      ...{ status: refused ? "refuse" : "pass", stake: "spoilage", subject: nearest.part },
      ...{ found: nearest.left, limit: wanted, unit: "mm" },
      why: refused
        ? `the ${nearest.part}'s front comes too near to ${nearest.string}: ${roomMend(front, stringLines, wanted).mend}`
        : `the fronts beside the strings stay clear of them, the nearest the ${nearest.part} to ${nearest.string}`,
      source: `design ${spec.design}, strings.clear (general trade knowledge: default, confirm)`,
      holds: [nearest.part],
    };
  },
};
