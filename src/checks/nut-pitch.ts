import type { Check } from "./check.ts";

/** Least mean distance of neighbouring string centres at the nut, mm: for a violin or viola, and for a cello. */
const least = { violin: 5, viola: 5, cello: 7 } as const;

/** Whether the strings stand far enough apart at the nut for the fingers of this voice. */
export const nutPitch: Check = {
  id: "pitch.nut",
  of: ({ spec, instrument: { layout } }) => {
    const [found, limit] = [layout.nutSpread / (layout.nut.length - 1), least[spec.voice]];
    const status = found < limit ? "attend" : "pass";
    return {
      ...{ status, stake: "spoilage", subject: "nut", found, limit, unit: "mm" },
      why:
        found < limit
          ? "narrower than fingers of this voice are used to: raise nut.gap"
          : "as wide as fingers are used to",
      source: "no published table for more than four strings; general trade knowledge: default, confirm",
      holds: [],
    };
  },
};
