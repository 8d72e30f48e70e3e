import type { Check } from "./check.ts";

/** The share of a plain steel wire's strength that it lives long under: 1.8 of 2.6 GPa (C, G). */
const share = 1.8 / 2.6;

/** Whether every plain wire has strength to spare at pitch. Found: the stress of the one with the least, MPa. */
export const stringStrength: Check = {
  id: "string.strength",
  applies: ({ strings }) => strings.some(({ strength }) => strength !== null),
  of: ({ instrument: { wires } }) => {
    const { name, stress, strength } = wires.reduce((worst, wire) => {
      return wire.stress / wire.strength > worst.stress / worst.strength ? wire : worst;
    });
    const limit = share * strength;
    const status = stress > strength ? "refuse" : stress > limit ? "attend" : "pass";
    return {
      ...{ status, stake: "spoilage", subject: "strings", found: stress, limit, unit: "MPa" },
      why:
        status === "pass"
          ? `${name} has strength to spare`
          : `${name} breaks soon at this pitch: shorten string.length, tune it lower, or keep spare ones`,
      source: "computed from tension and diameter; the limit is general trade knowledge: default, confirm",
      holds: [],
    };
  },
};
