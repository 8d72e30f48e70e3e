import { dimensionOf, type Spec } from "../order/spec.ts";
import type { Check, Finding } from "./check.ts";

/** Under this gap a stopped string wants a look, mm (G: default, confirm). */
const little = 0.02;

const usual: Pick<Finding, "stake" | "subject" | "unit" | "holds" | "source"> = {
  ...{ stake: "spoilage", subject: "fingerboard", unit: "mm", holds: ["fingerboard"] },
  source: "general trade knowledge: default, confirm",
};

/** Whether every open string clears the first fret's top by `fret.clear`. Found: the least gap, mm. */
export const fretOpen: Check = {
  id: "fret.open",
  applies: ({ frets }: Spec) => frets !== null,
  of: ({ spec, instrument }) => {
    const gaps = instrument.fretGaps!.map(({ first }) => first);
    const found = Math.min(...gaps);
    const { name } = spec.strings[gaps.indexOf(found)]!;
    const limit = dimensionOf(spec, "fret.clear");
    const fails = found < limit;
    return {
      ...{ ...usual, status: fails ? "refuse" : "pass", found, limit },
      why: fails
        ? `open, ${name} buzzes on the first fret: raise string.clearance.nut.high or .low`
        : "every open string clears the first fret",
    };
  },
};

/** Whether a string stopped at any fret clears every higher fret's top. Found: the least gap, mm. */
export const fretStopped: Check = {
  id: "fret.stopped",
  applies: ({ frets }: Spec) => frets !== null && frets.count > 1,
  of: ({ spec, instrument }) => {
    const gaps = instrument.fretGaps!.map(({ stopped }) => stopped!);
    const found = Math.min(...gaps);
    const { name } = spec.strings[gaps.indexOf(found)]!;
    const status = found <= 0 ? "refuse" : found < little ? "attend" : "pass";
    return {
      ...{ ...usual, status, found, limit: status === "refuse" ? 0 : little },
      why:
        status === "pass"
          ? "a string stopped at any fret clears the next ones"
          : `stopped at a fret, ${name} ${status === "refuse" ? "lies on" : "hardly clears"} a higher one: raise string.clearance.end.high or .low`,
    };
  },
};
