import type { Model } from "../model.ts";
import { guidedSteps, outlineDone } from "./guided-steps.ts";
import { sawSteps, stepOf } from "./saw-step.ts";
import { inMm, type WorkStep } from "./work-step.ts";

/** The fingerboard from its board to where it is glued on: square blank, sides, what is let in, then radius and scoop, then slots and dots. */
export function boardSteps(model: Model): WorkStep[] {
  const { spec, instrument } = model;
  const { length, width, thickness } = instrument.boardBlank;
  const part = "fingerboard";
  const own = { part, setUp: null } as const;
  const faces = "face, underside";
  const outline = outlineDone(model, part);
  const inlaid = spec.inlays.length > 0;
  const dots = spec.dots.face.length + spec.dots.side.length > 0;
  const arched = { from: "fingerboard.radius", what: "the board, arched" };
  return [
    {
      ...{ ...own, id: `${part}.plane`, at: "planer", datum: "underside", square: "nothing yet", thickness },
      what: `Plane the fingerboard's blank: ${inMm(length)} long, ${inMm(width)} wide, ${inMm(thickness)} thick`,
      ...{ measure: "length, width, thickness", files: [] },
      needs: [{ from: "stock", what: "the fingerboard's board" }],
    },
    ...sawSteps(model, {
      ...{ part, cuts: ["side", "end"], square: faces, thickness },
      needs: [{ from: `${part}.plane`, what: "the blank, square" }],
    }),
    ...guidedSteps(model, {
      ...{ part, datum: "underside", square: faces, thickness, drawing: part },
      needs: [{ from: stepOf(part, "end"), what: "the board, sawn, still flat" }],
    }),
    ...(inlaid
      ? [
          {
            ...{ ...own, id: `${part}.inlays`, at: "laser or CNC" as const, datum: "underside" },
            what: "Cut the inlays' recesses while the face is flat; cut the inlays; try them dry",
            ...{ square: `${faces}, sides`, thickness, measure: "depth of each recess" },
            files: ["inlays", part, "inlay-*"],
            needs: [{ from: outline, what: "the board to its outline" }],
          },
        ]
      : []),
    {
      ...{ ...own, id: `${part}.radius`, at: "bench", datum: "underside", square: "underside, sides" },
      what: "Shape the arch and the scoop to the gauges, then with the sanding block, edges to their thickness",
      ...{ thickness, measure: "edges at both ends; arch by gauge; scoop under a straightedge" },
      files: [`${part}-ends`, `${part}-side`, "radius", "radius-*", "sanding-block"],
      needs: [{ from: inlaid ? `${part}.inlays` : outline, what: "the board to its outline" }],
    },
    ...(spec.frets === null
      ? []
      : [
          {
            ...{
              ...own,
              id: `${part}.slots`,
              at: "bench" as const,
              datum: "nut end",
              square: "underside, sides",
            },
            what: `Saw ${spec.frets.count} slots, each measured from the nut: from numbers, never from paper`,
            ...{ thickness: null, measure: "frets 1, 12 and the last, from the nut" },
            ...{ files: [part, "fret-slots"], needs: [arched] },
          },
        ]),
    ...(dots
      ? [
          {
            ...{ ...own, id: `${part}.dots`, at: "drill press" as const, datum: "nut end" },
            what: "Bore for the dots in face and edge, glue them in, sand them flush",
            ...{ square: "underside, sides", thickness: null, measure: "first and last dot, from the nut" },
            ...{ files: [`${part}-edge`, "dots-face", "dots-side"], needs: [arched] },
          },
        ]
      : []),
  ];
}

/** The steps after which the board can be glued on. */
export function boardReady({ spec }: Model): string[] {
  const after = [
    ...(spec.frets === null ? [] : ["fingerboard.slots"]),
    ...(spec.dots.face.length + spec.dots.side.length > 0 ? ["fingerboard.dots"] : []),
  ];
  return after.length === 0 ? ["fingerboard.radius"] : after;
}
