import { boardTop, boardWidth } from "../fingerboard/taper.ts";
import { type Look, mm, unless } from "./at-odds.ts";

/** Least wood of the neck under the board, mm (G: a default to confirm). */
const leastWood = 6;

/** A neck that leaves no wood, or whose parts along it overlap. */
export const neckAtOdds: Look = (of, { surface, taper }) => {
  const wood = (where: string) =>
    of(`neck.thickness.${where}`) - boardTop(surface, of(`neck.station.${where}`), 0);
  const [start, end, heel] = [
    of("neck.transition.start"),
    of("neck.transition.end"),
    of("neck.station.heel"),
  ];
  const tail =
    of("core.drop") + (of("core.end") - of("core.start")) * Math.tan((of("core.slope") * Math.PI) / 180);
  const half =
    of("core.width") / 2 + (end - of("string.length")) * Math.tan((of("core.taper") * Math.PI) / 180);
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

/** A head that has no room for its tuners, or whose strings cross. */
export const headAtOdds: Look = (of, { tuners, layout, taper }) => {
  const hole = of("tuner.hole");
  const post = of("head.column") - of("tuner.post") / 2;
  return [
    ...unless(of("head.edge") > hole / 2 + 2, ["head.edge", "tuner.hole"], {
      found: `a hole of ${mm(hole)} with its middle ${mm(of("head.edge"))} from the head's side`,
      allowed: `more than ${mm(hole / 2 + 2)}, so that 2 mm of wood are left`,
      hint: "raise head.edge or lower tuner.hole",
    }),
    ...unless(
      of("head.margin") > of("head.shoulder") && of("head.margin") > hole,
      ["head.margin", "head.shoulder"],
      {
        found: `a first row ${mm(of("head.margin"))} from a nut whose shoulders take ${mm(of("head.shoulder"))}`,
        allowed: "a first row behind the shoulders",
        hint: "raise head.margin or shorten head.shoulder",
      },
    ),
    ...unless(of("head.row") > hole + 4, ["head.row", "tuner.hole"], {
      found: `rows ${mm(of("head.row"))} apart with holes of ${mm(hole)}`,
      allowed: `more than ${mm(hole + 4)}`,
      hint: "raise head.row or lower tuner.hole",
    }),
    ...unless(post > Math.abs(layout.nut[Math.ceil(layout.nut.length / 2) - 1]!), ["head.column"], {
      found: `posts ${mm(post)} from the centreline inside the innermost strings`,
      allowed: "posts outside the strings that run past them",
      hint: "raise head.column",
    }),
    ...unless(of("head.column") + of("head.edge") > taper.nut / 2, ["head.column", "head.edge"], {
      found: `a head ${mm(2 * (of("head.column") + of("head.edge")))} wide at a nut ${mm(taper.nut)} wide`,
      allowed: "a head wider than its nut",
      hint: "raise head.column or head.edge",
    }),
    ...unless(of("head.volute") < tuners.length, ["head.volute"], {
      found: `a back that leaves the head ${mm(of("head.volute"))} from the nut on a head ${mm(tuners.length)} long`,
      allowed: "less than the head's length",
      hint: "lower head.volute",
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
