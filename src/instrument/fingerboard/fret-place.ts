import { semitone } from "../../order/semitone.ts";

/**
 * Where fret `n` stands from the nut along x, mm, on strings of `stringLength`; 0 is the nut itself. Each is worked out from
 * the nut, so that errors don't add up. Source: the trade notes, "Fingerboard".
 */
export function fretPlace(n: number, stringLength: number): number {
  return stringLength * (1 - 1 / semitone(n));
}
