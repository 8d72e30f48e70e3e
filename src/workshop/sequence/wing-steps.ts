import { underVeneers } from "../../instrument/under-veneers.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { guidedSteps, outlineDone } from "./guided-steps.ts";
import { insideSteps, insidesDone } from "./inside-steps.ts";
import { sawSteps, stepOf } from "./saw-step.ts";
import { veneered, veneerStep } from "./veneer-step.ts";
import { inMm, type WorkStep } from "./work-step.ts";

/** The wings from their boards to the joint: planed, joint face cut and bored, sawn, routed, recessed, eased. None without wings. */
export function wingSteps(model: Model): WorkStep[] {
  return model.spec.wings === null ? [] : sides.flatMap((side) => oneWing(model, side));
}

function oneWing(model: Model, side: Side): WorkStep[] {
  const { spec, instrument } = model;
  const part = `wing-${side}` as const;
  const of = (name: string) => dimensionOf(spec, `wing.${side}.${name}`);
  const thickness = of("thickness");
  const { bevel, mitre } = instrument.wings![side].place.cut;
  const own = { part, setUp: null } as const;
  const faces = "front, back";
  const under = underVeneers(spec, part);
  return [
    {
      ...{ ...own, id: `${part}.plane`, at: "planer", datum: "back", square: "nothing yet" },
      thickness: under,
      what: `Plane the ${side} wing's blank to ${inMm(under)}, one edge straight`,
      ...{ measure: "thickness; straight edge", files: [] },
      needs: [{ from: "stock", what: `the ${side} wing's board` }],
    },
    ...sawSteps(model, {
      ...{ part, cuts: ["joint"], square: `${faces}, far edge`, thickness: under },
      needs: [{ from: `${part}.plane`, what: "the blank, planed" }],
    }),
    {
      ...{ ...own, id: `${part}.joint`, at: "bench", datum: "front", square: faces, thickness: under },
      what: `True the ${side} wing's joint face to the angle gauge: bevel ${inMm(bevel)}, mitre ${inMm(mitre)} degrees; bore the pins square to it`,
      ...{ measure: "bevel and mitre by the gauge; each hole" },
      files: [`joint-${side}`, `wing-angle-${side}`, `drill-joint-${side}`],
      needs: [{ from: stepOf(part, "joint"), what: "the blank with its joint sawn" }],
    },
    ...sawSteps(model, {
      ...{ part, cuts: ["rim"], square: `${faces}, joint face`, thickness: under },
      needs: [{ from: `${part}.joint`, what: "the blank with its joint face" }],
    }),
    ...veneerStep(model, part, stepOf(part, "rim")),
    ...guidedSteps(model, {
      ...{ part, datum: "joint face", square: `${faces}, joint face`, thickness, drawing: part },
      needs: [{ from: veneered(model, part, stepOf(part, "rim")), what: "the wing, sawn outside its line" }],
    }),
    ...insideSteps(model, {
      ...{ part, datum: "joint face", square: faces },
      needs: [{ from: outlineDone(model, part), what: "the wing to its outline" }],
    }),
    {
      ...{ ...own, id: `${part}.recesses`, at: "drill press", datum: "joint face", square: faces, thickness },
      what: `Bore what lies in the ${side} wing: wires' ways, covers' pilots, shafts, mounts`,
      ...{ measure: "depth of each bore", files: [`${part}-back`] },
      needs: [{ from: insidesDone(model, part, outlineDone(model, part)), what: "the wing, routed" }],
    },
    {
      ...{ ...own, id: `${part}.edges`, at: "bench", datum: "front", square: faces, thickness: null },
      what: `Ease the ${side} wing's arrises by ${inMm(of("arris"))}; none along the joint`,
      ...{ measure: "the arris by eye and hand", files: [part] },
      needs: [{ from: `${part}.recesses`, what: "the wing with its recesses" }],
    },
  ];
}
