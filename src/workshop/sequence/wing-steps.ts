import { underVeneers } from "../../instrument/under-veneers.ts";
import { type Side, sides } from "../../order/side.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { guidedSteps, outlineDone } from "./guided-steps.ts";
import { sawnOr, sawStep } from "./saw-step.ts";
import { inMm, type WorkStep } from "./work-step.ts";

/** The wings from their boards to the joint: planed, joint face cut and bored, sawn, routed, recessed, eased. None without wings. */
export function wingSteps(model: Model): WorkStep[] {
  return model.spec.wings === null ? [] : sides.flatMap((side) => oneWing(model, side));
}

function oneWing(model: Model, side: Side): WorkStep[] {
  const { spec, instrument } = model;
  const part = `wing-${side}`;
  const of = (name: string) => dimensionOf(spec, `wing.${side}.${name}`);
  const thickness = of("thickness");
  const { bevel, mitre } = instrument.wings![side].place.cut;
  const own = { part, setUp: null } as const;
  const faces = "front, back";
  const veneers = spec.veneers.filter(({ on }) => on === part);
  const veneer =
    veneers.length > 0 ? `; plane to ${inMm(underVeneers(spec, part))} and glue its veneers on first` : "";
  return [
    {
      ...{ ...own, id: `${part}.plane`, at: "planer", datum: "back", square: "nothing yet", thickness },
      what: `Plane the ${side} wing's blank to ${inMm(thickness)}, one edge straight${veneer}`,
      ...{ measure: "thickness; straight edge", files: veneers.map(({ id }) => `veneer-${id}`) },
      needs: [{ from: "stock", what: `the ${side} wing's board` }],
    },
    {
      ...{ ...own, id: `${part}.joint`, at: "bench", datum: "front", square: faces, thickness },
      what: `Cut the ${side} wing's joint face: bevel ${inMm(bevel)}, mitre ${inMm(mitre)} degrees; true it to the angle gauge; bore the pins square to it`,
      ...{ measure: "bevel and mitre by the gauge; each hole" },
      files: [`joint-${side}`, `wing-angle-${side}`, `drill-joint-${side}`],
      needs: [{ from: `${part}.plane`, what: "the blank, planed" }],
    },
    ...sawStep(model, {
      ...{ part, file: `${part}-saw`, datum: "back", square: `${faces}, joint face`, thickness },
      needs: [{ from: `${part}.joint`, what: "the blank with its joint face" }],
    }),
    ...guidedSteps(model, {
      ...{ part, datum: "joint face", square: `${faces}, joint face`, thickness, drawing: part },
      needs: [
        { from: sawnOr(model, `${part}-saw`, `${part}.joint`), what: "the wing, sawn outside its line" },
      ],
    }),
    {
      ...{ ...own, id: `${part}.recesses`, at: "router", datum: "joint face", square: faces, thickness },
      what: `Sink what lies in the ${side} wing: recesses and covers' ledges, wires' bores, mounts`,
      ...{ measure: "depth of each recess", files: [`${part}-back`, `${part}-recess-*`] },
      needs: [{ from: outlineDone(model, part), what: "the wing to its outline" }],
    },
    {
      ...{ ...own, id: `${part}.edges`, at: "bench", datum: "front", square: faces, thickness: null },
      what: `Ease the ${side} wing's arrises by ${inMm(of("arris"))}; none along the joint`,
      ...{ measure: "the arris by eye and hand", files: [part] },
      needs: [{ from: `${part}.recesses`, what: "the wing with its recesses" }],
    },
  ];
}
