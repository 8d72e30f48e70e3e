import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { inMm, type WorkStep } from "./work-step.ts";

const own = {
  ...{ datum: "flat face", square: "flat face", setUp: null },
  needs: [{ from: "stock", what: "a piece of its wood" }],
} as const;

/** Nut, bridge, tailpiece, covers and chin rest: small, so held in a vice or in double-sided tape on a board and worked by hand or by laser, never loose at a machine. */
export function smallSteps(model: Model): WorkStep[] {
  const { spec } = model;
  const of = (id: string) => dimensionOf(spec, id);
  const covers = spec.recesses.filter(({ cover }) => cover).map(({ id }) => `cover-${id}`);
  return [
    {
      ...{ ...own, id: "nut.make", part: "nut", at: "bench", thickness: of("nut.thickness") },
      what: `Make the nut's blank, ${inMm(of("nut.allowance"))} over its crown; start the slots by their gauge, held in a vice`,
      ...{ measure: "width; places of the outer slots", files: ["nut", "notches-nut"] },
    },
    {
      ...{ ...own, id: "bridge.make", part: "bridge", at: "bench", thickness: of("bridge.foot.thickness") },
      what: "Cut the bridge's outline, plane it to its taper, start the notches by their gauge, held in a vice",
      measure: "foot and top thickness; height; places of the outer notches",
      files: ["bridge", "bridge-side", "notches-bridge"],
    },
    {
      ...{ ...own, id: "tailpiece.make", part: "tailpiece", at: "bench" },
      ...{ thickness: of("tailpiece.thickness"), files: ["tailpiece"] },
      what: "Cut the tailpiece's outline, bore the strings' holes and its posts', ease every edge that a string runs over",
      measure: "thickness; places of the outer holes",
    },
    ...(covers.length === 0
      ? []
      : [
          {
            ...{ ...own, id: "covers.make", part: "cover", at: "laser or CNC" as const },
            what: "Cut the covers, fit each to its ledge, bore for their screws",
            ...{ thickness: of("cover.thickness"), measure: "fit all round", files: covers },
          },
        ]),
    ...(spec.rests.chin === null
      ? []
      : [
          {
            ...{ ...own, id: "rest.chin", part: spec.rests.chin.on, at: "bench" as const },
            what: "Lay out the chin rest's footprint; bore for its screws where it is screwed on",
            ...{ thickness: null, measure: "none over a recess or a cover", files: ["rest-chin"] },
            needs: [{ from: lastOf(model, spec.rests.chin.on), what: "the part that carries it" }],
          },
        ]),
  ];
}

function lastOf({ spec }: Model, part: string): string {
  return part === "neck" ? "neck.recesses" : spec.wings === null ? "body.edges" : `${part}.edges`;
}
