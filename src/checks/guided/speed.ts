import { plain } from "../../workshop/guided/fault.ts";
import { speedBound } from "../../workshop/guided/spindle-speed.ts";
import { ofSetUp } from "./fixture-check.ts";

/** Whether the speed that is set stays under the tool's own mark and the charts. Found: that speed, rpm. */
export const speedMark = ofSetUp(
  "speed.mark",
  {
    stake: "injury",
    unit: "rpm",
    limit: 0,
    source: "the mark on the tool; published charts, the lower figure; EN 847-1",
  },
  ({ machine, cutter, speed: { rpm } }) => {
    const mark = cutter["most-speed"] ?? null;
    if (mark === null && machine.kind === "shaper")
      return {
        ...{ status: "refuse", found: rpm },
        why: `${cutter.id} has no speed marked on it: a shaper's tool that doesn't say what it bears isn't run; write its mark as most-speed`,
      };
    const bound = speedBound(machine.kind, cutter.diameter, mark);
    const over = rpm > bound.rpm + 1e-6;
    return {
      ...{ status: over ? "refuse" : mark === null ? "attend" : "pass", found: rpm, limit: bound.rpm },
      why: over
        ? `${cutter.id} bears ${plain(bound.rpm)} rpm and ${machine.id} would run it at ${rpm}: set ${plain(bound.rpm)} or less, or take a smaller cutter`
        : mark === null
          ? `${cutter.id} has no mark of its own; the charts bear ${plain(bound.rpm)} rpm: look on the tool`
          : `${rpm} rpm is set where ${plain(bound.rpm)} is borne`,
    };
  },
);

/** Whether the rim runs at no more than 70 m/s, and on a shaper at no less than 40. Found: its speed, m/s. */
export const rimSpeedRule = ofSetUp(
  "rim-speed",
  {
    stake: "injury",
    unit: "m/s",
    limit: 70,
    source: "70 m/s: published tool guidance; 40 m/s on a shaper: default, confirm",
  },
  ({ machine, cutter, speed: { rpm } }) => {
    const found = (Math.PI * cutter.diameter * rpm) / 60_000;
    const slow = machine.kind === "shaper" && found < 40;
    return {
      ...{ status: found > 70 ? "refuse" : slow ? "attend" : "pass", found },
      why:
        found > 70
          ? `the rim of ${cutter.id} would run at ${plain(found)} m/s: set ${plain((70 * 60_000) / (Math.PI * cutter.diameter))} rpm or less`
          : slow
            ? `the rim runs at ${plain(found)} m/s, under 40: it beats the wood rather than cuts it; a larger cutter or a faster step within its mark`
            : `the rim runs at ${plain(found)} m/s`,
    };
  },
);
