import { type Look, mm, unless } from "./at-odds.ts";

/** Wood of the board beyond the last fret's slot, mm (G: default, confirm). */
const beyond = 2;

/** Frets that the board has no room for, in its length, under their slots or under the strings; nothing on a fretless board. */
export const fretsAtOdds: Look = (of, { fretSlots, fretGaps }) => {
  if (fretSlots === null) return [];
  const { slots, width, depth, left } = fretSlots;
  const board = of("fingerboard.length");
  const reach = slots.at(-1)!.x + width / 2 + beyond;
  const room = slots.filter(({ x }) => x + width / 2 + beyond <= board).length;
  if (reach > board)
    return unless(false, ["frets"], {
      found: `${slots.length} frets, the last of which wants a board of ${mm(reach)}`,
      allowed: `at most ${room} on a board of ${mm(board)}`,
      hint: `ask for ${room} frets, or set fingerboard.length to ${mm(Math.ceil(reach * 100) / 100)} or more`,
    });
  const wall = of("fret.slot.wall");
  const missing = Math.ceil((wall - left) * 100) / 100;
  const open = Math.min(...(fretGaps ?? []).map((gaps) => gaps.open));
  return [
    ...unless(left >= wall, ["fingerboard.edge", "fret.tang.depth", "fret.slot.under", "fret.slot.wall"], {
      found: `slots ${mm(depth)} deep, which leave ${mm(left)} under them`,
      allowed: `at least ${mm(wall)} (fret.slot.wall)`,
      hint: `set fingerboard.edge to ${mm(of("fingerboard.edge") + missing)} or more`,
    }),
    ...unless(open >= 0, ["string.clearance.nut.high", "string.clearance.nut.low", "fret.crown.height"], {
      found: `an open string ${mm(-open)} below a fret's top`,
      allowed: "every open string over every fret",
      hint: "raise string.clearance.nut.high, string.clearance.end.high or the .low ones",
    }),
  ];
};
