import { frontAt } from "../core/frame.ts";
import { coreHalf, coreWidthOf } from "../core/width.ts";
import { boardTop } from "../fingerboard/surface.ts";
import { boardWidth } from "../fingerboard/taper.ts";
import { type Look, mm, unless } from "./at-odds.ts";

/** Least wood of the neck under the board, mm (G: a default to confirm). */
const leastWood = 6;

/** A neck that leaves no wood, or whose parts along it overlap. */
export const neckAtOdds: Look = (of, { surface, taper, core }) => {
  const wood = (where: string) =>
    of(`neck.thickness.${where}`) - boardTop(surface, of(`neck.station.${where}`), 0);
  const [start, end, heel] = [
    of("neck.transition.start"),
    of("neck.transition.end"),
    of("neck.station.heel"),
  ];
  const tail = -frontAt(core, of("core.end"));
  const half = coreHalf(coreWidthOf(of), end);
  return [
    ...["nut", "heel"].flatMap((where) =>
      unless(wood(where) >= leastWood, [`neck.thickness.${where}`, "fingerboard.edge"], {
        found: `${mm(wood(where))} of wood under the board at the ${where}'s station`,
        allowed: `at least ${mm(leastWood)}`,
        hint: `raise neck.thickness.${where} to ${mm(of(`neck.thickness.${where}`) + leastWood - wood(where))} or more`,
      }),
    ),
    ...unless(of("neck.station.nut") < heel, ["neck.station.nut", "neck.station.heel"], {
      found: `the nut's station at ${mm(of("neck.station.nut"))}, the heel's at ${mm(heel)}`,
      allowed: "the nut's station nearer the nut",
      hint: "lower neck.station.nut or raise neck.station.heel",
    }),
    ...unless(heel < of("neck.heel.end"), ["neck.heel.end", "neck.station.heel"], {
      found: `a back that has reached the core at ${mm(of("neck.heel.end"))}, its heel's station at ${mm(heel)}`,
      allowed: `an end of the heel behind ${mm(heel)}`,
      hint: "raise neck.heel.end",
    }),
    ...unless(start < end, ["neck.transition.start", "neck.transition.end"], {
      found: `a transition from ${mm(start)} to ${mm(end)}`,
      allowed: "an end behind its start",
      hint: "lower neck.transition.start or raise neck.transition.end",
    }),
    ...unless(end < of("core.end"), ["neck.transition.end", "core.end"], {
      found: `a transition that ends at ${mm(end)}, the core at ${mm(of("core.end"))}`,
      allowed: "a transition that ends on the core",
      hint: "lower neck.transition.end",
    }),
    ...unless(half > boardWidth(taper, start) / 2, ["core.width", "fingerboard.margin.end"], {
      found: `a core ${mm(2 * half)} wide where the neck is ${mm(boardWidth(taper, start))}`,
      allowed: "a core wider than the neck that runs into it",
      hint: "widen core.width",
    }),
    ...unless(of("core.width") >= taper.end, ["core.width", "fingerboard.margin.end"], {
      found: `a core ${mm(of("core.width"))} wide under a board ${mm(taper.end)} wide at its end`,
      allowed: `a core at least as wide as the board's end, ${mm(taper.end)}`,
      hint: "widen core.width, or narrow fingerboard.margin.end or bridge.spread",
    }),
    ...unless(tail < 2 * of("core.depth"), ["core.slope", "core.depth"], {
      found: `a front that has fallen ${mm(tail)} at the tail, over a core ${mm(of("core.depth"))} deep`,
      allowed: "a fall of less than twice the core's depth",
      hint: "lower core.slope or deepen core.depth",
    }),
  ];
};

/** A neck whose outlines can't be made. */
export const neckOutlinesAtOdds: Look = (of, { neckPlan, neckSide }) => [
  ...unless(neckPlan.kind === "ok", ["head.corner", "neck.corner"], {
    found: `corners of ${mm(of("head.corner"))} and ${mm(of("neck.corner"))}`,
    allowed: "corners that the head's end and the tail have room for",
    hint: "lower head.corner or neck.corner",
  }),
  ...unless(neckSide.kind === "ok", ["neck.heel.end", "head.volute"], {
    found: "a back that no fair curve makes",
    allowed: "a heel and a volute that leave the back room to turn",
    hint: "raise neck.heel.end, or change head.volute",
  }),
];
