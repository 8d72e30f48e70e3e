import { dimensionOf } from "../../order/spec.ts";
import type { Model } from "../model.ts";
import { guidedSteps, outlineDone } from "./guided-steps.ts";
import { insideSteps, insidesDone } from "./inside-steps.ts";
import { inMm, type WorkStep } from "./work-step.ts";

/**
 * The through-neck from its board to where other parts are joined to it (trade notes, "Order of work for a through-neck"): planed, bored for its index pins, sawn
 * and cut in plan while its back is flat, sawn from the side, then head, core, joints and recesses.
 */
export function neckSteps(model: Model): WorkStep[] {
  return [...blankSteps(model), ...shapedSteps(model), ...coreSteps(model)];
}

const own = { part: "neck", setUp: null } as const;

function blankSteps({ spec, instrument: { neckBlank }, sawing }: Model): WorkStep[] {
  const { length, width, thickness } = neckBlank;
  const [plan] = sawing.sequence;
  const plies = dimensionOf(spec, "neck.plies");
  return [
    {
      ...{ ...own, id: "neck.plane", at: "planer", datum: "back", square: "nothing yet", thickness },
      what: `Plane the blank square: ${inMm(length)} long, ${inMm(width)} wide, ${inMm(thickness)} thick${plies > 1 ? ", glued up first where its board asks for it" : ""}`,
      ...{ measure: "length, width, thickness; square both ways", files: [] },
      needs: [{ from: "stock", what: "the neck's board" }],
    },
    {
      ...{ ...own, id: "neck.pins", at: "drill press", datum: "front", square: "all six faces", thickness },
      what: "Bore the index pins: two in head and tail waste, two under the board, unequal sizes",
      measure: "distance of each pair of pins",
      files: ["neck-plan", "drill-index-head", "drill-index-tail", "drill-index-board"],
      needs: [{ from: "neck.plane", what: "the blank, square" }],
    },
    {
      ...{ ...own, id: "neck.saw-plan", at: "bandsaw", datum: plan.onTable, square: "front, back, ends" },
      ...{ thickness, measure: "wood left outside the line", files: ["neck-saw-plan"] },
      what: `Saw the plan outside its line, ${plan.onTable} on the table; relief cuts first; keep every offcut`,
      needs: [{ from: "neck.pins", what: "the blank, bored" }],
      setUp: { kind: "saw", file: "neck-saw-plan", cut: "plan", up: plan.up },
    },
  ];
}

function shapedSteps(model: Model): WorkStep[] {
  const { spec, instrument, sawing } = model;
  const { width, thickness } = instrument.neckBlank;
  const [, side] = sawing.sequence;
  const head = dimensionOf(spec, "head.thickness");
  return [
    ...guidedSteps(model, {
      ...{ part: "neck", datum: "back", turned: "front", square: "front and back", thickness },
      drawing: "neck-plan",
      needs: [{ from: "neck.saw-plan", what: "the neck, sawn in plan" }],
    }),
    {
      ...{ ...own, id: "neck.saw-side", at: "bandsaw", datum: side.onTable, thickness: width },
      square: "front, back and ends, with the offcuts taped back",
      what: `Tape every offcut back, saw the side outside its line, ${side.onTable} on the table`,
      ...{ measure: "wood left outside the line", files: ["neck-saw-side"] },
      needs: [
        { from: outlineDone(model, "neck"), what: "the neck, finished in plan" },
        { from: "neck.saw-plan", what: "its offcuts" },
      ],
      setUp: { kind: "saw", file: "neck-saw-side", cut: "side", up: side.up },
    },
    {
      ...{ ...own, id: "neck.head", at: "drill press", datum: "head's face", square: "head's face, sides" },
      ...{ what: headWords(model), thickness: head, measure: "head's thickness; each hole" },
      files: ["head-face", "drill-tuners"],
      needs: [{ from: "neck.saw-side", what: "the neck, sawn from both ways" }],
    },
  ];
}

function headWords({ spec }: Model): string {
  switch (spec.tuners) {
    case "pegs":
      return "Plane the head's face and back; bore the pegs' holes square to the face, ream them 1:30";
    case "tail":
      return "Plane the head's face and back; bore the strings' anchors; tuners stand at the tail";
    default:
      return "Plane the head's face and back; bore the tuners' holes square to the face";
  }
}

function coreSteps(model: Model): WorkStep[] {
  const { spec } = model;
  const of = (id: string) => dimensionOf(spec, id);
  const depth = of("core.depth");
  const before = "the neck, head and sides true";
  const front = { from: "neck.core", what: "the core's front, true" };
  const rods = of("rod.count");
  const joined = spec.wings === null ? front : { from: "neck.joints", what: "the core, its joints true" };
  return [
    {
      ...{ ...own, id: "neck.core", at: "bench", datum: "gluing surface of the board", thickness: depth },
      what: `Plane the core's front: ${inMm(of("core.drop"))} down at ${inMm(of("core.start"))}, then ${inMm(of("core.slope"))} degrees to the tail; core ${inMm(depth)} deep`,
      ...{ square: "gluing surface, sides", measure: "core's depth at both ends; slope" },
      ...{ files: ["neck-side"], needs: [{ from: "neck.head", what: before }] },
    },
    ...(rods === 0
      ? []
      : [
          {
            ...{ ...own, id: "neck.rods", at: "router" as const, datum: "gluing surface of the board" },
            what: `Cut ${rods === 1 ? "the channel" : `${rods} channels`} for the rods, ${inMm(of("rod.depth"))} deep; glue the rods in; their dust stays out of lungs`,
            ...{ square: "gluing surface, sides", thickness: null, measure: "depth of each channel" },
            ...{ files: ["neck-plan"], needs: [front, { from: "bought", what: "rods" }] },
          },
        ]),
    ...(spec.wings === null
      ? []
      : [
          {
            ...{ ...own, id: "neck.joints", at: "bench" as const, datum: "core's front", thickness: depth },
            what: "True the core's sides where the wings are joined; start the pins' holes by their drill guides, bore them square",
            ...{ square: "core's front and back", measure: "straightness; width at both ends; each hole" },
            files: ["joint-bass", "joint-treble", "drill-joint-bass", "drill-joint-treble"],
            needs: [front],
          },
        ]),
    ...insideSteps(model, {
      ...{ part: "neck", datum: "core's front", square: "core's front, back, sides", needs: [joined] },
    }),
    {
      ...{ ...own, id: "neck.recesses", at: "drill press", datum: "core's front", thickness: depth },
      what: "Bore what lies in the core: wires' ways, covers' pilots, the bridge's mount, the tailpiece's posts",
      ...{
        square: "core's front, back, sides",
        measure: "depth of each bore",
        files: ["neck-back", "bridge-place"],
      },
      needs: [
        insidesDone(model, "neck", "") === ""
          ? joined
          : { from: insidesDone(model, "neck", ""), what: "the core, routed" },
      ],
    },
  ];
}
