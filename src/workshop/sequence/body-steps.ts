import { underVeneers } from "../../instrument/under-veneers.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { guidedSteps, outlineDone } from "./guided-steps.ts";
import { sawnOr, sawStep } from "./saw-step.ts";
import { inMm, type WorkStep } from "./work-step.ts";

/** The body in one piece from its board to where the core is glued in. None without a body. */
export function bodySteps(model: Model): WorkStep[] {
  const { spec } = model;
  if (spec.body === null) return [];
  const of = (id: string) => dimensionOf(spec, id);
  const thickness = of("body.thickness");
  const own = { part: "body", setUp: null } as const;
  const veneers = spec.veneers.filter(({ on }) => on === "body");
  const under = veneers.length === 0 ? thickness : underVeneers(spec, "body");
  const faces = "front, back";
  const room = spec.body.core === "recess" ? "Sink the room for the core" : "Cut the room for the core";
  return [
    {
      ...{ ...own, id: "body.plane", at: "planer", datum: "back", square: "nothing yet", thickness: under },
      what: `Plane the body's blank to ${inMm(under)}${veneers.length === 0 ? "" : " under its veneers"}`,
      ...{ measure: "thickness", files: [], needs: [{ from: "stock", what: "the body's board" }] },
    },
    ...(veneers.length === 0
      ? []
      : [
          {
            ...{ ...own, id: "body.veneers", at: "bench" as const, datum: "back", square: faces },
            what: `Glue the veneers on, margins out: ${veneers.map(({ face }) => face).join(" and ")}; trim when dry`,
            ...{ thickness, measure: "thickness", files: veneers.map(({ id }) => `veneer-${id}`) },
            needs: [
              { from: "body.plane", what: "the blank, planed" },
              { from: "bought", what: "veneers" },
            ],
          },
        ]),
    ...sawStep(model, {
      ...{ part: "body", file: "body-saw", datum: "back", square: faces, thickness },
      needs: [flatBlank(veneers.length > 0)],
    }),
    ...guidedSteps(model, {
      ...{ part: "body", datum: "back", square: faces, thickness, drawing: "body" },
      needs: [
        {
          from: sawnOr(model, "body-saw", flatBlank(veneers.length > 0).from),
          what: "the body, sawn outside its line",
        },
      ],
    }),
    {
      ...{ ...own, id: "body.room", at: "router", datum: "back", square: faces, thickness },
      what: `${room}, to a sliding fit on the core itself`,
      ...{ measure: "width at both ends; depth", files: ["body"] },
      needs: [
        { from: outlineDone(model, "body"), what: "the body to its outline" },
        { from: "neck.core", what: "the core, to try in it" },
      ],
    },
    {
      ...{ ...own, id: "body.recesses", at: "router", datum: "back", square: faces, thickness },
      what: "Sink what lies in the body: recesses and covers' ledges, wires' bores, mounts",
      ...{ measure: "depth of each recess", files: ["body-back", "body-recess-*"] },
      needs: [{ from: "body.room", what: "the body with its room for the core" }],
    },
    {
      ...{ ...own, id: "body.edges", at: "bench", datum: "front", square: faces, thickness: null },
      what: `Ease the body's arrises by ${inMm(of("body.arris"))}; none in the core's room`,
      ...{ measure: "the arris by eye and hand", files: ["body"] },
      needs: [{ from: "body.recesses", what: "the body with its recesses" }],
    },
  ];
}

function flatBlank(veneered: boolean) {
  return veneered
    ? { from: "body.veneers", what: "the blank, veneered" }
    : { from: "body.plane", what: "the blank, planed" };
}
