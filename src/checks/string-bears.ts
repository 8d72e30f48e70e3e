import type { Check } from "./check.ts";

/** Least depth of a string's slot or notch under the crown, mm (G: default, confirm): shallower, and the string jumps out. */
const least = 0.05;

/** Whether every string lies in the crown of the nut, or of the bridge, and none floats over it. */
export function stringBears(part: "nut" | "bridge"): Check {
  return {
    id: `bears.${part}`,
    of: ({ spec, instrument }) => {
      const slots = part === "nut" ? instrument.nut.slots : instrument.crownFace.notches;
      const depths = slots.map(({ sunk }) => sunk);
      const found = Math.min(...depths);
      const string = spec.strings[depths.indexOf(found)]!.name;
      const fails = found < least;
      return {
        ...{
          status: fails ? "refuse" : "pass",
          stake: "spoilage",
          subject: part,
          found,
          limit: least,
          unit: "mm",
        },
        why: fails
          ? `${string} hardly touches the crown, which is fitted through all strings: bring the diameters nearer to each other`
          : "every string lies in the crown",
        source: "general trade knowledge: default, confirm",
        holds: [part],
      };
    },
  };
}
