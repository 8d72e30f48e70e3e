import { semitonesFromA4 } from "../order/pitch.ts";
import type { Voice } from "../order/voice.ts";

type Ranges = readonly (readonly [pitch: string, least: number, most: number])[];

/**
 * What a string of a pitch is strung with, N (G). A viola's three rarer strings are known by one figure, 73, 40 and 36; they get
 * an eighth either way, as its others have.
 */
const usual: { readonly [voice in Voice]: Ranges } = {
  violin: [
    ["E5", 70, 82],
    ["A4", 50, 62],
    ["D4", 40, 52],
    ["G3", 42, 50],
    ["C3", 42, 60],
    ["F2", 35, 50],
    ["Bb1", 30, 45],
  ],
  viola: [
    ["E5", 64, 82],
    ["A4", 65, 85],
    ["D4", 50, 62],
    ["G3", 47, 58],
    ["C3", 48, 60],
    ["F2", 35, 45],
    ["Bb1", 32, 40],
  ],
  cello: [
    ["E4", 140, 170],
    ["A3", 150, 180],
    ["D3", 125, 150],
    ["G2", 115, 140],
    ["C2", 100, 140],
    ["F1", 100, 135],
  ],
};

/** From which tension to which a string of a pitch is usual on a voice, N (G: default, confirm); of some pitches nothing is known. */
export function usualTension(
  voice: Voice,
  semitones: number,
): { readonly least: number; readonly most: number } | undefined {
  const row = usual[voice].find(([pitch]) => semitonesFromA4(pitch) === semitones);
  return row && { least: row[1], most: row[2] };
}
