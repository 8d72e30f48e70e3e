import type { Shop } from "../../order/shop.ts";

/** What a shop's printer makes of a jig, as plain numbers: its bed along x, y and z, and what is added to a hole's diameter, mm. */
export type PrintRules = {
  readonly printer: string;
  readonly bed: { readonly x: number; readonly y: number; readonly z: number };
  readonly growth: number;
};

/**
 * What holds of any printed part (trade notes, "Printing"), mm and degrees: the least wall and the least pin, how far a face may
 * lean out over nothing, how far a printed part strays, and the clearance a side that a fit wants. `margin` is left free round the
 * bed (G: for the skirt and the clips).
 */
export const printed = {
  ...{ wall: 1.2, pin: 3, overhang: 45, bridge: 13, accuracy: 0.2, margin: 5 },
  clearance: { press: 0.12, slide: 0.25, loose: 0.4 },
} as const;

/** The rules of the shop's largest printer; null where it has none whose bed is stated along all three axes. */
export function printRules({ machines }: Pick<Shop, "machines">): PrintRules | null {
  const printers = machines.flatMap((machine): PrintRules[] => {
    if (machine.kind !== "printer") return [];
    const [x, y, z] = machine.bed;
    if (x === undefined || y === undefined || z === undefined) return [];
    return [{ printer: machine.id, bed: { x, y, z }, growth: machine["hole-growth"] }];
  });
  const area = ({ bed }: PrintRules) => bed.x * bed.y;
  return printers.reduce<PrintRules | null>(
    (best, next) => (best === null || area(next) > area(best) ? next : best),
    null,
  );
}

/** What of a printer's bed is used, mm: all but a margin round it; the whole height. */
export function roomOn({ bed }: PrintRules): { readonly x: number; readonly y: number; readonly z: number } {
  return { x: bed.x - 2 * printed.margin, y: bed.y - 2 * printed.margin, z: bed.z };
}
