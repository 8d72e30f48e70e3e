import { extentsOf } from "../../geometry/measure.ts";
import { plain } from "../../workshop/guided/fault.ts";
import type { FixtureRule } from "./fixture-check.ts";

/** What holds work down. */
const holds: readonly string[] = ["clamp", "screw"];

/** Whether work that is too short to be held by hand is held by the fixture. Found: its length, mm. */
export const workSmall: FixtureRule = {
  name: "work.small",
  of: ({ outline, kept, edge }) => {
    const usual = {
      ...({ stake: "injury", unit: "mm", limit: 305 } as const),
      source: "published shaper guidance: no loose work under 305 mm without a fixture",
    };
    const box = extentsOf([outline]);
    const found = box === undefined ? 0 : Math.max(box.maxX - box.minX, box.maxY - box.minY);
    const held = edge?.kind === "ok" && kept.some(({ what }) => holds.includes(what));
    const loose = found < usual.limit && !held;
    return {
      ...{ ...usual, status: loose ? "refuse" : "pass", found },
      why: loose
        ? `the work is ${plain(found)} mm long and nothing holds it down: clamp or screw it to the fixture, or shape it by hand`
        : held
          ? `the fixture holds the work, ${plain(found)} mm long`
          : `the work is ${plain(found)} mm long`,
    };
  },
};
