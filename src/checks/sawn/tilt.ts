import type { Bandsaw } from "../../order/shop.ts";
import { plain } from "../../workshop/guided/fault.ts";
import type { SawnRule } from "./sawn-check.ts";

/** Whether work on a tilted table is held from sliding by a fence on its low side. Found: how far the table is tilted without one, degrees. */
export const tiltSlide: SawnRule = {
  name: "tilt.slide",
  of: ({ sequence }) => {
    const loose = sequence.filter(({ tilt, fence }) => tilt !== 0 && fence !== "low side");
    const found = Math.max(0, ...loose.map(({ tilt }) => Math.abs(tilt)));
    return {
      ...{ status: found > 0 ? "refuse" : "pass", stake: "injury", found, limit: 0, unit: "deg" },
      why:
        found > 0
          ? `the table is tilted ${plain(found)} degrees and nothing holds the work on its low side: put a fence there`
          : sequence.some(({ tilt }) => tilt !== 0)
            ? "a fence on the low side holds the work on the tilted table"
            : "the table stays square",
      source: "published bandsaw guidance: a fence on the low side",
    };
  },
};

/** Whether the saw's table tilts as far as a bevelled joint asks, either way. Found: the tilt, degrees; limit: the most that way. */
export const tiltReach: SawnRule = {
  name: "saw.tilt",
  of: ({ sequence, cuts: { saw } }, { spec }) => {
    const { tilt } = sequence.reduce((most, one) => (Math.abs(one.tilt) > Math.abs(most.tilt) ? one : most));
    const machine = spec.shop.machines.find(
      (one): one is Bandsaw => one.kind === "bandsaw" && saw.kind === "ok" && one.id === saw.id,
    );
    const usual = {
      stake: "spoilage",
      unit: "deg",
      source: "the shop's own figure of its saw's table",
    } as const;
    const found = Math.abs(tilt);
    if (machine === undefined)
      return {
        ...usual,
        status: "attend",
        found,
        limit: 0,
        why: "the shop has no such saw: see saw.missing",
      };
    const [least, most] = machine.tilt;
    const limit = tilt < 0 ? -least : most;
    const reaches = found <= limit + 1e-6;
    return {
      ...{ ...usual, status: reaches ? "pass" : "refuse", found, limit },
      why: reaches
        ? `the table of ${machine.id} tilts as far as the joint asks`
        : `the joint asks for ${plain(found)} degrees and the table of ${machine.id} tilts ${plain(limit)}: saw the joint square and plane its bevel, or lower the wing's cant to suit`,
    };
  },
};
