import { semitonesFromA4 } from "../order/pitch.ts";
import type { Voice } from "../order/voice.ts";
import type { Check } from "./check.ts";

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

/**
 * Whether every string's tension is usual for its pitch and voice. Found: the tension of the one furthest from the middle of its
 * range, N. A pitch without a row is not looked at, and named.
 */
export const tensionRange: Check = {
  id: "tension.range",
  applies: ({ strings, voice }) => strings.some(({ semitones }) => rowOf(voice, semitones) !== undefined),
  of: ({ spec, forces }) => {
    const seen = spec.strings.flatMap(({ name, semitones }, i) => {
      const row = rowOf(spec.voice, semitones);
      if (row === undefined) return [];
      const [, least, most] = row;
      const tension = forces.strings.tensions[i]!;
      return [{ name, least, most, tension, off: (2 * tension - least - most) / (most - least) }];
    });
    const { name, least, most, tension, off } = seen.reduce((worst, string) => {
      return Math.abs(string.off) > Math.abs(worst.off) ? string : worst;
    });
    const status = Math.abs(off) > 1 ? "attend" : "pass";
    const names = seen.map((string) => string.name);
    const unseen = spec.strings.map((string) => string.name).filter((string) => !names.includes(string));
    const [what, move] =
      off > 0 ? ["stiff and loud on the bridge", "lighter"] : ["slack under the bow", "heavier"];
    return {
      ...{ status, stake: "spoilage", subject: "strings", unit: "N" },
      ...{ found: tension, limit: off > 0 ? most : least },
      why: [
        status === "pass"
          ? "every string is strung as usual for its pitch"
          : `${name} is ${what}: take a ${move} one, or change string.length or its pitch`,
        ...(unseen.length > 0 ? [`nothing usual is known of ${unseen.join(", ")}`] : []),
      ].join("; "),
      source: `usual tensions of a ${spec.voice}'s strings, general trade knowledge: default, confirm`,
      holds: [],
    };
  },
};

function rowOf(voice: Voice, semitones: number) {
  return usual[voice].find(([pitch]) => semitonesFromA4(pitch) === semitones);
}
