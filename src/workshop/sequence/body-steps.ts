import { underVeneers } from "../../instrument/under-veneers.ts";
import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { guidedSteps, outlineDone } from "./guided-steps.ts";
import { insideSteps, insidesDone } from "./inside-steps.ts";
import { sawSteps, stepOf } from "./saw-step.ts";
import { veneered, veneerStep } from "./veneer-step.ts";
import { inMm, type WorkStep } from "./work-step.ts";

/** The body in one piece from its board to where the core is glued in. None without a body. */
export function bodySteps(model: Model): WorkStep[] {
  const { spec } = model;
  if (spec.body === null) return [];
  const of = (id: string) => dimensionOf(spec, id);
  const thickness = of("body.thickness");
  const own = { part: "body", setUp: null } as const;
  const under = underVeneers(spec, "body");
  const sawn = stepOf("body", "outline");
  const faces = "front, back";
  const room = spec.body.core === "recess" ? "Sink the room for the core" : "Cut the room for the core";
  return [
    {
      ...{ ...own, id: "body.plane", at: "planer", datum: "back", square: "nothing yet", thickness: under },
      what: `Plane the body's blank to ${inMm(under)}${under < thickness ? " under its veneers" : ""}`,
      ...{ measure: "thickness", files: [], needs: [{ from: "stock", what: "the body's board" }] },
    },
    ...sawSteps(model, {
      ...{ part: "body", cuts: ["outline"], square: faces, thickness: under },
      needs: [{ from: "body.plane", what: "the blank, planed" }],
    }),
    ...veneerStep(model, "body", sawn),
    {
      ...{ ...own, id: "body.pins", at: "drill press", datum: "front", square: faces, thickness },
      what: "Bore the index pins and the screws' pilots where the core's room comes, by the fixtures' holes: unequal pins, no deeper than the room",
      ...{ measure: "distance of the pins", files: ["body-bass-router", "body-treble-router"] },
      needs: [{ from: veneered(model, "body", sawn), what: "the body, sawn outside its line" }],
    },
    ...guidedSteps(model, {
      ...{ part: "body", datum: "front", square: faces, thickness, drawing: "body" },
      needs: [{ from: "body.pins", what: "the body, sawn and bored" }],
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
    ...insideSteps(model, {
      ...{ part: "body", datum: "back", square: faces },
      needs: [{ from: "body.room", what: "the body with its room for the core" }],
    }),
    {
      ...{ ...own, id: "body.recesses", at: "drill press", datum: "back", square: faces, thickness },
      what: "Bore what lies in the body: wires' ways, covers' pilots, shafts, mounts",
      ...{ measure: "depth of each bore", files: ["body-back"] },
      needs: [{ from: insidesDone(model, "body", "body.room"), what: "the body, routed" }],
    },
    {
      ...{ ...own, id: "body.edges", at: "bench", datum: "front", square: faces, thickness: null },
      what: `Ease the body's arrises by ${inMm(of("body.arris"))}; none in the core's room`,
      ...{ measure: "the arris by eye and hand", files: ["body"] },
      needs: [{ from: "body.recesses", what: "the body with its recesses" }],
    },
  ];
}
