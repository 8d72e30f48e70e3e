import type { Spec } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { guidedSteps, outlineDone } from "./guided-steps.ts";
import { insideSteps, insidesDone } from "./inside-steps.ts";
import { sawSteps, stepOf } from "./saw-step.ts";
import { inMm, type WorkStep } from "./work-step.ts";

/** The fingerboard from its board to where it is glued on: square blank with its slots, sides, ends, radius and scoop, then what is let in, and dots. */
export function boardSteps(model: Model): WorkStep[] {
  const { spec, instrument } = model;
  const { length, width, thickness } = instrument.boardBlank;
  const part = "fingerboard";
  const own = { part, setUp: null } as const;
  const faces = "face, underside";
  const outline = outlineDone(model, part);
  const slotted = spec.frets === null ? `${part}.plane` : `${part}.slots`;
  const arched = { from: "fingerboard.radius", what: "the board, arched" };
  return [
    {
      ...{ ...own, id: `${part}.plane`, at: "planer", datum: "underside", square: "nothing yet", thickness },
      what: `Plane the fingerboard's blank: ${inMm(length)} long, ${inMm(width)} wide, ${inMm(thickness)} thick`,
      ...{ measure: "length, width, thickness", files: [] },
      needs: [{ from: "stock", what: "the fingerboard's board" }],
    },
    ...slotSteps(model),
    ...sawSteps(model, {
      ...{ part, cuts: ["side"], square: `${faces}, ends`, thickness },
      needs: [{ from: slotted, what: "the blank, square" }],
    }),
    {
      ...{ ...own, id: `${part}.pins`, at: "drill press", datum: "underside", square: faces, thickness },
      what: "Bore the index pins through the waste at both ends, by the fixture's holes: unequal sizes",
      ...{ measure: "distance of the pins", files: ["fingerboard-router"] },
      needs: [{ from: stepOf(part, "side"), what: "the board, its sides sawn" }],
    },
    ...guidedSteps(model, {
      ...{ part, datum: "underside", turned: "face", square: faces, thickness, drawing: part },
      needs: [{ from: `${part}.pins`, what: "the board, still flat, bored" }],
    }),
    ...sawSteps(model, {
      ...{ part, cuts: ["end"], square: `${faces}, sides`, thickness },
      needs: [{ from: outline, what: "the board, its sides true" }],
    }),
    {
      ...{ ...own, id: `${part}.radius`, at: "bench", datum: "underside", square: "underside, sides" },
      what:
        spec.frets !== null
          ? "Shape the arch and the scoop to the gauges, then with the sanding block, edges to their thickness; then slots to their depth"
          : "Shape the arch and the scoop to the gauges, then with the sanding block, edges to their thickness",
      ...{ thickness, measure: "edges at both ends; arch by gauge; scoop under a straightedge" },
      files: [`${part}-ends`, `${part}-side`, "radius", "radius-*", "sanding-block"],
      needs: [{ from: stepOf(part, "end"), what: "the board to its outline" }],
    },
    ...insideSteps(model, {
      ...{ part, datum: "underside", square: "underside, sides", needs: [arched] },
    }),
    ...inlaySteps(model),
    ...dotSteps(model, arched),
  ];
}

const inlaid = ({ inlays }: Spec) => inlays.length > 0;
const dotted = ({ dots }: Spec) => dots.face.length + dots.side.length > 0;

function inlaySteps(model: Model): WorkStep[] {
  if (!inlaid(model.spec)) return [];
  const needs = insidesDone(model, "fingerboard", "fingerboard.radius");
  return [
    {
      ...{ id: "fingerboard.inlays", part: "fingerboard", setUp: null, at: "bench", datum: "underside" },
      what: "Cut the inlays, fit them to their recesses, glue them, sand them flush with the arch",
      ...{ square: "underside, sides", thickness: null, measure: "fit all round" },
      files: ["inlays", "fingerboard"],
      needs: [{ from: needs, what: "the board, routed for them" }],
    },
  ];
}

function dotSteps({ spec }: Model, arched: WorkStep["needs"][number]): WorkStep[] {
  if (!dotted(spec)) return [];
  return [
    {
      ...{ id: "fingerboard.dots", part: "fingerboard", setUp: null, at: "drill press", datum: "nut end" },
      what: "Bore for the dots in face and edge, glue them in, sand them flush",
      ...{ square: "underside, sides", thickness: null, measure: "first and last dot, from the nut" },
      ...{ files: ["fingerboard-edge", "dots-face", "dots-side"], needs: [arched] },
    },
  ];
}

/** The steps after which the board can be glued on. */
export function boardReady({ spec }: Model): string[] {
  const after = [
    ...(inlaid(spec) ? ["fingerboard.inlays"] : []),
    ...(dotted(spec) ? ["fingerboard.dots"] : []),
  ];
  return after.length === 0 ? ["fingerboard.radius"] : after;
}

/** Slots are sawn while the blank's edges are parallel, and brought to their depth when it is arched; none without frets. */
function slotSteps({ spec, instrument: { boardBlank } }: Model): WorkStep[] {
  if (spec.frets === null) return [];
  return [
    {
      ...{ id: "fingerboard.slots", part: "fingerboard", at: "bench", datum: "nut end", setUp: null },
      what: `Saw ${spec.frets.count} slots square to the blank's edges, each measured from the nut: from numbers, never from paper`,
      ...{ square: "all six faces", thickness: boardBlank.thickness, files: ["fingerboard", "fret-slots"] },
      measure: "frets 1, 12 and the last, from the nut",
      needs: [{ from: "fingerboard.plane", what: "the blank, square" }],
    },
  ];
}
