import type { Check, Finding } from "./check.ts";

/** What a bow has to clear at its outermost tilt: surfaces, mm and degrees, and the board's corner, mm (G). */
const least = { surface: 5, room: 3, board: 1.5 } as const;

const usual = {
  ...{ stake: "spoilage", subject: "bow", holds: [] },
  source: "general trade knowledge: default, confirm",
} as const satisfies Partial<Finding>;

/** Whether a bow that plays the outer string of a side clears the finished surfaces there: 5 mm and 3 degrees. */
export function bowClear(side: "bass" | "treble"): Check {
  return {
    id: `bow.clear.${side}`,
    of: ({ instrument }) => {
      const { surface, room } = instrument.bowClearance[side];
      const near = surface < least.surface;
      const [found, limit, unit] =
        near || room >= least.room
          ? ([surface, least.surface, "mm"] as const)
          : ([room, least.room, "deg"] as const);
      const status = near || room < least.room ? "attend" : "pass";
      return {
        ...{ ...usual, status, found, limit, unit },
        why:
          status === "pass"
            ? `on the ${side} side the bow clears the instrument`
            : `on the ${side} side the bow soon strikes what lies beside the strings: raise core.slope or core.drop, or narrow core.width`,
      };
    },
  };
}

/** Whether a bow that plays the outer string of a side clears the corner of the board's end there. */
export function bowBoard(side: "bass" | "treble"): Check {
  return {
    id: `bow.board.${side}`,
    of: ({ instrument }) => {
      const { board } = instrument.bowClearance[side];
      const status = board < least.board ? "attend" : "pass";
      const clearance = `string.clearance.end.${side === "treble" ? "high" : "low"}`;
      return {
        ...{ ...usual, status, found: board, limit: least.board, unit: "mm" },
        why:
          status === "pass"
            ? `on the ${side} side the bow clears the board's corner`
            : `on the ${side} side the bow strikes the board's corner: raise ${clearance} or fingerboard.radius`,
      };
    },
  };
}
