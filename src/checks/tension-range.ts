import { usualTension } from "../physics/usual-tension.ts";
import type { Check } from "./check.ts";

/**
 * Whether every string's tension is usual for its pitch and voice. Found: the tension of the one furthest from the middle of its
 * range, N. A pitch without a row is not looked at, and named.
 */
export const tensionRange: Check = {
  id: "tension.range",
  applies: ({ strings, voice }) =>
    strings.some(({ semitones }) => usualTension(voice, semitones) !== undefined),
  of: ({ spec, forces }) => {
    const seen = spec.strings.flatMap(({ name, semitones }, i) => {
      const row = usualTension(spec.voice, semitones);
      if (row === undefined) return [];
      const { least, most } = row;
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
